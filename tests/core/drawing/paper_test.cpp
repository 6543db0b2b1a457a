// SPDX-License-Identifier: Apache-2.0
#include "drawing/paper.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Paper, StandsInTheOrderOfTheEnumeration) {
  int place = 0;
  for (const PaperStyle& style : paperStyles())
    EXPECT_EQ(static_cast<int>(style.size), place++) << style.name;
}

// ISO 216: each A size is the next larger one halved across, rounded down to whole millimetres; A0 is 841 x
// 1189.
TEST(Paper, IsoSizesHalve) {
  using enum PaperSize;
  EXPECT_EQ(styleOf(A0).longMm, 1189);
  for (const auto& [large, small] :
       {std::pair{A0, A1}, std::pair{A1, A2}, std::pair{A2, A3}, std::pair{A3, A4}}) {
    EXPECT_EQ(styleOf(small).longMm, styleOf(large).shortMm);
    EXPECT_EQ(styleOf(small).shortMm, std::floor(styleOf(large).longMm / 2));
  }
}

// ASME Y14.1: A 8.5 x 11 to E 34 x 44 in; architectural sizes A 9 x 12 to E 36 x 48 in.
TEST(Paper, InchSizesAreThoseOfTheStandard) {
  EXPECT_NEAR(styleOf(PaperSize::AnsiA).longMm, 279.4, 1e-9);
  EXPECT_NEAR(styleOf(PaperSize::AnsiB).shortMm, 279.4, 1e-9);
  EXPECT_NEAR(styleOf(PaperSize::AnsiE).longMm, 44 * 25.4, 1e-9);
  EXPECT_NEAR(styleOf(PaperSize::ArchD).longMm, 36 * 25.4, 1e-9);
  EXPECT_NEAR(styleOf(PaperSize::ArchE1).shortMm, 30 * 25.4, 1e-9);
}

TEST(Paper, GrowsWithinAFamily) {
  for (const PaperStyle& a : paperStyles()) {
    for (const PaperStyle& b : paperStyles()) {
      if (a.family == b.family && a.size < b.size) {
        EXPECT_LT(a.longMm, b.longMm) << a.name << b.name;
      }
    }
    EXPECT_LT(a.shortMm, a.longMm) << a.name;
  }
}

TEST(Paper, IsFoundByEachOfItsNames) {
  for (const PaperStyle& style : paperStyles()) EXPECT_EQ(parsePaper(style.name).value(), style.size);
  EXPECT_EQ(parsePaper("a3").value(), PaperSize::A3);
  EXPECT_EQ(parsePaper("ansi-b").value(), PaperSize::AnsiB);
  EXPECT_EQ(parsePaper("ArchE1").value(), PaperSize::ArchE1);
  EXPECT_EQ(parsePaper("Letter").value(), PaperSize::AnsiA);
  EXPECT_EQ(parsePaper("tabloid").value(), PaperSize::AnsiB);
}

TEST(Paper, ThatIsNotKnownIsRefusedWithTheChoice) {
  const auto paper = parsePaper("B5");
  ASSERT_FALSE(paper);
  EXPECT_NE(paper.error().sentence().find("B5"), std::string::npos);
  EXPECT_NE(paper.error().next.find("A4"), std::string::npos);
  EXPECT_FALSE(parsePaper(""));
}

TEST(Paper, TurnsWithItsOrientation) {
  EXPECT_EQ(pageBox(PaperSize::A4, Orientation::Portrait).sizes(), Vec2(210, 297));
  EXPECT_EQ(pageBox(PaperSize::A4, Orientation::Landscape).sizes(), Vec2(297, 210));
}

TEST(Paper, LeavesAFilingEdgeOnTheLeft) {
  for (const Orientation orientation : {Orientation::Portrait, Orientation::Landscape}) {
    const PageBox page = pageBox(PaperSize::A3, orientation);
    const PageBox frame = frameBox(PaperSize::A3, orientation);
    EXPECT_EQ(frame.min() - page.min(), Vec2(20, 10));
    EXPECT_EQ(page.max() - frame.max(), Vec2(10, 10));
  }
}

// The title block is 180 mm wide (ISO 7200), which an A4 sheet in portrait just holds.
TEST(Paper, HoldsATitleBlockOnTheSmallestSheet) {
  EXPECT_EQ(frameBox(PaperSize::A4, Orientation::Portrait).sizes().x(), 180);
}

}  // namespace
}  // namespace baywright
