// SPDX-License-Identifier: Apache-2.0
#include "optics/detail/round_shapes.h"

#include "optics_scene.h"

namespace baywright {
namespace {

TEST(RoundShapes, PolygonTouchesTheCircleFromOutside) {
  std::vector<Vec3> points;
  const Vec3 normal = Vec3{1, 2, -0.5}.normalized();
  detail::appendEnclosingPolygon({1, 1, 1}, normal, 0.3, points);
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Vec3 middle = 0.5 * (points[i] + points[(i + 1) % points.size()]) - Vec3{1, 1, 1};
    EXPECT_NEAR(middle.norm(), 0.3, 1e-12);
    EXPECT_NEAR((points[i] - Vec3{1, 1, 1}).dot(normal), 0, 1e-12);
  }
}

TEST(RoundShapes, OutlineOfABallIsSeenAtItsAngle) {
  std::vector<Vec3> points;
  const Vec3 eye{-3, 0.5, 2}, centre{0, 0, 1};
  detail::appendOutlineOfBall(eye, centre, 0.25, points);
  ASSERT_FALSE(points.empty());
  const double angle = std::asin(0.25 / (centre - eye).norm());
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Vec3 middle = 0.5 * (points[i] + points[(i + 1) % points.size()]) - eye;
    EXPECT_NEAR(std::acos(middle.normalized().dot((centre - eye).normalized())), angle, 1e-9);
  }
}

TEST(RoundShapes, NoOutlineFromInside) {
  std::vector<Vec3> points;
  detail::appendOutlineOfBall({0, 0, 0}, {0.1, 0, 0}, 0.2, points);
  EXPECT_TRUE(points.empty());
}

TEST(RoundShapes, CutsASegmentAtALimit) {
  const auto cut = detail::inFrontOf({{-1, 0, 0}, {1, 2, 0}}, 0);
  ASSERT_TRUE(cut);
  expectNear(cut->b, {0, 1, 0}, 1e-15);
  const auto other = detail::inFrontOf({{1, 2, 0}, {-1, 0, 0}}, 0);
  expectNear(other->a, {0, 1, 0}, 1e-15);
  EXPECT_FALSE(detail::inFrontOf({{0.1, 0, 0}, {1, 2, 0}}, 0));
}

TEST(RoundShapes, DistanceToASegmentAndToItsEnds) {
  const Segment3 segment{{0, 0, 0}, {2, 0, 0}};
  EXPECT_DOUBLE_EQ(detail::distanceTo(segment, {1, 3, 0}), 3);
  EXPECT_DOUBLE_EQ(detail::distanceTo(segment, {5, 4, 0}), 5);
  EXPECT_DOUBLE_EQ(detail::distanceTo({{1, 1, 1}, {1, 1, 1}}, {1, 1, 3}), 2);
}

}  // namespace
}  // namespace baywright
