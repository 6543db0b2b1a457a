// SPDX-License-Identifier: Apache-2.0
#include "geometry/bounds.h"

#include <gtest/gtest.h>

#include "brute_force.h"
#include "random_shapes.h"

namespace baywright {
namespace {

TEST(Aabb3, StartsEmptyAndTakesWhatIsJoined) {
  Aabb3 box;
  EXPECT_TRUE(box.empty());
  box = joined(box, {Vec3(1, 2, 3), Vec3(1, 2, 3)});
  EXPECT_FALSE(box.empty());
  EXPECT_EQ(box.centre(), Vec3(1, 2, 3));
  EXPECT_EQ(box.size(), Vec3::Zero());
}

TEST(Bounds, ReachOfACylinderAcrossItsAxis) {
  const Aabb3 upright = boundsOf(Cylinder{{0, 0, 0}, {0, 0, 2}, 0.5});
  EXPECT_EQ(upright, (Aabb3{Vec3(-0.5, -0.5, 0), Vec3(0.5, 0.5, 2)}));
  // At 45 degrees a disc of radius r reaches r / sqrt(2) along the axis' own directions.
  const Aabb3 leaning = boundsOf(Cylinder{{0, 0, 0}, {1, 0, 1}, std::sqrt(2.0)});
  EXPECT_NEAR((leaning.low - Vec3(-1, -std::sqrt(2.0), -1)).norm(), 0, 1e-15);
  EXPECT_NEAR((leaning.high - Vec3(2, std::sqrt(2.0), 2)).norm(), 0, 1e-15);
}

TEST(Bounds, TouchTheShapeOnEverySide) {
  test::RandomShapes random(11);
  for (int i = 0; i < 500; ++i) {
    const Solid solid = random.solid(3);
    const Aabb3 box = boundsOf(solid);
    for (int axis = 0; axis < 3; ++axis) {
      EXPECT_NEAR(box.high(axis), test::reachOf(solid, Vec3::Unit(axis)), 1e-14);
      EXPECT_NEAR(box.low(axis), -test::reachOf(solid, -Vec3::Unit(axis)), 1e-14);
    }
  }
}

TEST(Bounds, HoldACapsuleAndATriangle) {
  EXPECT_EQ(boundsOf(Capsule{{1, 0, 0}, {0, 1, 0}, 0.25}),
            (Aabb3{Vec3(-0.25, -0.25, -0.25), Vec3(1.25, 1.25, 0.25)}));
  EXPECT_EQ(boundsOf(Triangle{{1, 0, 0}, {0, 1, 0}, {0, 0, -2}}), (Aabb3{Vec3(0, 0, -2), Vec3(1, 1, 0)}));
}

}  // namespace
}  // namespace baywright
