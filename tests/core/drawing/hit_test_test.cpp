// SPDX-License-Identifier: Apache-2.0
#include "drawing/hit_test.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

constexpr HitReach kReach{0.05, 0.05};

Path box(Layer layer, Id id, double left, double right, double bottom, double top) {
  Path path;
  path.layer = layer;
  path.id = id;
  path.closed = true;
  path.rings = {{{left, bottom}, {right, bottom}, {right, top}, {left, top}}};
  return path;
}

Path line(Layer layer, Id id, const Vec2& a, const Vec2& b) {
  Path path;
  path.layer = layer;
  path.id = id;
  path.rings = {{a, b}};
  return path;
}

std::vector<std::uint32_t> idsAt(const Linework& linework, const Vec2& point) {
  std::vector<std::uint32_t> ids;
  for (const Hit& hit : hitsAt(linework, point, kReach)) ids.push_back(hit.id.value);
  return ids;
}

using Ids = std::vector<std::uint32_t>;

TEST(HitTest, FindsTheSmallerThingInsideTheLargerFirst) {
  Linework linework;
  linework.paths = {box(Layer::Bay, {1}, 0, 1, 0, 1), box(Layer::Bay, {2}, -2, 3, -2, 3)};
  EXPECT_EQ(idsAt(linework, {0.5, 0.5}), (Ids{1, 2}));
  EXPECT_EQ(idsAt(linework, {2.5, 2.5}), (Ids{2}));
  EXPECT_EQ(idsAt(linework, {9, 9}), Ids{});
}

TEST(HitTest, PutsZonesBehindThings) {
  Linework linework;
  linework.paths = {box(Layer::Swing, {7}, 0, 1, 0, 1), box(Layer::Fixtures, {8}, -5, 5, -5, 5)};
  EXPECT_EQ(idsAt(linework, {0.5, 0.5}), (Ids{8, 7}));
}

TEST(HitTest, HitsALineWithinReachAndNoFarther) {
  Linework linework;
  linework.paths = {line(Layer::Openings, {3}, {0, 0}, {2, 0})};
  EXPECT_EQ(idsAt(linework, {1, 0.049}), (Ids{3}));
  EXPECT_EQ(idsAt(linework, {1, 0.051}), Ids{});
  EXPECT_EQ(idsAt(linework, {2.04, 0}), (Ids{3}));
  EXPECT_EQ(idsAt(linework, {2.06, 0}), Ids{});
  EXPECT_NEAR(hitsAt(linework, {1, 0.03}, kReach).front().distance, 0.03, 1e-12);
}

TEST(HitTest, DoesNotCloseAnOpenPath) {
  Linework linework;
  Path corner = line(Layer::Openings, {3}, {0, 0}, {2, 0});
  corner.rings[0].push_back({2, 2});
  linework.paths = {corner};
  EXPECT_EQ(idsAt(linework, {1, 1}), Ids{});
}

TEST(HitTest, LeavesHolesOut) {
  Linework linework;
  Path ring = box(Layer::Walls, {4}, 0, 4, 0, 4);
  ring.rings.push_back({{1, 1}, {3, 1}, {3, 3}, {1, 3}});
  linework.paths = {ring};
  EXPECT_EQ(idsAt(linework, {2, 2}), Ids{});
  EXPECT_EQ(idsAt(linework, {0.5, 2}), (Ids{4}));
}

TEST(HitTest, NamesEachThingOnceByItsBestMark) {
  Linework linework;
  linework.paths = {box(Layer::Bay, {5}, 0, 4, 0, 4), box(Layer::Bay, {5}, 0, 1, 0, 1),
                    box(Layer::Bay, {6}, 0, 2, 0, 2)};
  const auto hits = hitsAt(linework, {0.5, 0.5}, kReach);
  ASSERT_EQ(hits.size(), 2u);
  EXPECT_EQ(hits[0].id, Id{5});
  EXPECT_EQ(hits[0].area, 1);
}

TEST(HitTest, KnowsTheSizeOfSymbolsOnTheScreen) {
  Linework linework;
  Symbol lens;
  lens.layer = Layer::Bay;
  lens.kind = SymbolKind::Lens;
  lens.at = {1, 1};
  lens.sizeMm = 4;  // 0.2 m here, half of it to each side
  lens.id = {9};
  linework.symbols = {lens};
  EXPECT_EQ(idsAt(linework, {1.14, 1}), (Ids{9}));
  EXPECT_EQ(idsAt(linework, {1.16, 1}), Ids{});
}

TEST(HitTest, TakesTheUpperOfTwoThatAreEquallyGood) {
  Linework linework;
  linework.paths = {box(Layer::Fixtures, {1}, 0, 1, 0, 1), box(Layer::Fixtures, {2}, 0, 1, 0, 1)};
  EXPECT_EQ(idsAt(linework, {0.5, 0.5}), (Ids{2, 1}));
}

TEST(HitTest, PassesOverWhatBelongsToNothing) {
  Linework linework;
  linework.paths = {box(Layer::Fixtures, {}, 0, 1, 0, 1), box(Layer::Floor, {1}, 0, 1, 0, 1),
                    box(Layer::Tightest, {2}, 0, 1, 0, 1)};
  EXPECT_EQ(idsAt(linework, {0.5, 0.5}), Ids{});
}

}  // namespace
}  // namespace baywright
