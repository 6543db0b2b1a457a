// SPDX-License-Identifier: Apache-2.0
#include "units/quantity_text.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <random>
#include <string>

#include "systems.h"

namespace baywright {
namespace {

using namespace test;
using enum QuantityKind;

constexpr std::array kQuantities = {Mass, Speed, Spin, LuminousFlux, Illuminance, Luminance, Ratio};

TEST(QuantityText, ReadsEachUnit) {
  const struct {
    const char* text;
    QuantityKind quantity;
    double value;
  } cases[] = {
      {"8.5 kg", Mass, 8.5},
      {"8.5KG", Mass, 8.5},
      {"2 kilograms", Mass, 2},
      {"45.93 g", Mass, 0.04593},
      {"500 grams", Mass, 0.5},
      {"10 lb", Mass, 4.5359237},
      {"10 lbs.", Mass, 4.5359237},
      {"1 pound", Mass, 0.45359237},
      {"16 oz", Mass, 0.45359237},
      {"1 1/2 lb", Mass, 0.680388555},
      {"½ oz", Mass, 0.0141747615625},
      {"0 kg", Mass, 0},
      {"76.2 m/s", Speed, 76.2},
      {"250 ft/s", Speed, 76.2},
      {"36 km/h", Speed, 10},
      {"36kph", Speed, 10},
      {"36 kmh", Speed, 10},
      {"100 mph", Speed, 44.704},
      {"100 MPH", Speed, 44.704},
      {"60 rpm", Spin, 2 * std::numbers::pi},
      {"60 rev/min", Spin, 2 * std::numbers::pi},
      {"-60 rpm", Spin, -2 * std::numbers::pi},
      {"3 rad/s", Spin, 3},
      {"4000 lm", LuminousFlux, 4000},
      {"4000 lumens", LuminousFlux, 4000},
      {"300 lx", Illuminance, 300},
      {"300 lux", Illuminance, 300},
      {"10 fc", Illuminance, 107.639104167},
      {"50 cd/m2", Luminance, 50},
      {"50 cd/m²", Luminance, 50},
      {"50 nits", Luminance, 50},
      {"16 fL", Luminance, 54.8201455},
      {"80 %", Ratio, 0.8},
      {"80%", Ratio, 0.8},
      {"80 percent", Ratio, 0.8},
      {"-5 %", Ratio, -0.05},
  };
  for (const auto& row : cases) {
    const auto value = parseQuantity(row.text, row.quantity, kMetres);
    ASSERT_TRUE(value) << row.text << ": " << value.error().sentence();
    EXPECT_NEAR(*value, row.value, 1e-8 * std::abs(row.value)) << row.text;
  }
}

// Rules of Golf 2016, appendix III: a ball weighs at most 1.620 oz avoirdupois (45.93 g).
TEST(QuantityText, TheHeaviestBallHasTheMassThatTheRulesPrint) {
  const double ball = parseQuantity("1.620 oz", Mass, kMetres).value();
  EXPECT_NEAR(ball, 0.04593, 0.000005);
  EXPECT_EQ(formatQuantity(ball, Mass, kFeet), "1.62 oz");
  EXPECT_EQ(formatQuantity(ball, Mass, kMetres), "45.9 g");
}

TEST(QuantityText, ABareNumberIsInTheUnitOfTheJob) {
  EXPECT_DOUBLE_EQ(parseQuantity("2", Mass, kMetres).value(), 2);
  EXPECT_DOUBLE_EQ(parseQuantity("2", Mass, kFeetInches).value(), 0.90718474);
  EXPECT_DOUBLE_EQ(parseQuantity("100", Speed, kMetres).value(), 100);
  EXPECT_DOUBLE_EQ(parseQuantity("100", Speed, kInches).value(), 44.704);
  EXPECT_DOUBLE_EQ(parseQuantity("60", Spin, kMetres).value(), 2 * std::numbers::pi);
  EXPECT_DOUBLE_EQ(parseQuantity("3500", LuminousFlux, kFeet).value(), 3500);
  EXPECT_DOUBLE_EQ(parseQuantity("300", Illuminance, kMillimetres).value(), 300);
  EXPECT_NEAR(parseQuantity("10", Illuminance, kFeet).value(), 107.639104, 1e-6);
  EXPECT_NEAR(parseQuantity("16", Luminance, kFeet).value(), 54.820146, 1e-6);
  EXPECT_DOUBLE_EQ(parseQuantity("64", Ratio, kMetres).value(), 0.64);
  EXPECT_DOUBLE_EQ(parseQuantity("6,5", Mass, kMetresComma).value(), 6.5);
}

TEST(QuantityText, RefusesAtTheFault) {
  const struct {
    const char* text;
    QuantityKind quantity;
    const char* where;
  } cases[] = {
      {"", Mass, "character 1"},
      {"kg", Mass, "character 1"},
      {"5 m", Mass, "character 3"},
      {"5 lm", Illuminance, "character 3"},
      {"5 lx", LuminousFlux, "character 3"},
      {"5 kg", Speed, "character 3"},
      {"5 m/h", Speed, "character 3"},
      {"5 m/", Speed, "character 3"},
      {"5 /s", Speed, "character 4"},
      {"5 %", Mass, "character 3"},
      {"5 kg 3", Mass, "character 3"},
      {"5 6 kg", Mass, "character 3"},
      {"5 - 3 kg", Mass, "character 3"},
      {"5'", Mass, "character 2"},
      {"-5 kg", Mass, "character 1"},
      {"10001 kg", Mass, "character 1"},
      {"201 m/s", Speed, "character 1"},
      {"-1 mph", Speed, "character 1"},
      {"20001 rpm", Spin, "character 1"},
      {"-20001 rpm", Spin, "character 1"},
      {"1000001 lm", LuminousFlux, "character 1"},
      {"1001 %", Ratio, "character 1"},
      {"1e3 lm", LuminousFlux, "character 2"},
      {"1,200 lm", LuminousFlux, "character 2"},
      {"nan lm", LuminousFlux, "character 1"},
  };
  for (const auto& row : cases) {
    const auto value = parseQuantity(row.text, row.quantity, kMetres);
    EXPECT_EQ(faultPlace(value), row.where) << row.text;
    EXPECT_TRUE(isWholeProblem(value)) << row.text;
  }
}

TEST(QuantityText, AProblemNamesTheUnitsThatWouldDo) {
  const auto mass = parseQuantity("5 stone", Mass, kMetres);
  ASSERT_FALSE(mass);
  EXPECT_EQ(mass.error().sentence(), "character 3: “stone” is not a unit of mass. Use kg, g, lb or oz.");
  const auto speed = parseQuantity("900 mph", Speed, kFeet);
  ASSERT_FALSE(speed);
  EXPECT_EQ(speed.error().next, "Give a value from 0.0 mph to 447.4 mph.");
}

TEST(QuantityText, TheLimitsThemselvesAreRead) {
  for (const UnitSystem& units : {kMetres, kFeet}) {
    EXPECT_TRUE(parseQuantity("20000 rpm", Spin, units));
    EXPECT_TRUE(parseQuantity("-20000 rpm", Spin, units));
    EXPECT_TRUE(parseQuantity("1000 %", Ratio, units));
    EXPECT_TRUE(parseQuantity("720 km/h", Speed, units));
  }
}

TEST(QuantityText, PrintsInTheUnitOfTheJob) {
  EXPECT_EQ(formatQuantity(8.5, Mass, kMetres), "8.50 kg");
  EXPECT_EQ(formatQuantity(8.5, Mass, kMetresComma), "8,50 kg");
  EXPECT_EQ(formatQuantity(4.5359237, Mass, kFeetInches), "10.00 lb");
  EXPECT_EQ(formatQuantity(0, Mass, kMetres), "0.00 kg");
  EXPECT_EQ(formatQuantity(44.704, Speed, kFeet), "100.0 mph");
  EXPECT_EQ(formatQuantity(44.704, Speed, kMetres), "44.7 m/s");
  EXPECT_EQ(formatQuantity(-20 * std::numbers::pi, Spin, kMetres), "−600 rpm");
  EXPECT_EQ(formatQuantity(4000, LuminousFlux, kFeet), "4000 lm");
  EXPECT_EQ(formatQuantity(400, Illuminance, kMetres), "400 lx");
  EXPECT_EQ(formatQuantity(400, Illuminance, kFeet), "37.2 fc");
  EXPECT_EQ(formatQuantity(50, Luminance, kMetres), "50.0 cd/m2");
  EXPECT_EQ(formatQuantity(50, Luminance, kFeet), "14.6 fL");
  EXPECT_EQ(formatQuantity(0.64, Ratio, kFeet), "64.0 %");
}

TEST(QuantityText, PrintsADashForWhatIsNoFigure) {
  for (QuantityKind quantity : kQuantities) {
    for (const UnitSystem& units : {kMetres, kFeet}) {
      EXPECT_EQ(formatQuantity(std::nan(""), quantity, units), "—");
      EXPECT_EQ(formatQuantity(std::numeric_limits<double>::infinity(), quantity, units), "—");
    }
  }
}

TEST(QuantityText, WhatIsPrintedIsReadBack) {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> exponents(-2, 2);
  for (const UnitSystem& units : everySystem()) {
    for (QuantityKind quantity : kQuantities) {
      const double scale = quantity == Ratio ? 0.1 : 1;
      for (int i = 0; i < 200; ++i) {
        const double value = scale * std::pow(10.0, exponents(random));
        const std::string text = formatQuantity(value, quantity, units);
        const auto read = parseQuantity(text, quantity, units);
        ASSERT_TRUE(read) << text << ": " << read.error().sentence();
        ASSERT_EQ(formatQuantity(*read, quantity, units), text) << describe(units) << ", " << value;
      }
    }
  }
}

}  // namespace
}  // namespace baywright
