// SPDX-License-Identifier: Apache-2.0
#include "drawing/drawn_shapes.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(DrawnShapes, LieAlongTheLongestWall) {
  EXPECT_NEAR(roomHeading(garage(8, 6).job().room), 0, 1e-12);
  const Vec2 along(std::cos(20_deg), std::sin(20_deg));
  const Job skewed = roomOver({{0, 0}, 6 * along, 6 * along + 9 * leftOf(along), 9 * leftOf(along)}).job();
  EXPECT_NEAR(roomHeading(skewed.room), 20_deg, 1e-12);
  EXPECT_EQ(roomHeading(Room{}), 0);
}

TEST(DrawnShapes, PutABoxBetweenTwoCorners) {
  const BoxShape box = boxBetween({1, 1}, {3, 4}, 0);
  EXPECT_EQ(box.centre, Vec2(2, 2.5));
  EXPECT_NEAR(box.width, 2, 1e-12);
  EXPECT_NEAR(box.depth, 3, 1e-12);
  const BoxShape turned = boxBetween({0, 0}, {0, 2}, 45_deg);
  EXPECT_NEAR(turned.width, std::sqrt(2.0), 1e-12);
  EXPECT_NEAR(turned.depth, std::sqrt(2.0), 1e-12);
}

TEST(DrawnShapes, KeepTheFirstCornerWhenASizeIsTyped) {
  const BoxShape box = boxFrom({3, 4}, {1, 5}, 0, {0.5, 0.25});
  const auto corners = cornersOf(box);
  EXPECT_TRUE(std::any_of(corners.begin(), corners.end(),
                          [](const Vec2& c) { return c.isApprox(Vec2(3, 4), 1e-12); }));
  EXPECT_TRUE(std::any_of(corners.begin(), corners.end(),
                          [](const Vec2& c) { return c.isApprox(Vec2(2.5, 4.25), 1e-12); }));
  EXPECT_NEAR((corners[1] - corners[0]).norm(), 0.5, 1e-12);
  EXPECT_NEAR((corners[2] - corners[1]).norm(), 0.25, 1e-12);
}

TEST(DrawnShapes, MeasureACylinderFromItsMiddle) {
  EXPECT_NEAR(cylinderAround({1, 1}, {4, 5}).radius, 5, 1e-12);
}

}  // namespace
}  // namespace baywright
