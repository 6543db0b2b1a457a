// SPDX-License-Identifier: Apache-2.0
#include "geometry/polygon_validity.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

const Ring kSquare{{0, 0}, {4, 0}, {4, 4}, {0, 4}};

TEST(SelfCrossings, NoneInASoundPolygon) {
  EXPECT_TRUE(selfCrossings({kSquare, {{{1, 1}, {2, 1}, {2, 2}}}}).empty());
}

TEST(SelfCrossings, NameBothEdgesAndThePlace) {
  const auto crossings = selfCrossings({{{0, 0}, {2, 2}, {2, 0}, {0, 2}}, {}});
  ASSERT_EQ(crossings.size(), 1U);
  EXPECT_EQ(crossings[0], (EdgeCrossing{0, 0, 0, 2, Vec2(1, 1)}));
}

TEST(SelfCrossings, FindTouchesOverlapsAndSpikes) {
  const auto touch = selfCrossings({{{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}}, {}});
  ASSERT_EQ(touch.size(), 2U) << "a corner on an edge meets it with both its edges";
  EXPECT_EQ(touch[0].point, Vec2(2, 0));
  const auto spike = selfCrossings({{{0, 0}, {4, 0}, {2, 0}, {2, 3}}, {}});
  ASSERT_FALSE(spike.empty());
  EXPECT_EQ(spike[0], (EdgeCrossing{0, 0, 0, 1, Vec2(3, 0)}));
}

TEST(SelfCrossings, FindAHoleThatLeavesTheOutline) {
  const auto crossings = selfCrossings({kSquare, {{{3, 1}, {5, 1}, {5, 2}, {3, 2}}}});
  ASSERT_EQ(crossings.size(), 2U);
  EXPECT_EQ(crossings[0], (EdgeCrossing{0, 1, 1, 0, Vec2(4, 1)}));
}

struct BadPolygon {
  const char* sentence;
  Polygon polygon;
};

TEST(Validated, SaysWhatIsWrong) {
  const std::vector<BadPolygon> cases{
      {"at least three corners", {{{0, 0}, {1, 0}}, {}}},
      {"not a finite number", {{{0, 0}, {1, 0}, {0, std::nan("")}}, {}}},
      {"outline, corner 2: Two corners in a row", {{{0, 0}, {1, 0}, {1, 0}, {0, 1}}, {}}},
      {"outline, corner 3: Two corners in a row", {{{0, 0}, {1, 0}, {0, 0}}, {}}},
      {"outline: Edge 1 meets edge 3 at x 1.000 m, y 1.000 m.", {{{0, 0}, {2, 2}, {2, 0}, {0, 2}}, {}}},
      {"outline: Edge 2 meets edge 1 of hole 1 at x 4.000 m", {kSquare, {{{3, 1}, {5, 1}, {5, 2}, {3, 2}}}}},
      {"no area", {{{0, 0}, {1e-5, 0}, {0, 1e-6}}, {}}},
      {"hole 1: The hole lies outside", {kSquare, {{{5, 5}, {6, 5}, {6, 6}}}}},
      {"hole 2: The hole lies inside another",
       {kSquare, {{{1, 1}, {3, 1}, {3, 3}, {1, 3}}, {{1.5, 1.5}, {2, 1.5}, {2, 2}}}}},
      {"hole 1: A region needs", {kSquare, {{{1, 1}, {2, 1}}}}},
  };
  EXPECT_TRUE(validated({kSquare, {{{1, 1}, {2, 1}, {2, 2}}}}));
  for (const BadPolygon& bad : cases) {
    const auto result = validated(bad.polygon);
    ASSERT_FALSE(result) << bad.sentence;
    EXPECT_NE(result.error().sentence().find(bad.sentence), std::string::npos) << result.error().sentence();
  }
}

}  // namespace
}  // namespace baywright
