// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <string>
#include <vector>

#include "systems.h"
#include "units/length_text.h"

namespace baywright {
namespace {

using namespace test;

/// What the two roundings may add to half a step.
constexpr double kRounding = 1e-9;

void expectRoundTrip(double metres, const UnitSystem& units) {
  const std::string text = formatLength(metres, units);
  const auto read = parseLength(text, units);
  ASSERT_TRUE(read) << text << ": " << read.error().sentence();
  ASSERT_NEAR(*read, metres, displayStep(units) / 2 + kRounding) << text << ", " << describe(units);
  ASSERT_EQ(formatLength(*read, units), text) << describe(units);
  const std::string offset = formatLengthSigned(metres, units);
  ASSERT_EQ(parseLength(offset, units).value(), *read) << offset;
}

TEST(LengthRoundTrip, HoldsForRandomLengthsInEachSystem) {
  std::mt19937 random(1);
  std::uniform_real_distribution<double> exponents(-5, 2.99);
  for (const UnitSystem& units : everySystem()) {
    for (int i = 0; i < 1000; ++i) {
      const double metres = std::pow(10.0, exponents(random));
      expectRoundTrip(i % 2 ? metres : -metres, units);
      if (HasFatalFailure()) return;
    }
  }
}

TEST(LengthRoundTrip, HoldsAtAndAroundEachHalfStepOfTheFirstFoot) {
  for (const UnitSystem& units : everySystem()) {
    const double halfStep = displayStep(units) / 2;
    for (int i = 0; i * halfStep < 0.31; ++i) {
      for (double metres : {i * halfStep, i * halfStep + 1e-10, i * halfStep - 1e-10, -i * halfStep}) {
        expectRoundTrip(metres, units);
        if (HasFatalFailure()) return;
      }
    }
  }
}

TEST(LengthRoundTrip, HoldsAtTheLimits) {
  for (const UnitSystem& units : everySystem()) {
    for (double metres : {0.0, -0.0, 999.99, -999.99}) expectRoundTrip(metres, units);
  }
}

TEST(LengthRoundTrip, EachStepPrintsItsOwnText) {
  for (const UnitSystem& units : everySystem()) {
    std::string last;
    for (int i = -500; i <= 500; ++i) {
      const std::string text = formatLength(i * displayStep(units), units);
      ASSERT_NE(text, last) << describe(units) << ", step " << i;
      last = text;
    }
  }
}

}  // namespace
}  // namespace baywright
