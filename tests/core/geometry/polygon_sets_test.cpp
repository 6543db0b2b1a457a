// SPDX-License-Identifier: Apache-2.0
#include "geometry/polygon_sets.h"

#include <gtest/gtest.h>

#include "geometry/polygon_validity.h"
#include "random_shapes.h"

namespace baywright {
namespace {

Ring rectangle(double left, double bottom, double right, double top) {
  return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}
Polygon solidRectangle(double left, double bottom, double right, double top) {
  return {rectangle(left, bottom, right, top), {}};
}
bool holds(const PolygonSet& set, const Vec2& p) {
  return std::any_of(set.begin(), set.end(),
                     [&](const Polygon& q) { return locate(q, p) != Location::Outside; });
}

TEST(PolygonSets, UnionOfOverlappingAndApart) {
  const auto joined =
      unionOf({solidRectangle(0, 0, 2, 2), solidRectangle(1, 1, 3, 3), solidRectangle(9, 9, 10, 10)});
  ASSERT_TRUE(joined);
  EXPECT_EQ(joined->size(), 2U);
  EXPECT_NEAR(area(*joined), 4 + 4 - 1 + 1, 1e-9);
}

TEST(PolygonSets, UnionIgnoresTheSenseOfItsRings) {
  Polygon clockwise = solidRectangle(0, 0, 2, 2);
  std::reverse(clockwise.outer.begin(), clockwise.outer.end());
  const auto joined = unionOf({clockwise}, {solidRectangle(1, 0, 3, 2)});
  EXPECT_NEAR(area(*joined), 6, 1e-9);
}

TEST(PolygonSets, DifferenceLeavesAHoleThatWindsTheOtherWay) {
  const auto ring = differenceOf({solidRectangle(0, 0, 4, 4)}, {solidRectangle(1, 1, 2, 2)});
  ASSERT_TRUE(ring);
  ASSERT_EQ(ring->size(), 1U);
  ASSERT_EQ((*ring)[0].holes.size(), 1U);
  EXPECT_GT(signedArea((*ring)[0].outer), 0);
  EXPECT_LT(signedArea((*ring)[0].holes[0]), 0);
  EXPECT_NEAR(area(*ring), 15, 1e-9);
}

TEST(PolygonSets, IslandInAHoleIsARegionOfItsOwn) {
  const auto ring = differenceOf({solidRectangle(0, 0, 5, 5)}, {solidRectangle(1, 1, 4, 4)});
  const auto both = unionOf(*ring, {solidRectangle(2, 2, 3, 3)});
  ASSERT_TRUE(both);
  EXPECT_EQ(both->size(), 2U);
  EXPECT_NEAR(area(*both), 25 - 9 + 1, 1e-9);
}

TEST(PolygonSets, IntersectionOfARingAndABar) {
  const auto ring = differenceOf({solidRectangle(0, 0, 5, 5)}, {solidRectangle(1, 1, 4, 4)});
  const auto ends = intersectionOf(*ring, {solidRectangle(-1, 2, 9, 3)});
  ASSERT_TRUE(ends);
  EXPECT_EQ(ends->size(), 2U);
  EXPECT_NEAR(area(*ends), 2, 1e-9);
  EXPECT_TRUE(intersectionOf({solidRectangle(0, 0, 1, 1)}, {solidRectangle(2, 2, 3, 3)})->empty());
}

TEST(PolygonSets, OffsetGrowsByTheArcsArea) {
  const auto round = offsetOf({solidRectangle(0, 0, 2, 1)}, 0.5, OffsetCorner::Round);
  ASSERT_TRUE(round);
  const double exact = 2 + 0.5 * 6 + kPi * 0.25;
  EXPECT_LE(area(*round), exact + 1e-6);
  EXPECT_GE(area(*round), exact - 2 * kPi * 0.5 * kArcTolerance);
  const auto sharp = offsetOf({solidRectangle(0, 0, 2, 1)}, 0.5, OffsetCorner::Miter);
  EXPECT_NEAR(area(*sharp), 3 * 2, 1e-9);
  const auto inward = offsetOf({solidRectangle(0, 0, 2, 1)}, -0.25, OffsetCorner::Miter);
  EXPECT_NEAR(area(*inward), 1.5 * 0.5, 1e-9);
  EXPECT_TRUE(offsetOf({solidRectangle(0, 0, 2, 1)}, -0.6, OffsetCorner::Round)->empty());
}

TEST(PolygonSets, RefuseWhatIsOffTheMap) {
  EXPECT_FALSE(unionOf({solidRectangle(0, 0, 1e7, 1)}));
  EXPECT_FALSE(differenceOf({solidRectangle(0, 0, 1, 1)}, {{{{0, 0}, {1, 0}, {0, std::nan("")}}, {}}}));
  EXPECT_FALSE(offsetOf({solidRectangle(0, 0, 1, 1)}, std::nan(""), OffsetCorner::Round));
  EXPECT_FALSE(minkowskiSum({solidRectangle(0, 0, 1, 1)}, {{0, 0}, {2, 2}, {2, 0}, {0, 2}}));
  EXPECT_FALSE(minkowskiSum({solidRectangle(0, 0, 1, 1)}, rectangle(0, 0, std::nan(""), 1)));
}

TEST(MinkowskiSum, OfRectanglesAddsTheirSides) {
  const auto sum = minkowskiSum({solidRectangle(0, 0, 2, 1)}, rectangle(-1, -0.5, 1, 0.5));
  ASSERT_TRUE(sum);
  ASSERT_EQ(sum->size(), 1U);
  EXPECT_TRUE((*sum)[0].holes.empty());
  EXPECT_NEAR(area(*sum), 4 * 2, 1e-9);
}

TEST(MinkowskiSum, HasNoFalseHoleWhereAPostMeetsABigFootprint) {
  // The outline of the sum of a small post and a big footprint swept line along line would be a ring.
  const auto sum = minkowskiSum({solidRectangle(0, 0, 0.1, 0.1)}, rectangle(-2, -1.5, 2, 1.5));
  ASSERT_TRUE(sum);
  ASSERT_EQ(sum->size(), 1U);
  EXPECT_TRUE((*sum)[0].holes.empty());
  EXPECT_TRUE(holds(*sum, {0, 0}));
}

TEST(MinkowskiSum, KeepsTheHoleThatTheFootprintFitsIn) {
  // A room as the ring of its walls: 6 x 4 inside. A 2 x 1 footprint leaves 4 x 3 for its middle.
  const auto walls = differenceOf({solidRectangle(-1, -1, 7, 5)}, {solidRectangle(0, 0, 6, 4)});
  const auto blocked = minkowskiSum(*walls, rectangle(-1, -0.5, 1, 0.5));
  ASSERT_TRUE(blocked);
  ASSERT_EQ(blocked->size(), 1U);
  ASSERT_EQ((*blocked)[0].holes.size(), 1U);
  EXPECT_NEAR(-signedArea((*blocked)[0].holes[0]), 12, 1e-9);
}

TEST(MinkowskiSum, OfAConcaveFootprintIsExactAtRandomPoints) {
  const Ring footprint{{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 3}, {0, 3}};
  const PolygonSet obstacles{{{{0, 0}, {1.5, 0.3}, {0.4, 0.5}, {0.2, 1.4}}, {}},
                             solidRectangle(4, 4, 4.5, 6)};
  const auto sum = minkowskiSum(obstacles, mirrored(footprint));
  ASSERT_TRUE(sum);
  const auto inner = offsetOf(*sum, -1e-4, OffsetCorner::Miter);
  test::RandomShapes random(41);
  for (int i = 0; i < 2000; ++i) {
    const Vec2 p = Vec2(2, 2) + random.point2(5);
    Ring placed = footprint;
    for (Vec2& q : placed) q += p;
    const double overlap = area(*intersectionOf({{placed, {}}}, obstacles));
    if (overlap > 1e-5) {
      EXPECT_TRUE(holds(*sum, p)) << p.transpose();
    }
    if (overlap == 0) {
      EXPECT_FALSE(holds(*inner, p)) << p.transpose();
    }
  }
}

TEST(MinkowskiSum, DoesNotDependOnWhereThingsAre) {
  test::RandomShapes random(42);
  for (int i = 0; i < 50; ++i) {
    std::vector<Vec2> points;
    for (int k = 0; k < 8; ++k) points.push_back(random.point2(1));
    const Ring obstacle = convexHull(points);
    const Ring footprint = rectangle(-0.7, -0.2, 0.4, 0.9);
    const double here = area(*minkowskiSum({{obstacle, {}}}, footprint));
    Ring moved = obstacle;
    for (Vec2& p : moved) p += Vec2(123.456, -654.321);
    EXPECT_NEAR(area(*minkowskiSum({{moved, {}}}, footprint)), here, 1e-4);
    // Convex shapes: area(A + B) = area(A) + area(B) + 2 V(A, B); with a rectangle the mixed part is
    // (width of A) * height + (height of A) * width.
    Vec2 low = obstacle[0];
    Vec2 high = obstacle[0];
    for (const Vec2& p : obstacle) {
      low = low.cwiseMin(p);
      high = high.cwiseMax(p);
    }
    const Vec2 extent = high - low;
    EXPECT_NEAR(here, signedArea(obstacle) + 1.1 * 1.1 + 1.1 * extent.x() + 1.1 * extent.y(), 1e-4);
  }
}

}  // namespace
}  // namespace baywright
