// SPDX-License-Identifier: Apache-2.0
#include "geometry/frames.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(BayPose, RightIsToTheRightWhenFacingDown) {
  // Facing along +y, right is +x.
  const BayPose pose{Vec2::Zero(), kPi / 2};
  EXPECT_NEAR((pose.down() - Vec2(0, 1)).norm(), 0, 1e-15);
  EXPECT_NEAR((pose.right() - Vec2(1, 0)).norm(), 0, 1e-15);
}

TEST(BayPose, PlacesAPointInFrontOfTheScreen) {
  const BayPose pose{{2, 3}, kPi};  // the ball flies towards -x
  const Vec3 tee = worldFromBay(pose, {-3, 0.5, 0.04});
  EXPECT_NEAR((tee - Vec3(5, 3.5, 0.04)).norm(), 0, 1e-15);
}

TEST(BayPose, ReturnsToTheSamePoint) {
  const BayPose pose{{-12.5, 7.25}, 0.7};
  const Vec3 p(1.25, -0.5, 2.1);
  EXPECT_NEAR((bayFromWorld(pose, worldFromBay(pose, p)) - p).norm(), 0, 1e-14);
}

}  // namespace
}  // namespace baywright
