// SPDX-License-Identifier: Apache-2.0
// What mechanics gives in closed form: the parabola of a throw, the speed at which drag balances weight.
#include <gtest/gtest.h>

#include "flight/near_flight.h"
#include "flight/trajectory.h"

namespace baywright {
namespace {

Surroundings constant(double drag, double lift, double gravity) {
  Surroundings surroundings;
  surroundings.aerodynamics = ConstantCoefficients{drag, lift};
  surroundings.gravity = gravity;
  return surroundings;
}

Launch throwAt(double speed, double degrees) {
  Launch launch;
  launch.speed = speed;
  launch.launchAngle = degrees * kPi / 180;
  return launch;
}

TEST(ClosedForm, RangeOfAThrowInAVacuum) {
  // v^2 sin(2 a) / g with 70 m/s, 9 degrees, 9.8 m/s^2: 154.5 m; at 45 degrees 500.0 m. The same settings as
  // in Giordano & Nakanishi, Computational Physics, 2nd ed., section 2.5 (second-hand).
  FlightLimits limits;
  limits.atLevel = 0;
  const auto range = [&](double degrees) {
    return flightOf(throwAt(70, degrees), constant(0, 0, 9.8), limits)->points.back().position.x();
  };
  EXPECT_NEAR(range(9), 154.5, 0.05);
  EXPECT_NEAR(range(45), 500.0, 0.05);
}

TEST(ClosedForm, TerminalSpeedsOfFallingBalls) {
  // sqrt(2 m g / (density A C)): 32.07 m/s for a smooth sphere (0.5), 45.35 m/s for 0.25. Dropped for long
  // enough.
  FlightLimits limits;
  limits.atTime = 60;
  const auto falling = [&](double drag) {
    return flightOf(throwAt(0.1, 0), constant(drag, 0, 9.80665), limits)->points.back().velocity.norm();
  };
  EXPECT_NEAR(falling(0.5), 32.07, 0.05);
  EXPECT_NEAR(falling(0.25), 45.35, 0.05);
}

TEST(ClosedForm, HeightAtAScreenThreeMetresAway) {
  // d tan a - g d^2 / (2 v^2 cos^2 a); second value with drag 0.25 and lift 0.20, solved by an independent
  // fourth-order Runge-Kutta program.
  struct Row {
    double speed, degrees, distance, vacuum, air;
  };
  const Row rows[] = {{70, 12, 3, 0.6283, 0.6465},
                      {70, 12, 4, 0.8335, 0.8659},
                      {76.2, 11, 3, 0.5753, 0.5933},
                      {45, 30, 3, 1.7030, 1.7289},
                      {30, 45, 3, 2.9019, 2.9472}};
  for (const Row& row : rows) {
    FlightLimits limits;
    limits.atDown = row.distance;
    const Launch launch = throwAt(row.speed, row.degrees);
    const auto vacuum = flightOf(launch, constant(0, 0, 9.80665), limits);
    const auto air = flightOf(launch, constant(0.25, 0.20, 9.80665), limits);
    EXPECT_NEAR(vacuum->points.back().position.z(), row.vacuum, 0.0005);
    EXPECT_NEAR(air->points.back().position.z(), row.air, 0.0005);
    const NearFlight near = nearFlight(launch, constant(0.25, 0.20, 9.80665), row.distance);
    EXPECT_NEAR(near.at(*timeToDown(near, row.distance)).z(), row.air, 0.001);
  }
}

TEST(ClosedForm, TimeToAScreenThreeMetresAway) {
  // 3.0 m at 70 m/s and 12 degrees: 3 / (70 cos 12) = 0.0438 s.
  FlightLimits limits;
  limits.atDown = 3;
  EXPECT_NEAR(flightOf(throwAt(70, 12), constant(0, 0, 9.80665), limits)->points.back().time, 0.0438, 5e-5);
}

}  // namespace
}  // namespace baywright
