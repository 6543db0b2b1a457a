// SPDX-License-Identifier: Apache-2.0
#include "drawing/text_width.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

double regular(std::string_view text) {
  return textWidthMm(text, 1 / kEmPerCapital, FontFace::Regular);
}

// With an em of one millimetre a width is the advance width in ems. Read from DejaVuSans.ttf 2.37: zero 1303,
// A 1401, space 651, prime 465 of 2048 units.
TEST(TextWidth, IsTheAdvanceWidthOfTheTypeface) {
  EXPECT_NEAR(regular("0"), 1303.0 / 2048, 1e-3);
  EXPECT_NEAR(regular("A"), 1401.0 / 2048, 1e-3);
  EXPECT_NEAR(regular(" "), 651.0 / 2048, 1e-3);
  EXPECT_NEAR(regular("′"), 465.0 / 2048, 1e-3);
}

TEST(TextWidth, IsNeverLessThanTheTypeface) {
  EXPECT_GE(regular("0"), 1303.0 / 2048);
  EXPECT_GE(regular("A"), 1401.0 / 2048);
}

TEST(TextWidth, GrowsWithHeightAndAddsUp) {
  EXPECT_NEAR(textWidthMm("7′ 6 1/2″", 5, FontFace::Regular),
              2 * textWidthMm("7′ 6 1/2″", 2.5, FontFace::Regular), 1e-12);
  EXPECT_NEAR(regular("2.30") + regular(" m"), regular("2.30 m"), 1e-12);
}

TEST(TextWidth, SetsEachFigureOnTheSameWidth) {
  for (const char* digit : {"1", "2", "3", "4", "5", "6", "7", "8", "9"})
    EXPECT_EQ(regular(digit), regular("0"));
}

TEST(TextWidth, SetsBoldWider) {
  EXPECT_GT(textWidthMm("blocked", 2, FontFace::Bold), textWidthMm("blocked", 2, FontFace::Regular));
}

TEST(TextWidth, TakesAnEmForWhatItDoesNotKnow) {
  EXPECT_DOUBLE_EQ(regular("幅"), 1.0);
  EXPECT_DOUBLE_EQ(regular("\xff"), 1.0);
  EXPECT_NEAR(regular("ä"), regular("a"), 1e-3);
}

TEST(WrapText, BreaksAtSpacesWithinTheWidth) {
  const std::string text =
      "Robin, driver: 64 mm short of the beam at the top of the backswing. Move the bay 70 mm left.";
  const auto lines = wrapText(text, 1.8, 70, FontFace::Regular);
  EXPECT_EQ(lines.size(), 2u);
  std::string together;
  for (const std::string& line : lines) {
    EXPECT_LE(textWidthMm(line, 1.8, FontFace::Regular), 70) << line;
    together += (together.empty() ? "" : " ") + line;
  }
  EXPECT_EQ(together, text);
}

TEST(WrapText, FillsEachLineAsFarAsItGoes) {
  const auto lines =
      wrapText("aa aa aa aa", 1, textWidthMm("aa aa", 1, FontFace::Regular), FontFace::Regular);
  EXPECT_EQ(lines, (std::vector<std::string>{"aa aa", "aa aa"}));
}

TEST(WrapText, BreaksAWordThatIsTooWideAlone) {
  const std::string word(60, 'x');
  const auto lines = wrapText(word, 2, 30, FontFace::Regular);
  std::string together;
  for (const std::string& line : lines) {
    EXPECT_LE(textWidthMm(line, 2, FontFace::Regular), 30);
    together += line;
  }
  EXPECT_EQ(together, word);
}

TEST(WrapText, NeverBreaksACodePointEvenWhereNoneFits) {
  EXPECT_EQ(wrapText("äöü", 2, 0.1, FontFace::Regular), (std::vector<std::string>{"ä", "ö", "ü"}));
}

TEST(WrapText, KeepsLineBreaksAndEmptyText) {
  EXPECT_EQ(wrapText("a\n\nb", 2, 50, FontFace::Regular), (std::vector<std::string>{"a", "", "b"}));
  EXPECT_EQ(wrapText("", 2, 50, FontFace::Regular), std::vector<std::string>{""});
}

TEST(FitText, LeavesWhatFitsAndCutsTheRest) {
  EXPECT_EQ(fitText("Garage", 2.5, 50, FontFace::Regular), "Garage");
  const std::string cut = fitText("A garage with a very long name", 2.5, 30, FontFace::Regular);
  EXPECT_TRUE(cut.ends_with("…")) << cut;
  EXPECT_TRUE(cut.starts_with("A garage")) << cut;
  EXPECT_LE(textWidthMm(cut, 2.5, FontFace::Regular), 30);
}

}  // namespace
}  // namespace baywright
