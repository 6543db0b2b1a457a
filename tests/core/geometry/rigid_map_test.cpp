// SPDX-License-Identifier: Apache-2.0
#include "geometry/rigid_map.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(RigidMap, BayMapAgreesWithThePointwiseOneAndMirrors) {
  const BayPose pose{{1, -2}, 0.4};
  const RigidMap map = worldFromBay(pose);
  const Vec3 p(0.3, 1.2, 0.8);
  EXPECT_NEAR((map(p) - worldFromBay(pose, p)).norm(), 0, 1e-15);
  EXPECT_TRUE(map.mirrors());
}

TEST(RigidMap, PlanPoseTurnsCounterClockwiseAndLifts) {
  const RigidMap map = worldFromLocal({{1, 2}, kPi / 2, 0.5});
  EXPECT_NEAR((map({1, 0, 0}) - Vec3(1, 3, 0.5)).norm(), 0, 1e-15);
  EXPECT_NEAR((map({0, 1, 0}) - Vec3(0, 2, 0.5)).norm(), 0, 1e-15);
  EXPECT_FALSE(map.mirrors());
}

TEST(RigidMap, MovesEveryEndOfAShape) {
  const RigidMap map = worldFromLocal({{10, 0}, kPi, 1});
  EXPECT_NEAR((transformed(Capsule{{1, 0, 0}, {0, 1, 0}, 0.2}, map).b - Vec3(10, -1, 1)).norm(), 0, 1e-14);
  EXPECT_NEAR((transformed(Triangle{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, map).c - Vec3(10, 0, 2)).norm(), 0,
              1e-14);
  const Cylinder moved = transformed(Cylinder{{0, 0, 0}, {0, 0, 2}, 0.3}, map);
  EXPECT_NEAR((moved.b - Vec3(10, 0, 3)).norm(), 0, 1e-14);
  EXPECT_EQ(moved.radius, 0.3);
}

}  // namespace
}  // namespace baywright
