// SPDX-License-Identifier: Apache-2.0
#include "drawing/text_box.h"

#include <gtest/gtest.h>

#include "drawing/text_width.h"

namespace baywright {
namespace {

Text label(TextAnchor anchor, double angle) {
  Text text;
  text.at = {10, 20};
  text.text = "2.300 m";
  text.heightMm = 3;
  text.anchor = anchor;
  text.angle = angle;
  return text;
}
const double kWidth = textWidthMm("2.300 m", 3, FontFace::Regular);

TEST(TextBox, ReachesFromDescenderToCapital) {
  const auto box = boxOf(label(TextAnchor::Left, 0), 1);
  EXPECT_NEAR(box.min().x(), 10, 1e-12);
  EXPECT_NEAR(box.max().x(), 10 + kWidth, 1e-12);
  EXPECT_NEAR(box.min().y(), 19, 1e-12);
  EXPECT_NEAR(box.max().y(), 23, 1e-12);
}

TEST(TextBox, FollowsTheAnchor) {
  EXPECT_NEAR(boxOf(label(TextAnchor::Centre, 0), 1).center().x(), 10, 1e-12);
  EXPECT_NEAR(boxOf(label(TextAnchor::Right, 0), 1).max().x(), 10, 1e-12);
}

TEST(TextBox, TurnsWithTheText) {
  const auto box = boxOf(label(TextAnchor::Left, kPi / 2), 1);
  EXPECT_NEAR(box.max().y(), 20 + kWidth, 1e-9);
  EXPECT_NEAR(box.min().x(), 7, 1e-9);
}

TEST(TextBox, GrowsWithTheScaleOfTheDrawing) {
  EXPECT_NEAR(boxOf(label(TextAnchor::Left, 0), 0.05).sizes().x(), 0.05 * kWidth, 1e-12);
}

TEST(InkExtent, HoldsTextsAndSymbols) {
  Linework linework;
  EXPECT_FALSE(inkExtent(linework, 1));
  linework.texts.push_back(label(TextAnchor::Left, 0));
  Symbol symbol;
  symbol.at = {0, 0};
  symbol.sizeMm = 4;
  linework.symbols.push_back(symbol);
  const auto extent = inkExtent(linework, 1);
  ASSERT_TRUE(extent);
  EXPECT_NEAR(extent->min().x(), -2, 1e-12);
  EXPECT_NEAR(extent->max().x(), 10 + kWidth, 1e-12);
}

}  // namespace
}  // namespace baywright
