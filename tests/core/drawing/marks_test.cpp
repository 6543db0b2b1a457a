// SPDX-License-Identifier: Apache-2.0
#include "drawing/marks.h"

#include <gtest/gtest.h>

#include "geometry/polygon.h"

namespace baywright::detail {
namespace {

TEST(Marks, ArcsStartAndEndWhereTheyAreTold) {
  const auto points = arc({1, 2}, 2, 0, kPi / 2);
  EXPECT_TRUE(points.front().isApprox(Vec2(3, 2), 1e-12));
  EXPECT_TRUE(points.back().isApprox(Vec2(1, 4), 1e-12));
  for (const Vec2& p : points) EXPECT_NEAR((p - Vec2(1, 2)).norm(), 2, 1e-12);
}

TEST(Marks, ArcsTurnBothWays) {
  EXPECT_LT(arc({0, 0}, 1, 0, -kPi / 2)[1].y(), 0);
  EXPECT_GT(arc({0, 0}, 1, 0, kPi / 2)[1].y(), 0);
}

TEST(Marks, TextsReadFromBelowOrFromTheRight) {
  EXPECT_DOUBLE_EQ(readableAngle(0.3), 0.3);
  EXPECT_DOUBLE_EQ(readableAngle(kPi), 0);
  // Upright lines, and those that are a hair or a degree out of plumb, whichever way they run.
  for (const double lean : {-0.017, -1e-9, 0.0, 1e-9, 0.017}) {
    EXPECT_NEAR(readableAngle(kPi / 2 + lean), kPi / 2 + lean, 1e-12);
    EXPECT_NEAR(readableAngle(-kPi / 2 + lean), kPi / 2 + lean, 1e-12);
  }
}

TEST(Marks, CirclesCloseWithoutARepeatedPoint) {
  const auto ring = circleRing({0, 0}, 1);
  EXPECT_GT((ring.front() - ring.back()).norm(), 0.05);
  EXPECT_NEAR(signedArea(ring), kPi, 0.01);
}

TEST(Marks, RectanglesRunCounterClockwise) {
  const Path path = rectangle(Layer::Bay, {Vec2(1, 2), Vec2(4, 3)}, {9});
  EXPECT_TRUE(path.closed);
  EXPECT_DOUBLE_EQ(signedArea(path.rings.front()), 3);
  EXPECT_EQ(path.id, Id{9});
}

TEST(Marks, OpenAndClosedPathsDiffer) {
  EXPECT_FALSE(polyline(Layer::Bay, {{0, 0}, {1, 0}}).closed);
  EXPECT_TRUE(polygon(Layer::Bay, {{0, 0}, {1, 0}, {0, 1}}).closed);
  EXPECT_EQ(strokes(Layer::Bay, {{{0, 0}, {1, 0}}, {{0, 1}, {1, 1}}}).rings.size(), 2u);
}

}  // namespace
}  // namespace baywright::detail
