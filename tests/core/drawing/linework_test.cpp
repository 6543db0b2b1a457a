// SPDX-License-Identifier: Apache-2.0
#include "drawing/linework.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

Linework wallOfOneMetre() {
  Linework linework;
  Path path;
  path.layer = Layer::Walls;
  path.rings = {{{1, 2}, {2, 2}}};
  linework.paths.push_back(path);
  return linework;
}

TEST(Linework, OfNothingHasNoExtent) {
  EXPECT_FALSE(Linework().extent());
}

TEST(Linework, TextsAndSymbolsDoNotCountForItsExtent) {
  Linework linework;
  linework.texts.push_back({});
  linework.symbols.push_back({});
  EXPECT_FALSE(linework.extent());
}

TEST(Linework, ExtentHoldsTheLinesOfDimensions) {
  Linework linework = wallOfOneMetre();
  DimensionMark mark;
  mark.from = {1, 2};
  mark.to = {2, 2};
  mark.offset = 0.5;  // to the left: up
  linework.dimensions.push_back(mark);
  const auto extent = linework.extent();
  ASSERT_TRUE(extent);
  EXPECT_EQ(extent->min(), Vec2(1, 2));
  EXPECT_EQ(extent->max(), Vec2(2, 2.5));
}

TEST(Linework, AWallOfOneMetreIsTwentyMillimetresAtOneToFifty) {
  const Linework page = placed(wallOfOneMetre(), {1000.0 / 50, {7, 9}});
  const auto& wall = page.paths.front().rings.front();
  EXPECT_NEAR((wall[1] - wall[0]).norm(), 20.0, 1e-12);
  EXPECT_NEAR(wall[0].x(), 7 + 20, 1e-12);
  EXPECT_NEAR(wall[0].y(), 9 + 40, 1e-12);
}

TEST(Linework, KeepsTheSizeOfTextsWhenPlaced) {
  Linework linework;
  Text text;
  text.at = {1, 1};
  text.heightMm = 2.5;
  linework.texts.push_back(text);
  Symbol symbol;
  symbol.at = {2, 1};
  symbol.sizeMm = 4;
  linework.symbols.push_back(symbol);
  DimensionMark mark;
  mark.to = {1, 0};
  mark.offset = 0.5;
  linework.dimensions.push_back(mark);
  const Linework page = placed(linework, {20, {1, 0}});
  EXPECT_EQ(page.texts.front().at, Vec2(21, 20));
  EXPECT_EQ(page.texts.front().heightMm, 2.5);
  EXPECT_EQ(page.symbols.front().at, Vec2(41, 20));
  EXPECT_EQ(page.symbols.front().sizeMm, 4);
  EXPECT_EQ(page.dimensions.front().to, Vec2(21, 0));
  EXPECT_EQ(page.dimensions.front().offset, 10);
}

TEST(Linework, AppendsEveryKindOfMark) {
  Linework other = wallOfOneMetre();
  other.texts.push_back({});
  other.symbols.push_back({});
  other.dimensions.push_back({});
  Linework linework = wallOfOneMetre();
  linework.append(other);
  EXPECT_EQ(linework.paths.size(), 2u);
  EXPECT_EQ(linework.texts.size(), 1u);
  EXPECT_EQ(linework.symbols.size(), 1u);
  EXPECT_EQ(linework.dimensions.size(), 1u);
}

}  // namespace
}  // namespace baywright
