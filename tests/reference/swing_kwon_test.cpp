// SPDX-License-Identifier: Apache-2.0
// Kwon et al., Assessment of planarity of the golf swing based on the functional swing plane of the clubhead,
// Sports Biomechanics 11(2), 127 (2012): 14 skilled men, driver, five-iron, pitching wedge. That the plane is
// significantly steeper for shorter clubs is in the abstract; its mean slopes are values from memory. Lies:
// convention of clubmaking.
#include <gtest/gtest.h>

#include "swing/posture.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;

double slopeInDegrees(double inches, double lieDegrees) {
  return shaftSlope({.id = {}, .name = "", .length = inches * 0.0254, .lie = lieDegrees * kDegree}) / kDegree;
}

TEST(Kwon, ShaftLiesInThePlaneOfTheClubHead) {
  EXPECT_NEAR(slopeInDegrees(45.5, 58), 46.5, 3);  // driver
  EXPECT_NEAR(slopeInDegrees(38, 61), 55, 3);      // five-iron
  EXPECT_NEAR(slopeInDegrees(35.5, 64), 60, 3);    // pitching wedge
}

TEST(Kwon, SteeperForShorterClubs) {
  const BodyLengths body = bodyOf(1.755);
  double last = 0;
  for (const auto& [inches, lie] : {std::pair{45.5, 58.0}, {38.0, 61.0}, {35.5, 64.0}}) {
    const double slope =
        postureOf(body, {.id = {}, .name = "", .length = inches * 0.0254, .lie = lie * kDegree}).planeSlope;
    EXPECT_GT(slope, last + 1 * kDegree);
    last = slope;
  }
}

// "About 45 degrees" for a driver, perfectgolfswingreview.net, Address Setup.
TEST(Kwon, DriverIsNearFortyFiveDegrees) {
  EXPECT_NEAR(slopeInDegrees(45.5, 58), 45, 5);
}

}  // namespace
}  // namespace baywright
