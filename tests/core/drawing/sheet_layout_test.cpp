// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheet_layout.h"

#include <gtest/gtest.h>

#include "drawing/page_furniture.h"

namespace baywright::detail {
namespace {

TEST(SheetLayout, KeepsEverythingInTheBorderAndApart) {
  for (const PaperStyle& style : paperStyles()) {
    for (const Orientation orientation : {Orientation::Portrait, Orientation::Landscape}) {
      const SheetLayout layout = layoutOf(style.size, orientation);
      const PageBox titleBlock(Vec2(layout.frame.max().x() - kTitleBlockWidth, layout.frame.min().y()),
                               Vec2(layout.frame.max().x(), layout.frame.min().y() + kTitleBlockHeight));
      std::vector<PageBox> boxes{layout.drawing, layout.signOff};
      if (layout.column) boxes.push_back(*layout.column);
      for (const PageBox& box : boxes) {
        EXPECT_TRUE(layout.frame.contains(box)) << style.name;
        EXPECT_FALSE(box.isEmpty()) << style.name;
        EXPECT_LE(box.intersection(titleBlock).sizes().cwiseMax(0).prod(), 1e-9) << style.name;
      }
      EXPECT_LE(layout.drawing.intersection(layout.signOff).sizes().cwiseMax(0).prod(), 1e-9) << style.name;
      for (const PageBox& box : layout.laterText) {
        EXPECT_TRUE(layout.frame.contains(box)) << style.name;
        EXPECT_NEAR(box.sizes().x(), layout.textWidth, 1e-9) << style.name;
        EXPECT_LE(box.intersection(titleBlock).sizes().cwiseMax(0).prod(), 1e-9) << style.name;
      }
    }
  }
}

TEST(SheetLayout, PutsTextBesideTheDrawingOnWidePages) {
  EXPECT_TRUE(layoutOf(PaperSize::A3, Orientation::Landscape).column);
  EXPECT_TRUE(layoutOf(PaperSize::AnsiB, Orientation::Landscape).column);
  EXPECT_FALSE(layoutOf(PaperSize::A4, Orientation::Portrait).column);
  EXPECT_FALSE(layoutOf(PaperSize::A4, Orientation::Landscape).column);
  EXPECT_EQ(layoutOf(PaperSize::A3, Orientation::Landscape).laterText.size(), 2u);
}

const PageBox kArea(Vec2(20, 10), Vec2(220, 210));

bool soundlyArranged(const std::vector<Vec2>& sizes, const std::vector<Vec2>& corners) {
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const PageBox box(corners[i], corners[i] + sizes[i]);
    if (!kArea.contains(box)) return false;
    for (std::size_t k = 0; k < i; ++k) {
      if (!box.intersection(PageBox(corners[k], corners[k] + sizes[k])).isEmpty()) return false;
    }
  }
  return true;
}

TEST(Arranged, CentresOneBox) {
  const auto corners = arranged({{100, 40}}, kArea, 8);
  ASSERT_TRUE(corners);
  EXPECT_EQ((*corners)[0], Vec2(70, 90));
}

TEST(Arranged, PutsElevationsUnderThePlan) {
  const std::vector<Vec2> sizes{{150, 100}, {90, 50}, {90, 50}};
  const auto corners = arranged(sizes, kArea, 8);
  ASSERT_TRUE(corners);
  EXPECT_TRUE(soundlyArranged(sizes, *corners));
  EXPECT_GT((*corners)[0].y(), (*corners)[1].y() + 50);
  EXPECT_EQ((*corners)[1].y(), (*corners)[2].y());
}

TEST(Arranged, PutsThemBesideAPlanThatIsHigh) {
  const std::vector<Vec2> sizes{{90, 190}, {100, 60}, {100, 60}};
  const auto corners = arranged(sizes, kArea, 8);
  ASSERT_TRUE(corners);
  EXPECT_TRUE(soundlyArranged(sizes, *corners));
  EXPECT_GT((*corners)[1].x(), (*corners)[0].x() + 90);
  EXPECT_GT((*corners)[1].y(), (*corners)[2].y());
}

TEST(Arranged, SaysWhenNothingFits) {
  EXPECT_FALSE(arranged({{150, 150}, {150, 150}}, kArea, 8));
  EXPECT_FALSE(arranged({{201, 10}}, kArea, 8));
  EXPECT_TRUE(arranged({}, kArea, 8));
}

}  // namespace
}  // namespace baywright::detail
