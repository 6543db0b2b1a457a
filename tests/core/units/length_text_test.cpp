// SPDX-License-Identifier: Apache-2.0
#include "units/length_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <string>
#include <string_view>

#include "systems.h"

namespace baywright {
namespace {

using namespace test;
using namespace std::string_literals;

constexpr double kInch = 0.0254;

void expectRead(std::string_view text, const UnitSystem& units, double metres) {
  const auto length = parseLength(text, units);
  ASSERT_TRUE(length) << text << ": " << length.error().sentence();
  EXPECT_NEAR(*length, metres, 1e-12) << text << " in " << describe(units);
}

TEST(Length, ReadsTheSameInEachJobWhenTheUnitIsTyped) {
  const struct {
    const char* text;
    double metres;
  } cases[] = {
      {"7' 6 1/2\"", 90.5 * kInch},
      {"7'6 1/2\"", 90.5 * kInch},
      {"7′ 6 1/2″", 90.5 * kInch},
      {"7′6½″", 90.5 * kInch},
      {"7’ 6½”", 90.5 * kInch},
      {"7' 6½", 90.5 * kInch},
      {"7' 6 ½''", 90.5 * kInch},
      {"7' 6-1/2\"", 90.5 * kInch},
      {"7'-6 1/2\"", 90.5 * kInch},
      {"7'-6-1/2\"", 90.5 * kInch},
      {"7' - 6 1/2\"", 90.5 * kInch},
      {"7'–6½\"", 90.5 * kInch},
      {"7' 6 2/4\"", 90.5 * kInch},
      {"7' 6 8/16\"", 90.5 * kInch},
      {"7' 6 1⁄2\"", 90.5 * kInch},
      {"7'\u00A06\u00A01/2\"", 90.5 * kInch},
      {"  7'\t6   1/2 \"  ", 90.5 * kInch},
      {"7' 1/2\"", 84.5 * kInch},
      {"7'-1/2\"", 84.5 * kInch},
      {"7' ½", 84.5 * kInch},
      {"7' 0\"", 84 * kInch},
      {"7'0", 84 * kInch},
      {"0' 6\"", 6 * kInch},
      {"7' 11 31/32\"", 95.96875 * kInch},
      {"12'6\"", 150 * kInch},
      {"12'6", 150 * kInch},
      {"12' 6.25\"", 150.25 * kInch},
      {"7'", 84 * kInch},
      {"12.5'", 150 * kInch},
      {"12 1/2'", 150 * kInch},
      {"12½ ft", 150 * kInch},
      {"1/2'", 6 * kInch},
      {".5'", 6 * kInch},
      {"90.5\"", 90.5 * kInch},
      {"90.5''", 90.5 * kInch},
      {"90 1/2\"", 90.5 * kInch},
      {"90½ in", 90.5 * kInch},
      {"1/2\"", 0.5 * kInch},
      {"¾″", 0.75 * kInch},
      {"3/2 in", 1.5 * kInch},
      {"2.30 m", 2.3},
      {"2.30m", 2.3},
      {"2.3 M", 2.3},
      {"1/2 m", 0.5},
      {"230cm", 2.3},
      {"230 CM", 2.3},
      {"2300 mm", 2.3},
      {"2300mm.", 2.3},
      {"2300\u202Fmm", 2.3},
      {"0 m", 0},
      {"+40 mm", 0.04},
      {"-40 mm", -0.04},
      {"−40 mm", -0.04},
      {"- 40 mm", -0.04},
      {"-7' 6\"", -90 * kInch},
      {"−7′ 6 1/2″", -90.5 * kInch},
      {"-7'-6\"", -90 * kInch},
      {"-½\"", -0.5 * kInch},
      {"1000 m", 1000},
      {"-1000 m", -1000},
      {"1000000 mm", 1000},
  };
  for (const auto& row : cases) {
    for (UnitSystem units : everySystem()) {
      units.decimal = '.';
      expectRead(row.text, units, row.metres);
    }
  }
}

TEST(Length, ReadsEachSpellingOfFeetAndInches) {
  for (const char* feet : {"'", "′", " ft", "ft", "ft.", " Ft. ", " foot", " feet", "FEET "}) {
    for (const char* inches : {"\"", "″", "''", " in", "in", "in.", " inch", " inches", " INCHES", ""}) {
      for (const char* between : {" ", "-", " - ", "\u00A0"}) {
        expectRead("7"s + feet + between + "6 1/2" + inches, kMetres, 90.5 * kInch);
        expectRead("7"s + feet + between + "6.5" + inches, kFeetInches, 90.5 * kInch);
      }
    }
  }
}

TEST(Length, ReadsEachSpellingOfMetricUnits) {
  const struct {
    const char* unit;
    double metres;
  } cases[] = {{"m", 1},
               {"metre", 1},
               {"metres", 1},
               {"meter", 1},
               {"meters", 1},
               {"cm", 0.01},
               {"centimetre", 0.01},
               {"centimetres", 0.01},
               {"centimeter", 0.01},
               {"centimeters", 0.01},
               {"mm", 0.001},
               {"millimetre", 0.001},
               {"millimetres", 0.001},
               {"millimeter", 0.001},
               {"millimeters", 0.001}};
  for (const auto& row : cases) {
    expectRead("12.5 "s + row.unit, kFeetInches, 12.5 * row.metres);
    expectRead("12.5"s + row.unit + " ", kMillimetres, 12.5 * row.metres);
    expectRead("12,5 "s + row.unit, kMetresComma, 12.5 * row.metres);
  }
}

TEST(Length, ABareNumberIsInTheUnitOfTheJob) {
  expectRead("90", kFeetInches, 90 * kInch);
  expectRead("90.5", kFeetInches, 90.5 * kInch);
  expectRead("6 1/2", kFeetInches, 6.5 * kInch);
  expectRead("6½", kInches, 6.5 * kInch);
  expectRead("1/2", kInches, 0.5 * kInch);
  expectRead("90", kInches, 90 * kInch);
  expectRead("12.5", kFeet, 150 * kInch);
  expectRead("2.3", kMetres, 2.3);
  expectRead("230", {LengthUnit::Centimetres}, 2.3);
  expectRead("2300", kMillimetres, 2.3);
  expectRead("-2300", kMillimetres, -2.3);
}

TEST(Length, ABareHyphenPartsFeetFromInchesWhereTheJobIsInThem) {
  for (const UnitSystem& units : {kFeetInches, kFeet, kInches}) {
    expectRead("12-6", units, 150 * kInch);
    expectRead("12-6\"", units, 150 * kInch);
    expectRead("12-6 1/2", units, 150.5 * kInch);
    expectRead("12-6½", units, 150.5 * kInch);
    expectRead("12-6-1/2", units, 150.5 * kInch);
    expectRead("12-6.5 in", units, 150.5 * kInch);
    expectRead("12-0 1/2", units, 144.5 * kInch);
    expectRead("-12-6", units, -150 * kInch);
  }
  EXPECT_EQ(faultPlace(parseLength("12-6", kMetres)), "character 3");
  EXPECT_EQ(faultPlace(parseLength("12 - 6", kFeetInches)), "character 4");
  EXPECT_EQ(faultPlace(parseLength("12 -6", kFeetInches)), "character 4");
  EXPECT_EQ(faultPlace(parseLength("12- 6", kFeetInches)), "character 3");
}

TEST(Length, AHyphenBeforeAFractionIsRefusedUnlessTheFeetAreMarked) {
  for (const char* text : {"6-1/2", "6-1/2\"", "6-½", "6-1/2 m"}) {
    for (const UnitSystem& units : everySystem()) {
      EXPECT_EQ(faultPlace(parseLength(text, units)), "character 2") << text;
    }
  }
  expectRead("6'-1/2\"", kMetres, 72.5 * kInch);
}

TEST(Length, ABareFractionIsRefusedWhereTheJobIsNotInInches) {
  for (const UnitSystem& units : {kFeet, kMetres, kMillimetres}) {
    EXPECT_EQ(faultPlace(parseLength("6 1/2", units)), "character 1");
    EXPECT_EQ(faultPlace(parseLength(" -1/2", units)), "character 3");
    EXPECT_EQ(faultPlace(parseLength("6½", units)), "character 1");
  }
}

TEST(Length, TheDecimalSeparatorIsTheJobsAlone) {
  expectRead("2,30 m", kMetresComma, 2.3);
  expectRead("1,234", kMetresComma, 1.234);
  expectRead("7' 6,5\"", kMetresComma, 90.5 * kInch);
  for (const char* text : {"1.234", "2.30 m", "1.234,5", "1.234.567", "2.300 mm", "0.5"}) {
    EXPECT_EQ(faultPlace(parseLength(text, kMetresComma)), "character 2") << text;
  }
  for (const char* text : {"1,234", "2,30 m", "1,234.5", "1,234,567", "2,300 mm", "0,5"}) {
    EXPECT_EQ(faultPlace(parseLength(text, kMetres)), "character 2") << text;
  }
}

TEST(Length, RefusesAtTheFault) {
  const struct {
    const char* text;
    const char* where;
  } cases[] = {
      {"", "character 1"},
      {"   ", "character 4"},
      {"-", "character 2"},
      {"+", "character 2"},
      {"m", "character 1"},
      {"'", "character 1"},
      {"\"", "character 1"},
      {"/", "character 1"},
      {".", "character 1"},
      {",", "character 1"},
      {"abc", "character 1"},
      {"nan", "character 1"},
      {"inf", "character 1"},
      {"-inf m", "character 2"},
      {"infinity", "character 1"},
      {"1e3 mm", "character 2"},
      {"1E-3", "character 2"},
      {"0x10", "character 2"},
      {"7 yd", "character 3"},
      {"7 furlongs", "character 3"},
      {"7 m m", "character 5"},
      {"7 mm2", "character 5"},
      {"2 300 mm", "character 3"},
      {"2 m 30", "character 5"},
      {"2 m 30 cm", "character 5"},
      {"1 m 75", "character 5"},
      {"2m30", "character 3"},
      {"7 6", "character 3"},
      {"7 6 1/2", "character 3"},
      {"7\" 6", "character 4"},
      {"7\" 6'", "character 4"},
      {"6\" 1/2", "character 4"},
      {"--7", "character 2"},
      {"-+7", "character 2"},
      {"+-7", "character 2"},
      {"7-", "character 2"},
      {"7 m-", "character 4"},
      {"5 m - 3 m", "character 5"},
      {"5 m + 3 m", "character 5"},
      {"5 mm-3 mm", "character 5"},
      {"7'-", "character 4"},
      {"7'--6\"", "character 4"},
      {"7' -", "character 5"},
      {"7'6'", "character 4"},
      {"7' 6 ft", "character 6"},
      {"7' 6 cm", "character 6"},
      {"7' 30 mm", "character 7"},
      {"7' 6 abc", "character 6"},
      {"7' abc", "character 4"},
      {"7' m", "character 4"},
      {"7' 6\" 3", "character 7"},
      {"7' 6\"\"", "character 6"},
      {"7' 6\" m", "character 7"},
      {"7'' 6", "character 5"},
      {"7' '", "character 4"},
      {"7' 12\"", "character 4"},
      {"7' 12.0", "character 4"},
      {"7' 300", "character 4"},
      {"1'234", "character 3"},
      {"7.5' 6\"", "character 1"},
      {"-7.5' 6\"", "character 2"},
      {"7 1/2' 6\"", "character 1"},
      {"7.0 ft 6 in", "character 1"},
      {"6 1/0\"", "character 5"},
      {"1/0", "character 3"},
      {"1/", "character 3"},
      {"1//2", "character 3"},
      {"1/2/3 in", "character 4"},
      {"1/x", "character 3"},
      {"1/2.5 in", "character 3"},
      {"1/½ in", "character 3"},
      {"1.5/2 in", "character 1"},
      {"6.5 1/2 in", "character 5"},
      {"6.5½ in", "character 4"},
      {"6 3/2 in", "character 3"},
      {"6 2/2 in", "character 3"},
      {"6½½ in", "character 3"},
      {"6 ½ ½ in", "character 5"},
      {"½6 in", "character 2"},
      {"7' 6 1/0\"", "character 8"},
      {"7' 6 5/4\"", "character 6"},
      {"7' 6.5 1/2\"", "character 8"},
      {"1.2.3 m", "character 4"},
      {"1..2 m", "character 3"},
      {"7. m", "character 2"},
      {"7.m", "character 2"},
      {"7 .m", "character 3"},
      {"7:30", "character 2"},
      {"7%", "character 2"},
      {"7°", "character 2"},
      {"7 ft, 6 in", "character 5"},
      {"(7 m)", "character 1"},
      {"7 m)", "character 4"},
      {"7 × 2", "character 3"},
      {"$7", "character 1"},
      {"7 м", "character 3"},
      {"½ ß", "character 3"},
      {"1000.001 m", "character 1"},
      {"-1000.001 m", "character 2"},
      {"1000001 mm", "character 1"},
      {"3281 ft", "character 1"},
      {"3280' 11\"", "character 1"},
      {"  99999999999999999999999", "character 3"},
  };
  for (const auto& row : cases) {
    const auto length = parseLength(row.text, kMetres);
    EXPECT_EQ(faultPlace(length), row.where) << row.text;
    EXPECT_TRUE(isWholeProblem(length)) << row.text;
  }
}

TEST(Length, AProblemReadsAsAdvice) {
  const auto sentence = [](const char* text, const UnitSystem& units) {
    const auto length = parseLength(text, units);
    return length ? "read" : length.error().sentence();
  };
  EXPECT_EQ(sentence("1.234", kMetresComma),
            "character 2: “1.234” can be read in two ways. Write 1234 or 1,234.");
  EXPECT_EQ(sentence("7 yd", kMetres), "character 3: “yd” is not a unit of length. Use ft, in, m, cm or mm.");
  EXPECT_EQ(sentence("2 300", kMillimetres),
            "character 3: “300” is a second number that belongs to nothing. "
            "Write one length, such as 2300 mm.");
  EXPECT_EQ(sentence("", kFeetInches),
            "character 1: A number is missing. Write one length, such as 7′ 6 9/16″.");
  EXPECT_EQ(sentence("1200", kMetres),
            "character 1: The length is more than 1000.000 m. Check the number and its unit.");
}

TEST(Length, HostileTextIsRefusedAtItsPlace) {
  EXPECT_EQ(faultPlace(parseLength("7\0m"s, kMetres)), "character 2");
  EXPECT_EQ(faultPlace(parseLength("7 m\0"s, kMetres)), "character 4");
  EXPECT_EQ(faultPlace(parseLength("7 \xE2\x80", kMetres)), "character 3");
  EXPECT_EQ(faultPlace(parseLength("½ \xFF", kMetres)), "character 3");
  EXPECT_EQ(faultPlace(parseLength(std::string(5'000'000, '7'), kMetres)), "character 101");
  EXPECT_EQ(faultPlace(parseLength(std::string(5'000'000, '\0'), kMetres)), "character 101");
  EXPECT_EQ(faultPlace(parseLength(std::string(100, '9'), kMetres)), "character 1");
  EXPECT_EQ(faultPlace(parseLength("7 m\u202E", kMetres)), "character 4");
}

TEST(Length, MinusZeroIsZero) {
  for (const char* text : {"-0", "-0 mm", "-0' 0\"", "-0/2 in"}) {
    const auto length = parseLength(text, kMetres);
    ASSERT_TRUE(length) << text;
    EXPECT_EQ(*length, 0) << text;
    EXPECT_FALSE(std::signbit(*length)) << text;
  }
}

TEST(Length, ASizeIsMoreThanZero) {
  EXPECT_DOUBLE_EQ(parseSize("2.3 m", kMetres).value(), 2.3);
  EXPECT_EQ(faultPlace(parseSize("0", kMetres)), "character 1");
  EXPECT_EQ(faultPlace(parseSize(" -2 m", kMetres)), "character 3");
  EXPECT_EQ(faultPlace(parseSize("2 mn", kMetres)), "character 3");
  EXPECT_TRUE(isWholeProblem(parseSize("-2 m", kMetres)));
}

/// Text built from the pieces that lengths are made of, in any order.
std::string scrambled(std::mt19937& random) {
  static const std::string kPieces[] = {"7",  "12", "6.5", "6,5", "1/2", "½",    "'",  "\"", "′",
                                        "″",  "-",  "−",   " ",   "\t",  "ft",   "in", "m",  "cm",
                                        "mm", "/",  ".",   ",",   "e3",  "\xFF", "°",  "0"};
  std::string text;
  for (auto count = random() % 8; count > 0; --count) text += kPieces[random() % std::size(kPieces)];
  return text;
}

TEST(Length, AnyTextIsReadWithinTheLimitOrRefusedWithinTheText) {
  std::mt19937 random(31);
  int readCount = 0;
  for (int i = 0; i < 100'000; ++i) {
    const std::string text = scrambled(random);
    const UnitSystem units{kLengthUnits[random() % kLengthUnits.size()], 16, random() % 2 ? '.' : ','};
    const auto length = parseLength(text, units);
    if (length) {
      ++readCount;
      ASSERT_LE(std::abs(*length), kLongestLength) << text;
      continue;
    }
    ASSERT_TRUE(isWholeProblem(length)) << text;
    ASSERT_TRUE(length.error().where.starts_with("character ")) << text;
    const int place = std::stoi(length.error().where.substr(10));
    ASSERT_GE(place, 1) << text;
    ASSERT_LE(place, static_cast<int>(text.size()) + 1) << text;
  }
  EXPECT_GT(readCount, 5000);
}

TEST(Length, ATypedUnitMeansTheSameInEachJob) {
  std::mt19937 random(32);
  int compared = 0;
  for (int i = 0; i < 50'000; ++i) {
    const std::string text = scrambled(random) + " mm";
    const auto inMetres = parseLength(text, kMetres);
    const auto inFeet = parseLength(text, kFeet);
    ASSERT_EQ(inMetres.has_value(), inFeet.has_value()) << text;
    if (inMetres) {
      ++compared;
      ASSERT_EQ(*inMetres, *inFeet) << text;
    }
  }
  EXPECT_GT(compared, 2000);
}

}  // namespace
}  // namespace baywright
