// SPDX-License-Identifier: Apache-2.0
#include "units/number_text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "systems.h"

namespace baywright {
namespace {

using namespace test;

TEST(NumberText, ReadsPlainNumbers) {
  const struct {
    const char* text;
    double value;
  } cases[] = {{"0", 0},       {"1.2", 1.2},     {" 1.2 ", 1.2},     {"-1.2", -1.2}, {"−1.2", -1.2},
               {"+1.2", 1.2},  {".5", 0.5},      {"1 1/2", 1.5},     {"1½", 1.5},    {"16/9", 16. / 9},
               {"1-1/2", 1.5}, {"1000000", 1e6}, {"-1000000", -1e6}, {"007", 7}};
  for (const auto& row : cases) {
    const auto value = parseNumber(row.text, kMetres);
    ASSERT_TRUE(value) << row.text << ": " << value.error().sentence();
    EXPECT_DOUBLE_EQ(*value, row.value) << row.text;
  }
}

TEST(NumberText, MinusZeroIsZero) {
  EXPECT_FALSE(std::signbit(parseNumber("-0", kMetres).value()));
}

TEST(NumberText, RefusesAtTheFault) {
  const struct {
    const char* text;
    const char* where;
  } cases[] = {{"", "character 1"},       {"  ", "character 3"},    {"-", "character 2"},
               {"--1", "character 2"},    {"1 m", "character 3"},   {"1 2", "character 3"},
               {"1:2", "character 2"},    {"nan", "character 1"},   {"-inf", "character 2"},
               {"1/0", "character 3"},    {"1/", "character 3"},    {"/2", "character 1"},
               {"1/2.5", "character 3"},  {"1.5/2", "character 1"}, {"1.5 1/2", "character 5"},
               {"1 3/2", "character 3"},  {"1 2/2", "character 3"}, {"1/2/3", "character 4"},
               {"1.5½", "character 4"},   {"½½", "character 2"},    {"1000001", "character 1"},
               {"5-3", "character 2"},    {"5-", "character 2"},    {"1- 1/2", "character 2"},
               {"1 -1/2", "character 3"}, {"1,5", "character 2"},   {"0x10", "character 2"}};
  for (const auto& row : cases) {
    const auto value = parseNumber(row.text, kMetres);
    EXPECT_EQ(faultPlace(value), row.where) << row.text;
    EXPECT_TRUE(isWholeProblem(value)) << row.text;
  }
}

TEST(NumberText, PrintsRoundedHalfAwayFromZero) {
  EXPECT_EQ(formatNumber(0, 0, kMetres), "0");
  EXPECT_EQ(formatNumber(0, 3, kMetres), "0.000");
  EXPECT_EQ(formatNumber(0.05, 2, kMetres), "0.05");
  EXPECT_EQ(formatNumber(0.5, 0, kMetres), "1");
  EXPECT_EQ(formatNumber(-0.5, 0, kMetres), "−1");
  EXPECT_EQ(formatNumber(0.125, 2, kMetres), "0.13");
  EXPECT_EQ(formatNumber(-0.125, 2, kMetres), "−0.13");
  EXPECT_EQ(formatNumber(9.999, 2, kMetres), "10.00");
  EXPECT_EQ(formatNumber(1234567.5, 1, kMetresComma), "1234567,5");
  EXPECT_EQ(formatNumber(-1e-9, 3, kMetres), "0.000");
  EXPECT_EQ(formatNumber(-0.0, 1, kMetres), "0.0");
  EXPECT_EQ(formatNumber(1.5, 99, kMetres), "1.500000");
  EXPECT_EQ(formatNumber(1.5, -99, kMetres), "2");
}

TEST(NumberText, PrintsADashForWhatIsNoFigure) {
  constexpr double kInfinity = std::numeric_limits<double>::infinity();
  for (double value : {kInfinity, -kInfinity, std::nan(""), 1e9, -1e300}) {
    EXPECT_EQ(formatNumber(value, 6, kMetres), kNoFigure);
  }
  EXPECT_EQ(formatNumber(999999999, 6, kMetres), "999999999.000000");
}

TEST(NumberText, WhatIsPrintedIsReadBack) {
  std::mt19937 random(20240611);
  std::uniform_real_distribution<double> exponents(-5, 5.9);
  for (int i = 0; i < 20000; ++i) {
    const UnitSystem& units = i % 2 ? kMetres : kMetresComma;
    const double value = std::pow(10.0, exponents(random)) * (i % 3 ? 1 : -1);
    const int decimals = i % 7;
    const std::string text = formatNumber(value, decimals, units);
    const auto read = parseNumber(text, units);
    ASSERT_TRUE(read) << text << ": " << read.error().sentence();
    ASSERT_NEAR(*read, value, 0.5 * std::pow(10.0, -decimals) + 1e-9) << text;
    ASSERT_EQ(formatNumber(*read, decimals, units), text);
  }
}

}  // namespace
}  // namespace baywright
