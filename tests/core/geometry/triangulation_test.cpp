// SPDX-License-Identifier: Apache-2.0
#include "geometry/triangulation.h"

#include <gtest/gtest.h>

#include "random_shapes.h"

namespace baywright {
namespace {

Ring cornersOf(const Triangulation& cut, const std::array<int, 3>& triangle) {
  Ring ring;
  for (const int corner : triangle) ring.push_back(cut.corners[static_cast<std::size_t>(corner)]);
  return ring;
}

void expectFills(const Polygon& polygon) {
  const auto cut = triangulated(polygon);
  ASSERT_TRUE(cut) << cut.error().sentence();
  double sum = 0;
  for (const auto& triangle : cut->triangles) {
    const double piece = signedArea(cornersOf(*cut, triangle));
    EXPECT_GT(piece, 0);
    sum += piece;
    EXPECT_NE(locate(polygon, centroid({cornersOf(*cut, triangle), {}})), Location::Outside);
  }
  EXPECT_NEAR(sum, area(polygon), 1e-12 * (1 + area(polygon)));

  const auto pieces = convexPieces(polygon);
  ASSERT_TRUE(pieces);
  EXPECT_LE(pieces->size(), cut->triangles.size());
  sum = 0;
  for (const Ring& piece : *pieces) {
    EXPECT_TRUE(isConvex(piece));
    EXPECT_GT(signedArea(piece), 0);
    sum += signedArea(piece);
  }
  EXPECT_NEAR(sum, area(polygon), 1e-12 * (1 + area(polygon)));
}

TEST(Triangulation, AConvexRingIsOnePiece) {
  const Ring hexagon{{1, 0}, {2, 0}, {3, 1}, {2, 2}, {1, 2}, {0, 1}};
  expectFills({hexagon, {}});
  EXPECT_EQ(triangulated({hexagon, {}})->triangles.size(), 4U);
  EXPECT_EQ(convexPieces({hexagon, {}})->size(), 1U);
}

TEST(Triangulation, AnLIsTwoPiecesAndACrossAtMostFive) {
  const Ring l{{0, 0}, {6, 0}, {6, 2}, {2, 2}, {2, 5}, {0, 5}};
  expectFills({l, {}});
  EXPECT_EQ(convexPieces({l, {}})->size(), 2U);
  const Ring cross{{1, 0}, {2, 0}, {2, 1}, {3, 1}, {3, 2}, {2, 2},
                   {2, 3}, {1, 3}, {1, 2}, {0, 2}, {0, 1}, {1, 1}};
  expectFills({cross, {}});
  EXPECT_LE(convexPieces({cross, {}})->size(), 5U);
}

TEST(Triangulation, StraightCornersAndClockwiseRings) {
  expectFills({{{0, 0}, {1, 0}, {2, 0}, {2, 1}, {2, 2}, {1, 2}, {0, 2}, {0, 1}}, {}});
  expectFills({{{0, 5}, {2, 5}, {2, 2}, {6, 2}, {6, 0}, {0, 0}}, {}});
}

TEST(Triangulation, ACornerOnACutBlocksIt) {
  // (2, 2) lies on the way from (0, 4) to (4, 0): the corner at the origin cannot be cut off.
  expectFills({{{0, 0}, {4, 0}, {4, 4}, {2, 2}, {0, 4}}, {}});
}

TEST(Triangulation, HolesInARowAndSideBySide) {
  const Ring room{{0, 0}, {10, 0}, {10, 6}, {0, 6}};
  const auto column = [](double x, double y) {
    return Ring{{x, y}, {x + 0.5, y}, {x + 0.5, y + 0.5}, {x, y + 0.5}};
  };
  expectFills({room, {column(2, 2)}});
  expectFills({room, {column(2, 2), column(4, 2), column(6, 2), column(8, 2)}});
  expectFills({room, {column(5, 1), column(5, 2), column(5, 3), column(5, 4)}});
  expectFills({room, {column(8, 2), column(2, 4), column(2, 1), column(5, 5)}});
}

TEST(Triangulation, RandomStarsWithAndWithoutHoles) {
  test::RandomShapes random(31);
  for (int i = 0; i < 300; ++i) {
    Polygon polygon;
    const int corners = 5 + random.upTo(40);
    for (int k = 0; k < corners; ++k) {
      const double angle = 2 * kPi * k / corners;
      polygon.outer.push_back(random.between(1, 4) * Vec2(std::cos(angle), std::sin(angle)));
    }
    const Ring hole{{0.1, 0.1}, {0.4, 0.1}, {0.1, 0.4}};
    if (random.oneIn(2)) polygon.holes = {hole};
    if (random.oneIn(3)) {
      Ring opposite = hole;
      for (Vec2& p : opposite) p = -p;
      polygon.holes.push_back(opposite);
    }
    expectFills(polygon);
  }
}

TEST(Triangulation, RefusesACrossingRing) {
  EXPECT_FALSE(triangulated({{{0, 0}, {2, 2}, {2, 0}, {0, 2}}, {}}));
  EXPECT_FALSE(convexPieces({{{0, 0}, {2, 2}, {2, 0}, {0, 2}}, {}}));
}

}  // namespace
}  // namespace baywright
