// SPDX-License-Identifier: Apache-2.0
#include "flight/near_flight.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "flight_scene.h"

namespace baywright {
namespace {

using scene::degrees;
using scene::rpm;

/// The greatest distance between the parabola and the integrated path over `length` metres of flight.
double worstError(const Launch& launch, double reach, double length) {
  FlightLimits limits;
  limits.atTime = length / launch.speed;
  const auto truth = flightOf(launch, {}, limits);
  const NearFlight near = nearFlight(launch, {}, reach);
  double worst = 0;
  for (const FlightPoint& p : truth->points) worst = std::max(worst, (near.at(p.time) - p.position).norm());
  return worst;
}

Launch shot(double speed, double angle, double spin) {
  Launch launch;
  launch.from = {-4, 0.3, 0.05};
  launch.speed = speed;
  launch.launchAngle = degrees(angle);
  launch.direction = degrees(8);
  launch.spin = rpm(spin);
  return launch;
}

TEST(NearFlight, StaysWithinItsStatedErrorOfTheIntegratedPath) {
  for (const double speed : {15.0, 20.0, 30.0, 50.0, 70.0, 90.0})
    for (const double angle : {-5.0, 0.0, 12.0, 30.0, 50.0, 80.0})
      for (const double spin : {0.0, 2500.0, 4500.0, 9300.0})
        for (const double reach : {2.0, 3.0, kNearFlightReach})
          EXPECT_LT(worstError(shot(speed, angle, spin), reach, reach), kNearFlightError)
              << speed << " m/s, " << angle << " degrees, " << spin << " rpm, " << reach << " m";
}

TEST(NearFlight, IsWithinTheStatedFewMillimetresForFastShots) {
  for (const double angle : {0.0, 12.0, 30.0, 50.0})
    for (const double spin : {2500.0, 4500.0, 9300.0}) {
      EXPECT_LT(worstError(shot(70, angle, spin), 5, 5), 0.0003);
      EXPECT_LT(worstError(shot(70, angle, spin), 3, 15), 0.040);
    }
}

TEST(NearFlight, IsExactInAVacuum) {
  const Launch launch = shot(40, 30, 3000);
  FlightLimits limits;
  limits.atDown = 0;
  const auto truth = flightOf(launch, scene::vacuum(), limits);
  ASSERT_TRUE(truth);
  const NearFlight near = nearFlight(launch, scene::vacuum(), 4);
  const auto time = timeToDown(near, 0);
  ASSERT_TRUE(time);
  EXPECT_LT((near.at(*time) - truth->points.back().position).norm(), 1e-7);
}

TEST(NearFlight, FindsTheTimeToAPlaneUnlessItTurnsBefore) {
  const NearFlight slowing{Vec3::Zero(), {10, 0, 0}, {-10, 0, 0}};
  EXPECT_NEAR(timeToDown(slowing, 3.2).value(), 0.4, 1e-12);
  EXPECT_FALSE(timeToDown(slowing, 5.1));
  EXPECT_FALSE(timeToDown({Vec3::Zero(), {10, 0, 0}, Vec3::Zero()}, -1));
  EXPECT_NEAR(timeToDown({Vec3::Zero(), {-10, 0, 0}, Vec3::Zero()}, -1).value(), 0.1, 1e-15);
}

}  // namespace
}  // namespace baywright
