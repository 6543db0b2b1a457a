// SPDX-License-Identifier: Apache-2.0
// The importance of ball position and stance width, usgtf.com: averages of over 100 tour players, from the
// end of the lead foot to the middle of the ball, in inches. "Height has only a slight effect."
#include <gtest/gtest.h>

#include "swing/posture.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;
constexpr double kInch = 0.0254;

double toesToBallInInches(double stature, double inches, double lieDegrees) {
  const BodyLengths body = bodyOf(stature);
  return postureOf(body, {.id = {}, .name = "", .length = inches * kInch, .lie = lieDegrees * kDegree})
             .toesToBall(body) /
         kInch;
}

TEST(Stance, DriverThirtyTwoToThirtySixInches) {
  for (const double stature : {1.75, 1.80, 1.85, 1.90}) {
    EXPECT_GE(toesToBallInInches(stature, 45.5, 58), 32) << stature;
    EXPECT_LE(toesToBallInInches(stature, 45.5, 58), 36) << stature;
  }
  EXPECT_NEAR(toesToBallInInches(1.80, 45.5, 58), 33.5, 1);  // the players' average
}

TEST(Stance, FiveIronTwentyTwoToTwentySixInches) {
  for (const double stature : {1.75, 1.80, 1.85, 1.90}) {
    EXPECT_GE(toesToBallInInches(stature, 38, 61), 22) << stature;
    EXPECT_LE(toesToBallInInches(stature, 38, 61), 26) << stature;
  }
}

TEST(Stance, NineIronAboutTwentyTwoInches) {
  EXPECT_NEAR(toesToBallInInches(1.80, 36, 63.5), 22, 1);  // the players' average
}

TEST(Stance, ChangesLittleWithHeight) {
  EXPECT_NEAR(toesToBallInInches(1.90, 45.5, 58), toesToBallInInches(1.75, 45.5, 58), 1);
}

}  // namespace
}  // namespace baywright
