// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_shapes.h"

#include <gtest/gtest.h>

#include "geometry/polygon.h"

namespace baywright::detail {
namespace {

// A bulge is the tangent of a quarter of the angle: 1 is half a circle, to the right of the way from p to q
// when it is positive (published DXF reference, LWPOLYLINE).
TEST(DxfShapes, TurnsBulgesBothWays) {
  const auto half = std::get<DxfConic>(bulgedPiece({0, 0, 0}, {2, 0, 0}, 1));
  const auto points = flattened({{half}, false});
  EXPECT_LT(points.front().norm(), 1e-12);
  EXPECT_TRUE(points.back().isApprox(Vec2(2, 0), 1e-12));
  EXPECT_NEAR(points[points.size() / 2].y(), -1, 1e-3);
  const auto other = flattened({{bulgedPiece({0, 0, 0}, {2, 0, 0}, -1)}, false});
  EXPECT_NEAR(other[other.size() / 2].y(), 1, 1e-3);
}

TEST(DxfShapes, KeepsStraightPiecesStraight) {
  EXPECT_TRUE(std::holds_alternative<DxfChain>(bulgedPiece({0, 0, 0}, {2, 0, 0}, 0)));
  EXPECT_TRUE(std::holds_alternative<DxfChain>(bulgedPiece({0, 0, 0}, {2, 0, 0}, 1e9)));
  EXPECT_TRUE(std::holds_alternative<DxfChain>(bulgedPiece({1, 1, 0}, {1, 1, 0}, 1)));
}

TEST(DxfShapes, DrawsChordsWithinTheirShare) {
  const DxfConic circle{Vec3::Zero(), {3, 0, 0}, {0, 3, 0}, 0, 2 * kPi};
  const auto points = flattened({{circle}, false});
  for (std::size_t i = 1; i < points.size(); ++i)
    EXPECT_GE((0.5 * (points[i] + points[i - 1])).norm(), 3 * (1 - kChordShare));
}

// Weights 1, cos 45, 1 over a right angle make a quarter of a circle exactly (The NURBS Book, section 7.3).
TEST(DxfShapes, DrawsARationalQuarterCircle) {
  const DxfSpline quarter{2, {0, 0, 0, 1, 1, 1}, {1, std::sqrt(0.5), 1}, {{1, 0, 0}, {1, 1, 0}, {0, 1, 0}}};
  ASSERT_EQ(splineFault(quarter), nullptr);
  const auto points = flattened({{quarter}, false});
  for (const Vec2& point : points) EXPECT_NEAR(point.norm(), 1, 1e-14);
  // The control polygon is 2 long.
  for (std::size_t i = 1; i < points.size(); ++i)
    EXPECT_GE((0.5 * (points[i] + points[i - 1])).norm(), 1 - 1.1 * 2 * kSplineShare);
  EXPECT_LE(points.size(), 60u);
}

// Three points repeated round a triangle with evenly spaced knots: the curve lies between its inner knots
// only, and closes (The NURBS Book, section 12.2).
TEST(DxfShapes, DrawsAClosedSplineWithinItsInnerKnots) {
  const Vec3 a{0, 0, 0}, b{6, 0, 0}, c{0, 6, 0};
  const DxfSpline round{2, {0, 1, 2, 3, 4, 5, 6, 7}, {}, {a, b, c, a, b}};
  ASSERT_EQ(splineFault(round), nullptr);
  const auto points = flattened({{round}, false});
  EXPECT_TRUE(points.front().isApprox(Vec2(3, 0)));
  EXPECT_TRUE(points.back().isApprox(Vec2(3, 0)));
  for (const Vec2& point : points) EXPECT_NE(locate(Ring{{0, 0}, {6, 0}, {0, 6}}, point), Location::Outside);
}

TEST(DxfShapes, RefusesSplinesThatAreNone) {
  DxfSpline spline{2, {0, 0, 0, 1, 1, 1}, {}, {{1, 0, 0}, {1, 1, 0}, {0, 1, 0}}};
  EXPECT_EQ(splineFault(spline), nullptr);
  spline.degree = 3;
  EXPECT_NE(splineFault(spline), nullptr);
  spline.degree = 2;
  spline.knots = {0, 0, 1, 0, 1, 1};
  EXPECT_NE(splineFault(spline), nullptr);
  spline.knots = {0, 0, 0, 1, 1, 1};
  spline.weights = {1, 0, 1};
  EXPECT_NE(splineFault(spline), nullptr);
}

// Published DXF reference, arbitrary axis algorithm: below a sixty-fourth in x and y the world's y axis is
// taken, else its z axis.
TEST(DxfShapes, FindsTheAxesOfAnExtrusion) {
  EXPECT_TRUE(worldFromObject({0, 0, 1}).linear().isIdentity(1e-15));
  const DxfMap below = worldFromObject({0, 0, -1});
  EXPECT_TRUE((below * Vec3(1, 2, 3)).isApprox(Vec3(-1, 2, -3)));
  const DxfMap side = worldFromObject({1, 0, 0});
  EXPECT_TRUE((side * Vec3(1, 2, 3)).isApprox(Vec3(3, 1, 2)));
}

TEST(DxfShapes, KnowsWhenACircleStaysOne) {
  DxfConic circle;
  EXPECT_TRUE(isFlatCircle(circle));
  circle.v *= 1.01;
  EXPECT_FALSE(isFlatCircle(circle));
  circle.u = circle.v = Vec3::Zero();
  EXPECT_FALSE(isFlatCircle(circle));
}

}  // namespace
}  // namespace baywright::detail
