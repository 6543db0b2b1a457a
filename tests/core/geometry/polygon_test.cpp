// SPDX-License-Identifier: Apache-2.0
#include "geometry/polygon.h"

#include <gtest/gtest.h>

#include "random_shapes.h"

namespace baywright {
namespace {

const Ring kLRoom{{0, 0}, {6, 0}, {6, 2}, {2, 2}, {2, 5}, {0, 5}};

Ring shifted(Ring ring, const Vec2& by) {
  for (Vec2& p : ring) p += by;
  return ring;
}
Ring reversedRing(Ring ring) {
  std::reverse(ring.begin(), ring.end());
  return ring;
}

TEST(Polygon, AreaIsSignedByTheSense) {
  EXPECT_DOUBLE_EQ(signedArea(kLRoom), 18);
  EXPECT_DOUBLE_EQ(signedArea(reversedRing(kLRoom)), -18);
  EXPECT_EQ(signedArea(Ring{{0, 0}, {1, 1}}), 0);
  EXPECT_EQ(signedArea(Ring{}), 0);
}

TEST(Polygon, AreaKeepsItsDigitsFarFromTheOrigin) {
  EXPECT_NEAR(signedArea(shifted(kLRoom, {4e5, 5e6})), 18, 1e-8);
}

TEST(Polygon, HolesAreTakenOffWhicheverWayTheyWind) {
  const Ring column{{0.5, 0.5}, {1, 0.5}, {1, 1}, {0.5, 1}};
  EXPECT_DOUBLE_EQ(area(Polygon{kLRoom, {column}}), 17.75);
  EXPECT_DOUBLE_EQ(area(Polygon{reversedRing(kLRoom), {reversedRing(column)}}), 17.75);
}

TEST(Polygon, PerimeterClosesTheRing) {
  EXPECT_DOUBLE_EQ(perimeter(kLRoom), 22);
}

TEST(Polygon, CentroidOfAnLIsThatOfItsTwoRectangles) {
  // 6 x 2 at (3, 1) and 2 x 3 at (1, 3.5).
  const Vec2 expected = (12 * Vec2(3, 1) + 6 * Vec2(1, 3.5)) / 18;
  EXPECT_NEAR((centroid({kLRoom, {}}) - expected).norm(), 0, 1e-14);
  EXPECT_NEAR((centroid({reversedRing(kLRoom), {}}) - expected).norm(), 0, 1e-14);
  const Ring hole{{4, 0.5}, {5, 0.5}, {5, 1.5}, {4, 1.5}};
  const Vec2 withHole = (18 * expected - Vec2(4.5, 1)) / 17;
  EXPECT_NEAR((centroid({kLRoom, {hole}}) - withHole).norm(), 0, 1e-14);
}

TEST(Polygon, CentroidOfALineIsTheMeanOfItsCorners) {
  EXPECT_NEAR((centroid({{{0, 0}, {2, 2}, {4, 4}}, {}}) - Vec2(2, 2)).norm(), 0, 1e-15);
}

TEST(Polygon, NormalisedTurnsOuterLeftAndHolesRight) {
  const Ring hole{{0.5, 0.5}, {1, 0.5}, {1, 1}};
  const Polygon p = normalised({reversedRing(kLRoom), {hole}});
  EXPECT_GT(signedArea(p.outer), 0);
  EXPECT_LT(signedArea(p.holes[0]), 0);
}

TEST(Locate, InsideOutsideAndOnEveryKindOfBoundary) {
  EXPECT_EQ(locate(kLRoom, {1, 4}), Location::Inside);
  EXPECT_EQ(locate(kLRoom, {4, 4}), Location::Outside);
  EXPECT_EQ(locate(kLRoom, {-1, 2}), Location::Outside) << "level with two corners";
  EXPECT_EQ(locate(kLRoom, {7, 2}), Location::Outside);
  EXPECT_EQ(locate(kLRoom, {1, 2}), Location::Inside) << "level with an edge";
  EXPECT_EQ(locate(kLRoom, {4, 2}), Location::Boundary);
  EXPECT_EQ(locate(kLRoom, {2, 3}), Location::Boundary);
  EXPECT_EQ(locate(kLRoom, {6, 0}), Location::Boundary);
}

TEST(Locate, AHoleIsOutsideAndItsEdgeBoundary) {
  const Polygon p{{{0, 0}, {4, 0}, {4, 4}, {0, 4}}, {{{1, 1}, {2, 1}, {2, 2}, {1, 2}}}};
  EXPECT_EQ(locate(p, {1.5, 1.5}), Location::Outside);
  EXPECT_EQ(locate(p, {1, 1.5}), Location::Boundary);
  EXPECT_EQ(locate(p, {3, 3}), Location::Inside);
}

TEST(ClosestOnBoundary, NamesTheEdgeAndThePoint) {
  const Polygon room{kLRoom, {{{0.5, 3}, {1, 3}, {1, 4}, {0.5, 4}}}};
  const BoundaryPoint b = closestOnBoundary(room, Vec2(5, 1.75));
  EXPECT_DOUBLE_EQ(b.distance, 0.25);
  EXPECT_EQ(b.edge, 2);
  EXPECT_EQ(b.ring, 0);
  EXPECT_EQ(b.point, Vec2(5, 2));
  const BoundaryPoint atHole = closestOnBoundary(room, Vec2(0.75, 2.9));
  EXPECT_EQ(atHole.ring, 1);
  EXPECT_EQ(atHole.edge, 0);
  EXPECT_NEAR(atHole.distance, 0.1, 1e-15);
}

TEST(ClosestOnBoundary, ASegmentThatCrossesIsAtNothing) {
  const BoundaryPoint b = closestOnBoundary({kLRoom, {}}, Segment2{{1, 1}, {1, 9}});
  EXPECT_EQ(b.distance, 0);
  EXPECT_EQ(b.edge, 4);
  EXPECT_NEAR((b.point - Vec2(1, 5)).norm(), 0, 1e-15);
  const BoundaryPoint inside = closestOnBoundary({kLRoom, {}}, Segment2{{1, 1}, {3, 1.5}});
  EXPECT_NEAR(inside.distance, 0.5, 1e-15);
}

TEST(Simplified, DropsStraightAndRepeatedCorners) {
  const Ring ring{{0, 0}, {1, 0}, {1, 0}, {2, 0}, {2, 2}, {1, 2.00001}, {0, 2}, {0, 1}};
  EXPECT_EQ(simplified(ring, 1e-4), (Ring{{0, 0}, {2, 0}, {2, 2}, {0, 2}}));
  EXPECT_EQ(simplified(ring, 0).size(), 5U);
}

TEST(Simplified, NeverStraysBeyondTheTolerance) {
  // A circle in 400 steps: leaving corners out one by one would let the line drift away.
  Ring circle;
  for (int i = 0; i < 400; ++i) circle.emplace_back(std::cos(2 * kPi * i / 400), std::sin(2 * kPi * i / 400));
  const Ring coarse = simplified(circle, 0.01);
  EXPECT_LT(coarse.size(), 50U);
  for (const Vec2& p : circle) EXPECT_LE(closestOnBoundary({coarse, {}}, p).distance, 0.01);
}

TEST(Simplified, AFlatRingIsNothing) {
  EXPECT_TRUE(simplified({{0, 0}, {1, 0}, {2, 0}, {1, 0}}, 1e-9).empty());
  EXPECT_TRUE(simplified({{0, 0}, {1, 0}}, 0).empty());
}

TEST(ConvexHull, TurnsLeftAndHasNoStraightCorner) {
  const Ring hull = convexHull({{0, 0}, {2, 0}, {1, 0}, {1, 0.5}, {2, 2}, {0, 2}, {0, 1}, {2, 0}});
  EXPECT_EQ(hull, (Ring{{0, 0}, {2, 0}, {2, 2}, {0, 2}}));
}

TEST(ConvexHull, OfALineIsItsEnds) {
  EXPECT_EQ(convexHull({{1, 1}, {0, 0}, {2, 2}, {3, 3}}), (Ring{{0, 0}, {3, 3}}));
  EXPECT_EQ(convexHull({{1, 1}, {1, 1}}).size(), 1U);
  EXPECT_TRUE(convexHull({}).empty());
}

TEST(ConvexHull, HoldsAllItsPoints) {
  test::RandomShapes random(21);
  for (int i = 0; i < 200; ++i) {
    std::vector<Vec2> points;
    for (int k = 0; k < 30; ++k) points.push_back(random.point2(1));
    const Ring hull = convexHull(points);
    EXPECT_TRUE(isConvex(hull));
    EXPECT_GT(signedArea(hull), 0);
    for (const Vec2& p : points) EXPECT_NE(locate(hull, p), Location::Outside);
  }
}

TEST(IsConvex, KnowsDentsStraightCornersAndStars) {
  EXPECT_TRUE(isConvex(Ring{{0, 0}, {2, 0}, {2, 2}, {0, 2}}));
  EXPECT_TRUE(isConvex(Ring{{0, 2}, {2, 2}, {2, 0}, {1, 0}, {0, 0}}));
  EXPECT_FALSE(isConvex(kLRoom));
  Ring star;
  for (int i = 0; i < 5; ++i) star.emplace_back(std::cos(4 * kPi * i / 5), std::sin(4 * kPi * i / 5));
  EXPECT_FALSE(isConvex(star)) << "it turns one way only, but twice round";
  EXPECT_FALSE(isConvex(Ring{{0, 0}, {2, 0}, {1, 0}}));
}

}  // namespace
}  // namespace baywright
