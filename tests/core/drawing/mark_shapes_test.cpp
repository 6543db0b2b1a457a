// SPDX-License-Identifier: Apache-2.0
#include "drawing/mark_shapes.h"

#include <gtest/gtest.h>

#include <cmath>

#include "drawing/text_box.h"

namespace baywright {
namespace {

DimensionMark dimension(Vec2 from, Vec2 to, double offset) {
  DimensionMark mark;
  mark.from = from;
  mark.to = to;
  mark.offset = offset;
  mark.text = "2.300 m";
  return mark;
}

TEST(DimensionShape, HasItsLineToTheLeftOfTheWay) {
  const Linework shape = shapeOf(dimension({0, 0}, {50, 0}, 8), 1);
  const auto& line = shape.paths.front().rings.front();
  EXPECT_EQ(line.front(), Vec2(0, 8));
  EXPECT_EQ(line.back(), Vec2(50, 8));
}

TEST(DimensionShape, ExtensionLinesLeaveAGapAndOvershoot) {
  const Linework shape = shapeOf(dimension({0, 0}, {50, 0}, -8), 1);
  ASSERT_EQ(shape.paths.front().rings.size(), 3u);
  const auto& extension = shape.paths.front().rings[1];
  EXPECT_EQ(extension.front(), Vec2(0, -1));
  EXPECT_EQ(extension.back(), Vec2(0, -9.5));
}

TEST(DimensionShape, HasNoExtensionLinesWhereItStandsOnItsPoints) {
  EXPECT_EQ(shapeOf(dimension({0, 0}, {50, 0}, 0), 1).paths.front().rings.size(), 1u);
}

TEST(DimensionShape, TextIsReadFromBelowOrFromTheRight) {
  for (int degrees = 0; degrees < 360; degrees += 15) {
    const double angle = degrees * kPi / 180;
    const Linework shape = shapeOf(dimension({0, 0}, 60 * Vec2(std::cos(angle), std::sin(angle)), 5), 1);
    const double turned = shape.texts.front().angle;
    EXPECT_GT(turned, -kPi / 2 + 1e-9) << degrees;
    EXPECT_LE(turned, kPi / 2 + 1e-9) << degrees;
    EXPECT_NEAR(std::sin(turned - angle), 0, 1e-9) << degrees;
  }
}

// Walls traced by hand are a little out of plumb, each its own way.
TEST(DimensionShape, TextsAlongNearlyUprightLinesAllReadFromTheRight) {
  for (const double degrees : {88.5, 89.5, 90.0, 90.5, 91.5, 268.5, 269.9, 270.0, 270.1, 271.5}) {
    const double angle = degrees * kPi / 180;
    const Linework shape = shapeOf(dimension({0, 0}, 60 * Vec2(std::cos(angle), std::sin(angle)), 5), 1);
    EXPECT_NEAR(shape.texts.front().angle, kPi / 2, 2 * kPi / 180) << degrees;
  }
}

TEST(DimensionShape, TextStandsAboveTheMiddleOfItsLine) {
  const Text text = shapeOf(dimension({0, 0}, {50, 0}, 8), 1).texts.front();
  EXPECT_EQ(text.anchor, TextAnchor::Centre);
  EXPECT_EQ(text.at, Vec2(25, 9));
}

TEST(DimensionShape, TextThatHasNoRoomStandsBeyondTheEnd) {
  const Linework shape = shapeOf(dimension({0, 0}, {4, 0}, 0), 1);
  const auto box = boxOf(shape.texts.front(), 1);
  EXPECT_GT(box.min().x(), 4);
  // and the line runs on under it
  EXPECT_NEAR(shape.paths.front().rings.front().back().x(), box.max().x(), 1e-9);
}

TEST(DimensionShape, TextBeyondTheEndOfALineThatRunsLeftStandsLeftOfIt) {
  const auto box = boxOf(shapeOf(dimension({4, 0}, {0, 0}, 0), 1).texts.front(), 1);
  EXPECT_LT(box.max().x(), 0);
}

TEST(DimensionShape, ArrowheadsTouchThePoints) {
  DimensionMark mark = dimension({0, 0}, {50, 0}, 0);
  mark.arrows = true;
  const Path heads = shapeOf(mark, 1).paths.back();
  EXPECT_EQ(heads.fill, Fill::Full);
  EXPECT_EQ(heads.rings[0][0], Vec2(0, 0));
  EXPECT_EQ(heads.rings[1][0], Vec2(50, 0));
  EXPECT_GT(heads.rings[0][1].x(), 0);
}

TEST(DimensionShape, ArrowheadsPointInwardFromOutsideWhereThereIsNoRoom) {
  DimensionMark mark = dimension({0, 0}, {3, 0}, 0);
  mark.arrows = true;
  const Path heads = shapeOf(mark, 1).paths.back();
  EXPECT_LT(heads.rings[0][1].x(), 0);
  EXPECT_GT(heads.rings[1][1].x(), 3);
}

TEST(DimensionShape, SurvivesTwoEqualPoints) {
  const Linework shape = shapeOf(dimension({2, 2}, {2, 2}, 5), 1);
  for (const auto& path : shape.paths) {
    for (const auto& ring : path.rings) {
      for (const Vec2& p : ring) EXPECT_TRUE(p.allFinite());
    }
  }
}

TEST(DimensionShape, SizesFollowTheScaleOfTheDrawing) {
  const Linework page = shapeOf(dimension({0, 0}, {50, 0}, 8), 1);
  const Linework metres = shapeOf(dimension({0, 0}, {2.5, 0}, 0.4), 0.05);
  const Vec2 pageText = page.texts.front().at;
  EXPECT_TRUE(metres.texts.front().at.isApprox(0.05 * pageText, 1e-12));
}

TEST(SymbolShape, StaysInsideItsSize) {
  using enum SymbolKind;
  for (const SymbolKind kind : {StrikePoint, Lens, Tick, Tilde, Bar, Question, Corner}) {
    Symbol symbol;
    symbol.kind = kind;
    symbol.at = {10, 10};
    symbol.sizeMm = 4;
    const Linework shape = shapeOf(symbol, 1);
    const auto extent = shape.extent();
    ASSERT_TRUE(extent);
    EXPECT_GE(extent->min().minCoeff(), 8 - 1e-9);
    EXPECT_LE(extent->max().maxCoeff(), 12 + 1e-9);
    EXPECT_GT(extent->sizes().maxCoeff(), 2);
  }
}

TEST(SymbolShape, LensPointsAlongItsAngle) {
  Symbol symbol;
  symbol.kind = SymbolKind::Lens;
  symbol.angle = kPi / 2;
  symbol.sizeMm = 2;
  const auto extent = shapeOf(symbol, 1).extent();
  EXPECT_NEAR(extent->max().y(), 1, 1e-9);
}

TEST(Exploded, LeavesOnlyPathsAndTexts) {
  Linework linework;
  linework.dimensions.push_back(dimension({0, 0}, {50, 0}, 8));
  linework.symbols.push_back({});
  const Linework marks = exploded(linework, 1);
  EXPECT_TRUE(marks.dimensions.empty());
  EXPECT_TRUE(marks.symbols.empty());
  EXPECT_EQ(marks.texts.size(), 1u);
  EXPECT_GE(marks.paths.size(), 4u);
}

}  // namespace
}  // namespace baywright
