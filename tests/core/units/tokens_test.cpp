// SPDX-License-Identifier: Apache-2.0
#include "units/tokens.h"

#include <gtest/gtest.h>

#include <string>
#include <string_view>

namespace baywright::detail {
namespace {

using namespace std::string_literals;

/// The texts of the tokens with "|" between them; a space before a token is kept.
std::string cut(std::string_view utf8, char decimal = '.') {
  const auto tokens = tokenize(utf8, decimal);
  if (!tokens) return tokens.error().sentence();
  std::string joined;
  for (const Token& token : *tokens) {
    if (token.kind == Token::Kind::End) break;
    if (!joined.empty()) joined += '|';
    if (token.spaced) joined += ' ';
    joined += token.text;
  }
  return joined;
}

std::string where(std::string_view utf8, char decimal = '.') {
  const auto tokens = tokenize(utf8, decimal);
  return tokens ? "read" : tokens.error().where;
}

std::string next(std::string_view utf8, char decimal) {
  const auto tokens = tokenize(utf8, decimal);
  return tokens ? "read" : tokens.error().next;
}

TEST(Tokens, OneMarkForEachFamilyOfMarks) {
  for (const char* foot : {"'", "`", "´", "‘", "’", "′"}) EXPECT_EQ(cut("7"s + foot), "7|'") << foot;
  for (const char* inch : {"\"", "“", "”", "″", "''", "′′", "’’"})
    EXPECT_EQ(cut("7"s + inch), "7|\"") << inch;
  for (const char* dash : {"-", "‐", "‑", "‒", "–", "−"}) EXPECT_EQ(cut("7"s + dash), "7|-") << dash;
  for (const char* slash : {"/", "⁄"}) EXPECT_EQ(cut("1"s + slash + "2"), "1|/|2") << slash;
  for (const char* degree : {"°", "º"}) EXPECT_EQ(cut("7"s + degree), "7|°") << degree;
  EXPECT_EQ(cut("cd/m²"), "cd|/|m|2");
  EXPECT_EQ(cut("+1:50 %"), "+|1|:|50| %");
}

TEST(Tokens, TwoFootMarksWithASpaceStayTwo) {
  EXPECT_EQ(cut("7' '"), "7|'| '");
}

TEST(Tokens, EachKindOfSpaceIsASpace) {
  for (const char* space : {" ", "\t", "\n", "\r\n", "\u00A0", "\u2002", "\u2007", "\u2009", "\u202F",
                            "\u205F", "\u3000", " \u00A0 "}) {
    EXPECT_EQ(cut("7"s + space + "m"), "7| m");
  }
  EXPECT_EQ(cut("  7  "), " 7");
  EXPECT_EQ(cut(" \t\u00A0"), "");
}

TEST(Tokens, WordsAreLowerCaseAndLoseTheirAbbreviationPoint) {
  EXPECT_EQ(cut("7 Ft. 6 IN."), "7| ft| 6| in");
  EXPECT_EQ(cut("7ft.6in"), "7|ft|6|in");
}

TEST(Tokens, NumbersKnowWhetherTheyAreWhole) {
  const auto tokens = tokenize("6 6.0 .5", '.');
  ASSERT_TRUE(tokens);
  EXPECT_TRUE((*tokens)[0].whole);
  EXPECT_FALSE((*tokens)[1].whole);
  EXPECT_FALSE((*tokens)[2].whole);
  EXPECT_EQ((*tokens)[2].value, 0.5);
}

TEST(Tokens, VulgarFractionsHaveTheirValue) {
  const struct {
    const char* glyph;
    double value;
  } cases[] = {{"½", 1. / 2}, {"⅓", 1. / 3}, {"⅔", 2. / 3}, {"¼", 1. / 4}, {"¾", 3. / 4}, {"⅕", 1. / 5},
               {"⅖", 2. / 5}, {"⅗", 3. / 5}, {"⅘", 4. / 5}, {"⅙", 1. / 6}, {"⅚", 5. / 6}, {"⅐", 1. / 7},
               {"⅛", 1. / 8}, {"⅜", 3. / 8}, {"⅝", 5. / 8}, {"⅞", 7. / 8}, {"⅑", 1. / 9}, {"⅒", 1. / 10}};
  for (const auto& row : cases) {
    const auto tokens = tokenize(row.glyph, '.');
    ASSERT_TRUE(tokens) << row.glyph;
    EXPECT_EQ(tokens->front().kind, Token::Kind::Fraction) << row.glyph;
    EXPECT_EQ(tokens->front().value, row.value) << row.glyph;
  }
}

TEST(Tokens, PlacesCountCharactersNotBytes) {
  const auto tokens = tokenize("−7′ 6½″", '.');
  ASSERT_TRUE(tokens);
  ASSERT_EQ(tokens->size(), 7u);
  const int places[] = {1, 2, 3, 5, 6, 7, 8};
  for (std::size_t i = 0; i < tokens->size(); ++i) EXPECT_EQ((*tokens)[i].character, places[i]) << i;
}

TEST(Tokens, AnyTextEndsWithEnd) {
  for (const char* text : {"", " ", "7", "m", "''"}) {
    const auto tokens = tokenize(text, '.');
    ASSERT_TRUE(tokens);
    EXPECT_EQ(tokens->back().kind, Token::Kind::End);
  }
}

TEST(Tokens, TheOtherDecimalSeparatorIsRefusedAtItsPlace) {
  EXPECT_EQ(where("2,30", '.'), "character 2");
  EXPECT_EQ(where("2.30", ','), "character 2");
  EXPECT_EQ(where("1.234", ','), "character 2");
  EXPECT_EQ(where("  123,456", '.'), "character 6");
  EXPECT_EQ(where("1.234,5", ','), "character 2");
  EXPECT_EQ(where("1,234,567", '.'), "character 2");
  EXPECT_EQ(where("1234.5", ','), "character 5");
}

TEST(Tokens, TheAdviceForASeparatorShowsBothReadingsWhereThereAreTwo) {
  EXPECT_EQ(next("2,30", '.'), "Write 2.30.");
  EXPECT_EQ(next("2.30", ','), "Write 2,30.");
  EXPECT_EQ(next("1.234", ','), "Write 1234 or 1,234.");
  EXPECT_EQ(next("123,456", '.'), "Write 123456 or 123.456.");
  EXPECT_EQ(next("0.234", ','), "Write 0,234.");        // no thousands begin with a zero
  EXPECT_EQ(next("1234.567", ','), "Write 1234,567.");  // nor are four digits grouped
  EXPECT_EQ(next(".234", ','), "Write ,234.");
}

TEST(Tokens, TheJobsOwnSeparatorIsRead) {
  EXPECT_EQ(cut("1.234", '.'), "1.234");
  EXPECT_EQ(cut("1,234", ','), "1,234");
  EXPECT_EQ(tokenize("1,234", ',')->front().value, 1.234);
  EXPECT_EQ(tokenize("1.234", '.')->front().value, 1.234);
}

TEST(Tokens, BrokenNumbersAreRefusedAtTheFault) {
  EXPECT_EQ(where("1.2.3"), "character 4");
  EXPECT_EQ(where("1..3"), "character 3");
  EXPECT_EQ(where("12. m"), "character 3");
  EXPECT_EQ(where("12, m"), "character 3");
  EXPECT_EQ(where("1e3 m"), "character 2");
  EXPECT_EQ(where("12E+3"), "character 3");
  EXPECT_EQ(where("1.5e-3"), "character 4");
}

TEST(Tokens, StrangeCharactersAreNamedAndPlaced) {
  EXPECT_EQ(cut("7 $"), "character 3: The character U+0024 has no meaning here. Delete it.");
  EXPECT_EQ(where("7\0m"s), "character 2");
  EXPECT_EQ(where("\0"s), "character 1");
  EXPECT_EQ(where("½\u200Bm"), "character 2");
  EXPECT_EQ(where("7 ß"), "character 3");
  EXPECT_EQ(where("7 😀"), "character 3");
  EXPECT_EQ(where("７"), "character 1");
}

TEST(Tokens, DamagedUtf8IsRefusedAtItsPlace) {
  EXPECT_EQ(where("7\xE2\x80"), "character 2");
  EXPECT_EQ(where("½\xFFm"), "character 2");
  EXPECT_EQ(where("\xC0\x80"), "character 1");
}

TEST(Tokens, OverlongTextIsRefusedWhereItBecomesTooLong) {
  EXPECT_EQ(cut(std::string(99, ' ') + "7"), " 7");
  EXPECT_EQ(where(std::string(100, ' ') + "7"), "character 101");
  EXPECT_EQ(where(std::string(10'000'000, '9')), "character 101");
}

TEST(Tokens, HundredDigitsAreStillANumber) {
  const auto tokens = tokenize(std::string(100, '9'), '.');
  ASSERT_TRUE(tokens);
  EXPECT_DOUBLE_EQ(tokens->front().value, 1e100);
}

}  // namespace
}  // namespace baywright::detail
