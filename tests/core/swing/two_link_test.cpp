// SPDX-License-Identifier: Apache-2.0
#include "swing/two_link.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;
constexpr TwoLink kLinks{0.6, 1.0, 50 * kDegree};

TEST(TwoLink, TouchesTheBallWhenItHangsStraight) {
  EXPECT_LT(kLinks.clubEnd(0, 0).norm(), 1e-15);
}

TEST(TwoLink, StaysInItsPlane) {
  const Vec3 normal(0, std::sin(kLinks.slope), std::cos(kLinks.slope));
  for (int arms = -180; arms <= 180; arms += 30)
    for (int cock = 0; cock <= 150; cock += 50)
      EXPECT_NEAR(normal.dot(kLinks.clubEnd(arms * kDegree, (arms + cock) * kDegree)), 0, 1e-12);
}

TEST(TwoLink, PointsAwayFromTheTargetInTheBackswing) {
  const Vec3 level = kLinks.clubEnd(90 * kDegree, 90 * kDegree);
  EXPECT_NEAR(level.x(), -1.6, 1e-12);
  EXPECT_NEAR(level.z(), kLinks.hub().z(), 1e-12);
}

TEST(TwoLink, IsHighestStraightUpThePlane) {
  EXPECT_NEAR(kLinks.clubEnd(kPi, kPi).z(), kLinks.heightBound(), 1e-12);
  for (int arms = -180; arms <= 180; arms += 10)
    for (int cock = -150; cock <= 150; cock += 10)
      EXPECT_LE(kLinks.clubEnd(arms * kDegree, (arms + cock) * kDegree).z(), kLinks.heightBound() + 1e-12);
}

}  // namespace
}  // namespace baywright
