// SPDX-License-Identifier: Apache-2.0
#include "flight/trajectory.h"

#include <gtest/gtest.h>

#include "flight_scene.h"

namespace baywright {
namespace {

using scene::degrees;
using scene::rpm;

Launch drive() {
  Launch launch;
  launch.speed = 70;
  launch.launchAngle = degrees(11);
  launch.spin = rpm(2700);
  return launch;
}

FlightLimits toGround() {
  FlightLimits limits;
  limits.atLevel = 0;
  return limits;
}

double energy(const FlightPoint& p, const Surroundings& s) {
  return kineticEnergy(s.ball, p.velocity.norm()) + s.ball.mass * s.gravity * p.position.z();
}

TEST(Flight, StartsAtTheLaunchAndEndsOnTheGround) {
  const auto flight = flightOf(drive(), {}, toGround());
  ASSERT_TRUE(flight);
  EXPECT_EQ(flight->end, FlightEnd::Level);
  EXPECT_TRUE(flight->points.front().position.isZero());
  EXPECT_NEAR(flight->points.back().position.z(), 0, 1e-6);
  EXPECT_LT(flight->points.back().velocity.z(), 0);
}

TEST(Flight, StopsAtThePlaneOfTheScreen) {
  Launch launch = drive();
  launch.from = {-3, 0.2, 0.05};
  FlightLimits limits = toGround();
  limits.atDown = 0;
  const auto flight = flightOf(launch, {}, limits);
  ASSERT_TRUE(flight);
  EXPECT_EQ(flight->end, FlightEnd::Down);
  EXPECT_NEAR(flight->points.back().position.x(), 0, 1e-8);
  EXPECT_NEAR(flight->points.back().position.y(), 0.2, 1e-12);
}

TEST(Flight, StopsInTimeWhenNothingElseComes) {
  FlightLimits limits;
  limits.atTime = 0.5;
  const auto flight = flightOf(drive(), {}, limits);
  ASSERT_TRUE(flight);
  EXPECT_EQ(flight->end, FlightEnd::Time);
  EXPECT_EQ(flight->points.back().time, 0.5);
}

TEST(Flight, LosesEnergyAllTheWay) {
  for (const Aerodynamics& model : {Aerodynamics(BearmanHarvey{}), Aerodynamics(LinearInSpinRatio{})}) {
    Surroundings surroundings;
    surroundings.aerodynamics = model;
    const auto flight = flightOf(drive(), surroundings, toGround());
    ASSERT_TRUE(flight);
    for (std::size_t i = 1; i < flight->points.size(); ++i)
      EXPECT_LT(energy(flight->points[i], surroundings), energy(flight->points[i - 1], surroundings));
  }
}

TEST(Flight, KeepsItsEnergyInAVacuum) {
  const Surroundings surroundings = scene::vacuum();
  const auto flight = flightOf(drive(), surroundings, toGround());
  ASSERT_TRUE(flight);
  for (const FlightPoint& p : flight->points)
    EXPECT_NEAR(energy(p, surroundings), energy(flight->points.front(), surroundings), 1e-7);
}

TEST(Flight, IsMirroredWhenDirectionAndAxisAre) {
  Launch right = drive();
  right.direction = degrees(7);
  right.axisTilt = degrees(12);
  Launch left = right;
  left.direction = -right.direction;
  left.axisTilt = -right.axisTilt;
  const auto a = flightOf(right, {}, toGround());
  const auto b = flightOf(left, {}, toGround());
  ASSERT_TRUE(a && b);
  const Vec3 end = a->points.back().position;
  const Vec3 mirrored = b->points.back().position;
  EXPECT_NEAR(end.x(), mirrored.x(), 1e-6);
  EXPECT_NEAR(end.y(), -mirrored.y(), 1e-6);
}

TEST(Flight, CurvesToTheSideThatTheLiftIsTiltedTo) {
  Launch launch = drive();
  launch.axisTilt = degrees(10);
  const auto flight = flightOf(launch, {}, toGround());
  ASSERT_TRUE(flight);
  EXPECT_GT(flight->points.back().position.y(), 5);
}

TEST(Flight, TurnsWithItsDirection) {
  Launch turned = drive();
  turned.direction = degrees(30);
  const auto straight = flightOf(drive(), {}, toGround());
  const auto other = flightOf(turned, {}, toGround());
  ASSERT_TRUE(straight && other);
  const double carry = straight->points.back().position.x();
  EXPECT_NEAR(other->points.back().position.x(), carry * std::cos(degrees(30)), 1e-5);
  EXPECT_NEAR(other->points.back().position.y(), carry * std::sin(degrees(30)), 1e-5);
}

TEST(Flight, LiftOfBackspinPointsUp) {
  const Launch launch = drive();
  const Vec3 velocity = launchVelocity(launch);
  const Vec3 spinning = accelerationOf({velocity, launch.spin, spinAxisOf(launch)}, {});
  const Vec3 still = accelerationOf({velocity, 0, spinAxisOf(launch)}, {});
  EXPECT_GT(spinning.z(), still.z() + 5);
}

TEST(Flight, ReportsItsHighestPoint) {
  const auto flight = flightOf(drive(), scene::vacuum(), toGround());
  ASSERT_TRUE(flight);
  const double up = 70 * std::sin(degrees(11));
  EXPECT_NEAR(flight->apex, up * up / (2 * 9.80665), 1e-6);
}

TEST(Flight, RefusesImpossibleLaunches) {
  Launch launch = drive();
  launch.speed = 500;
  EXPECT_EQ(flightOf(launch, {}, toGround()).error().sentence(),
            "A ball speed of 500 m/s cannot be computed. Give 0.1 to 120 m/s.");
  launch = drive();
  launch.spin = -1;
  EXPECT_FALSE(flightOf(launch, {}, toGround()));
  launch = drive();
  launch.from.x() = std::numeric_limits<double>::infinity();
  EXPECT_FALSE(flightOf(launch, {}, toGround()));
  Surroundings heavy;
  heavy.ball.mass = 0;
  EXPECT_FALSE(flightOf(drive(), heavy, toGround()));
}

}  // namespace
}  // namespace baywright
