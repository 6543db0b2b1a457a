// SPDX-License-Identifier: Apache-2.0
#include "drawing/layers.h"

#include <gtest/gtest.h>

#include <set>

namespace baywright {
namespace {

TEST(Layers, StandInTheOrderOfTheEnumeration) {
  int place = 0;
  for (const LayerStyle& style : layerStyles())
    EXPECT_EQ(static_cast<int>(style.layer), place++) << style.name;
  EXPECT_EQ(styleOf(Layer::Labels).name, layerStyles().back().name);
}

TEST(Layers, HaveNamesOfTheirOwnAndAMeaning) {
  std::set<std::string_view> names;
  for (const LayerStyle& style : layerStyles()) {
    names.insert(style.name);
    EXPECT_FALSE(style.meaning.empty()) << style.name;
  }
  EXPECT_EQ(names.size(), layerStyles().size());
}

TEST(Layers, FollowTheDrawingOffice) {
  EXPECT_EQ(styleOf(Layer::Walls).weight, LineWeight::Thick);
  EXPECT_EQ(styleOf(Layer::Fixtures).weight, LineWeight::Thin);
  EXPECT_EQ(styleOf(Layer::Overhead).dash, LineDash::Dashed);
  EXPECT_EQ(styleOf(Layer::SwingBound).dash, LineDash::Dashed);
}

// ISO 128-2 series of widths: 0.25 and 0.5 are two of its steps of sqrt 2.
TEST(Layers, DrawThickTwiceAsWideAsThin) {
  EXPECT_DOUBLE_EQ(lineWidthMm(LineWeight::Thick), 2 * lineWidthMm(LineWeight::Thin));
}

}  // namespace
}  // namespace baywright
