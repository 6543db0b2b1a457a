// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>

#include "systems.h"
#include "units/length_text.h"
#include "units/number_text.h"

namespace baywright {
namespace {

using namespace test;

constexpr double kInch = 0.0254;
constexpr double kInfinity = std::numeric_limits<double>::infinity();

UnitSystem feetInches(int fraction) {
  return {LengthUnit::FeetInches, fraction, '.'};
}

TEST(LengthFormat, FeetAndInchesReadAsOnATape) {
  const struct {
    double inches;
    int fraction;
    const char* text;
  } cases[] = {
      {0, 16, "0″"},
      {0.5, 16, "1/2″"},
      {0.25, 16, "1/4″"},
      {0.75, 8, "3/4″"},
      {0.0625, 16, "1/16″"},
      {0.03125, 32, "1/32″"},
      {0.03125, 16, "1/16″"},
      {0.03, 16, "0″"},
      {2.5, 16, "2 1/2″"},
      {11, 16, "11″"},
      {12, 16, "1′ 0″"},
      {12.5, 16, "1′ 0 1/2″"},
      {84, 16, "7′ 0″"},
      {90.5, 16, "7′ 6 1/2″"},
      {90.5, 8, "7′ 6 1/2″"},
      {90.625, 8, "7′ 6 5/8″"},
      {90.6, 32, "7′ 6 19/32″"},
      {90.6, 16, "7′ 6 5/8″"},
      {90.6, 8, "7′ 6 5/8″"},
      {11 + 31.0 / 32, 32, "11 31/32″"},
      {11 + 31.0 / 32, 16, "1′ 0″"},
      {11 + 15.0 / 16, 16, "11 15/16″"},
      {11 + 15.0 / 16, 8, "1′ 0″"},
      {95 + 31.0 / 32, 32, "7′ 11 31/32″"},
      {95 + 31.0 / 32, 16, "8′ 0″"},
      {95.99, 32, "8′ 0″"},
      {-2.5, 16, "−2 1/2″"},
      {-90.5, 16, "−7′ 6 1/2″"},
      {-95.99, 32, "−8′ 0″"},
      {-0.01, 16, "0″"},
      {39370.0, 16, "3280′ 10″"},
  };
  for (const auto& row : cases) {
    EXPECT_EQ(formatLength(row.inches * kInch, feetInches(row.fraction)), row.text) << row.inches;
  }
}

TEST(LengthFormat, InchesAreNotCarriedIntoFeet) {
  EXPECT_EQ(formatLength(90.5 * kInch, kInches), "90 1/2″");
  EXPECT_EQ(formatLength(90 * kInch, kInches), "90″");
  EXPECT_EQ(formatLength(95.99 * kInch, kInches), "96″");
  EXPECT_EQ(formatLength(-0.5 * kInch, kInches), "−1/2″");
}

TEST(LengthFormat, DecimalsAreThoseThatResolveAMillimetre) {
  EXPECT_EQ(formatLength(2.3, kMetres), "2.300 m");
  EXPECT_EQ(formatLength(2.3, kMetresComma), "2,300 m");
  EXPECT_EQ(formatLength(2.3, {LengthUnit::Centimetres}), "230.0 cm");
  EXPECT_EQ(formatLength(2.3, kMillimetres), "2300 mm");
  EXPECT_EQ(formatLength(2.3, kFeet), "7.55 ft");
  EXPECT_EQ(formatLength(0, kMetres), "0.000 m");
  EXPECT_EQ(formatLength(0.0004, kMetres), "0.000 m");
  EXPECT_EQ(formatLength(-0.0004, kMetres), "0.000 m");
  EXPECT_EQ(formatLength(-0.0006, kMetres), "−0.001 m");
  EXPECT_EQ(formatLength(0.9996, kMetres), "1.000 m");
  EXPECT_EQ(formatLength(-12.0345, kMillimetres), "−12035 mm");
}

TEST(LengthFormat, OffsetsShowTheirSign) {
  EXPECT_EQ(formatLengthSigned(0.25, kMetres), "+0.250 m");
  EXPECT_EQ(formatLengthSigned(-0.25, kMetresComma), "−0,250 m");
  EXPECT_EQ(formatLengthSigned(0, kMetres), "0.000 m");
  EXPECT_EQ(formatLengthSigned(-0.0, kMetres), "0.000 m");
  EXPECT_EQ(formatLengthSigned(0.0001, kMetres), "0.000 m");
  EXPECT_EQ(formatLengthSigned(2.5 * kInch, kFeetInches), "+2 1/2″");
  EXPECT_EQ(formatLengthSigned(-90 * kInch, kFeetInches), "−7′ 6″");
}

// 1.96 standard deviations: the 95 % interval of a normal distribution.
TEST(LengthFormat, UncertaintyIsTheHalfWidthRoundedUp) {
  const double sigma = 0.005 / 1.959963984540054;
  EXPECT_EQ(formatUncertain({0.064, sigma}, kMillimetres), "64 mm ± 5 mm");
  EXPECT_EQ(formatUncertain({0.064, sigma * 1.01}, kMillimetres), "64 mm ± 6 mm");
  EXPECT_EQ(formatUncertain({-0.064, sigma}, kMetresComma), "−0,064 m ± 0,005 m");
  EXPECT_EQ(formatUncertain({0.064, 1e-6}, kMillimetres), "64 mm ± 1 mm");
  EXPECT_EQ(formatUncertain({0.064, 1e-12}, kMillimetres), "64 mm ± 1 mm");
  EXPECT_EQ(formatUncertain({0.064, 0}, kMillimetres), "64 mm");
  EXPECT_EQ(formatUncertain({2.5 * kInch, sigma}, kFeetInches), "2 1/2″ ± 1/4″");
  EXPECT_EQ(formatUncertain({90.5 * kInch, 10 * sigma}, kFeetInches), "7′ 6 1/2″ ± 2″");
}

TEST(LengthFormat, WhatIsNoLengthPrintsAsADash) {
  for (const UnitSystem& units : everySystem()) {
    for (double value : {kInfinity, -kInfinity, std::nan(""), 1.1e5, -1e300}) {
      EXPECT_EQ(formatLength(value, units), "—");
      EXPECT_EQ(formatLengthSigned(value, units), "—");
      EXPECT_EQ(formatUncertain({value, 0}, units), "—");
    }
    for (double sigma : {kInfinity, std::nan(""), 1e300, -1.0}) {
      EXPECT_TRUE(formatUncertain({1, sigma}, units).ends_with(" ± —")) << sigma;
    }
    EXPECT_EQ(formatLength(1e5, units).find(kNoFigure), std::string::npos);
  }
}

TEST(LengthFormat, AFractionThatNoTapeHasFallsBackToSixteenths) {
  for (int fraction : {0, -8, 1, 7, 64, std::numeric_limits<int>::max(), std::numeric_limits<int>::min()}) {
    EXPECT_EQ(formatLength(2.0625 * kInch, feetInches(fraction)), "2 1/16″") << fraction;
  }
}

TEST(LengthFormat, StepsAreTheDistanceBetweenNeighbours) {
  EXPECT_DOUBLE_EQ(displayStep(kMetres), 0.001);
  EXPECT_DOUBLE_EQ(displayStep({LengthUnit::Centimetres}), 0.001);
  EXPECT_DOUBLE_EQ(displayStep(kMillimetres), 0.001);
  EXPECT_DOUBLE_EQ(displayStep(kFeet), 0.003048);
  EXPECT_DOUBLE_EQ(displayStep(feetInches(8)), 0.003175);
  EXPECT_DOUBLE_EQ(displayStep({LengthUnit::Inches, 32}), 0.00079375);
}

}  // namespace
}  // namespace baywright
