// SPDX-License-Identifier: Apache-2.0
#include "flight/impact.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Smash, FallsWithLoftAndRisesWithTheHeadsMass) {
  SmashInput input;
  const double square = smashFactor(input);
  input.loft = 0.5;
  EXPECT_LT(smashFactor(input), square);
  input = {};
  input.headMass = 0.3;
  EXPECT_GT(smashFactor(input), square);
}

TEST(Smash, OfAHeadWithoutEndIsOnePlusTheRestitution) {
  SmashInput input;
  input.headMass = 1e9;
  EXPECT_NEAR(smashFactor(input), 1.83, 1e-9);
}

TEST(Impact, LaunchesBelowTheLoftAndSpinsMoreWithIt) {
  double last = 0;
  for (double loft = 0.1; loft < 0.45; loft += 0.05) {
    const Impact impact = impactOf({45, loft, 0.2, {}});
    EXPECT_LT(impact.launchAngle, loft);
    EXPECT_GT(impact.launchAngle, 0.7 * loft);
    EXPECT_GT(impact.spin, last);
    last = impact.spin;
  }
}

TEST(Impact, OfABareFaceGivesNoSpin) {
  const Impact impact = impactOf({45, 0, 0.2, {}});
  EXPECT_EQ(impact.spin, 0);
  EXPECT_EQ(impact.launchAngle, 0);
}

TEST(Impact, NeverGivesTheBallMoreEnergyThanTheHeadHas) {
  for (double speed = 30; speed <= 60; speed += 5) {
    const Ball ball;
    const Impact impact = impactOf({speed, 0.19, 0.2, ball});
    const double spinning = 0.5 * ball.inertia() * impact.spin * impact.spin;
    EXPECT_LT(kineticEnergy(ball, impact.ballSpeed) + spinning, 0.5 * 0.2 * speed * speed);
  }
}

}  // namespace
}  // namespace baywright
