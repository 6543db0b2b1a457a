// SPDX-License-Identifier: Apache-2.0
// S. J. Quintavalla, "A generally applicable model for the aerodynamic behavior of golf balls", Science and
// Golf IV (2002); its coefficients second-hand, from a public university exercise.
#include <gtest/gtest.h>

#include "flight/trajectory.h"

namespace baywright {
namespace {

double carry(double mph, double degrees, double rpm) {
  Surroundings surroundings;
  surroundings.aerodynamics = LinearInSpinRatio{};
  surroundings.gravity = 9.81;
  Launch launch;
  launch.speed = mph * 0.44704;
  launch.launchAngle = degrees * kPi / 180;
  launch.spin = rpm * kPi / 30;
  FlightLimits limits;
  limits.atLevel = 0;
  return flightOf(launch, surroundings, limits)->points.back().position.x();
}

TEST(Quintavalla2002, CoefficientsAtASpinRatioOfATenth) {
  const Coefficients c = coefficientsAt(LinearInSpinRatio{}, {}, 70, 0.1 * 70 / kBallRadius);
  EXPECT_NEAR(c.drag, 0.171 + 0.062, 1e-12);
  EXPECT_NEAR(c.lift, 0.083 + 0.0885, 1e-12);
  EXPECT_NEAR(c.spinDecay, 0.00125, 1e-12);
}

TEST(Quintavalla2002, CarriesOfTourDriverAndDistanceStandards) {
  // Launch conditions: tour average; Overall Distance Standard until 2027 and from 2028. The carries are
  // those of the model's equations with spin decay, solved by an independent fourth-order Runge-Kutta
  // program.
  EXPECT_NEAR(carry(167, 10.9, 2686), 247.46, 0.05);
  EXPECT_NEAR(carry(176, 10, 2520), 261.98, 0.05);
  EXPECT_NEAR(carry(183, 11, 2200), 277.60, 0.05);
}

TEST(Quintavalla2002, TourDriverCarriesWhatIsPublished) {
  // 275 yd (tour averages; golfmonthly.com, "How far PGA Tour players hit every club in the bag").
  EXPECT_NEAR(carry(167, 10.9, 2686) / 0.9144, 275, 0.03 * 275);
}

}  // namespace
}  // namespace baywright
