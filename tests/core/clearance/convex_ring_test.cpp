// SPDX-License-Identifier: Apache-2.0
#include "clearance/convex_ring.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

const Ring kSquare = {{0, 0}, {2, 0}, {2, 2}, {0, 2}};

TEST(ConvexRing, CutsOffWhatLiesBeyond) {
  EXPECT_DOUBLE_EQ(signedArea(clipped(kSquare, {{1, 0}, 0.5})), 1.0);
  EXPECT_DOUBLE_EQ(signedArea(clipped(kSquare, {{1, 0}, 5})), 4.0);
}

TEST(ConvexRing, IsEmptyWhereNothingIsLeft) {
  EXPECT_TRUE(clipped(kSquare, {{1, 0}, -1}).empty());
  EXPECT_TRUE(clipped(kSquare, {{1, 0}, 0}).empty());  // an edge has no area
}

TEST(ConvexRing, LiesBehindItsOwnEdges) {
  for (std::size_t edge = 0; edge < kSquare.size(); ++edge) {
    const HalfPlane behind = behindEdge(kSquare, edge);
    EXPECT_LT(behind.normal.dot(Vec2(1, 1)), behind.offset);
    EXPECT_NEAR(behind.normal.dot(kSquare[edge]), behind.offset, 1e-12);
  }
}

TEST(ConvexRing, IsWhatAllHalfPlanesShare) {
  std::vector<HalfPlane> keep;
  for (std::size_t edge = 0; edge < kSquare.size(); ++edge) keep.push_back(behindEdge(kSquare, edge));
  EXPECT_NEAR(signedArea(commonOf(keep, {1, 1}, 10)), 4.0, 1e-12);
  EXPECT_NEAR(signedArea(commonOf({}, {1, 1}, 10)), 400.0, 1e-9);
}

}  // namespace
}  // namespace baywright
