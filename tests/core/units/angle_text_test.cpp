// SPDX-License-Identifier: Apache-2.0
#include "units/angle_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>
#include <random>

#include "systems.h"

namespace baywright {
namespace {

using namespace test;

struct Read {
  const char* text;
  double degrees;
};

constexpr double kDegree = std::numbers::pi / 180;

void expectRead(const Read& row, const UnitSystem& units) {
  const auto angle = parseAngle(row.text, units);
  ASSERT_TRUE(angle) << row.text << ": " << angle.error().sentence();
  EXPECT_NEAR(*angle, row.degrees * kDegree, 1e-12) << row.text;
}

TEST(AngleText, ReadsDegreesMinutesAndSeconds) {
  for (const Read& row : std::initializer_list<Read>{
           {"0", 0},
           {"12.5", 12.5},
           {"12.5°", 12.5},
           {"12.5 º", 12.5},
           {"12.5 deg", 12.5},
           {"12.5 Deg.", 12.5},
           {"12.5degrees", 12.5},
           {"1 degree", 1},
           {"12 1/2°", 12.5},
           {"12½°", 12.5},
           {"1/2°", 0.5},
           {"12-1/2 deg", 12.5},
           {"-12.5", -12.5},
           {"−12.5°", -12.5},
           {"+12.5°", 12.5},
           {"12° 30′", 12.5},
           {"12°30'", 12.5},
           {"12 deg 30 min", 12.5},
           {"12° 30.5′", 12 + 30.5 / 60},
           {"12° 30′ 15″", 12 + 30.0 / 60 + 15.0 / 3600},
           {"12°30'15''", 12 + 30.0 / 60 + 15.0 / 3600},
           {"12° 30′ 15.5″", 12 + 30.0 / 60 + 15.5 / 3600},
           {"12 degrees 30 minutes 15 seconds", 12 + 30.0 / 60 + 15.0 / 3600},
           {"-12° 30′", -12.5},
           {"0° 59′ 59″", 3599.0 / 3600},
           {"360", 360},
           {"-360°", -360},
       }) {
    expectRead(row, kMetres);
  }
  expectRead({"12,5°", 12.5}, kMetresComma);
}

// Angles of slopes from a table of roof pitches (4 in 12 = 18.43 degrees, 12 in 12 = 45) and of gradients
// (1 in 50 = 1.15 degrees, 100 % = 45): common practice, values from memory, to the hundredth of a degree.
TEST(AngleText, ReadsSlopesAsRiseToRun) {
  const Read cases[] = {{"4 in 12", 18.43}, {"4:12", 18.43}, {"12 in 12", 45},       {"1:50", 1.15},
                        {"1 : 50", 1.15},   {"2 %", 1.15},   {"100%", 45},           {"100 percent", 45},
                        {"-1:50", -1.15},   {"0:12", 0},     {"6 1/2 in 12", 28.44}, {"1:12.5", 4.57}};
  for (const Read& row : cases) {
    const auto angle = parseAngle(row.text, kMetres);
    ASSERT_TRUE(angle) << row.text << ": " << angle.error().sentence();
    EXPECT_NEAR(*angle / kDegree, row.degrees, 0.005) << row.text;
  }
}

TEST(AngleText, ReadsRadians) {
  EXPECT_EQ(parseAngle("0.5 rad", kMetres).value(), 0.5);
  EXPECT_EQ(parseAngle("-1 radian", kMetres).value(), -1);
  EXPECT_EQ(parseAngle("1,25 radians", kMetresComma).value(), 1.25);
}

TEST(AngleText, RefusesAtTheFault) {
  const struct {
    const char* text;
    const char* where;
  } cases[] = {{"", "character 1"},
               {"°", "character 1"},
               {"abc", "character 1"},
               {"12 abc", "character 4"},
               {"12 m", "character 4"},
               {"12°°", "character 4"},
               {"4/12", "character 1"},
               {"-4/12", "character 2"},
               {"12 1/2", "character 1"},
               {"12° 30", "character 7"},
               {"12.5° 30'", "character 1"},
               {"12° 30.5' 15\"", "character 5"},
               {"12° 60'", "character 5"},
               {"12° 30' 60\"", "character 9"},
               {"12° 30' 15\" 3", "character 13"},
               {"12° -30'", "character 5"},
               {"12° 30\"", "character 7"},
               {"30'", "character 3"},
               {"1:0", "character 3"},
               {"1:", "character 3"},
               {"1:-50", "character 3"},
               {"1:50:2", "character 5"},
               {"4 in", "character 5"},
               {"4 in 12 in", "character 9"},
               {"2 % 3", "character 5"},
               {"2 %%", "character 4"},
               {"--12", "character 2"},
               {"12,5°", "character 3"},
               {"360.1", "character 1"},
               {"-361", "character 2"},
               {"7 rad", "character 1"},
               {"1e2", "character 2"},
               {"12 30", "character 4"},
               {"nan", "character 1"},
               {"inf°", "character 1"}};
  for (const auto& row : cases) {
    const auto angle = parseAngle(row.text, kMetres);
    EXPECT_EQ(faultPlace(angle), row.where) << row.text;
    EXPECT_TRUE(isWholeProblem(angle)) << row.text;
  }
}

TEST(AngleText, PrintsTenthsOfADegree) {
  EXPECT_EQ(formatAngle(12.5 * kDegree, kMetres), "12.5°");
  EXPECT_EQ(formatAngle(-3 * kDegree, kMetresComma), "−3,0°");
  EXPECT_EQ(formatAngle(-1e-6, kMetres), "0.0°");
  EXPECT_EQ(formatAngle(89.96 * kDegree, kMetres), "90.0°");
  EXPECT_EQ(formatAngle(std::nan(""), kMetres), "—");
  EXPECT_EQ(formatAngle(std::numeric_limits<double>::infinity(), kMetres), "—");
}

TEST(AngleText, WhatIsPrintedIsReadBack) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> angles(-2 * std::numbers::pi, 2 * std::numbers::pi);
  for (int i = 0; i < 20000; ++i) {
    const UnitSystem& units = i % 2 ? kMetres : kMetresComma;
    const double angle = i == 0 ? 2 * std::numbers::pi : i == 1 ? -2 * std::numbers::pi : angles(random);
    const std::string text = formatAngle(angle, units);
    const auto read = parseAngle(text, units);
    ASSERT_TRUE(read) << text << ": " << read.error().sentence();
    ASSERT_NEAR(*read, angle, 0.0500001 * kDegree) << text;
    ASSERT_EQ(formatAngle(*read, units), text);
  }
}

}  // namespace
}  // namespace baywright
