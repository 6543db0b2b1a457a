// SPDX-License-Identifier: Apache-2.0
#include "drawing/round_length.h"

#include <gtest/gtest.h>

#include "units/unit_constants.h"

namespace baywright {
namespace {

double inMetres(double atLeast) {
  return roundLength({LengthUnit::Millimetres, 16, '.'}, atLeast);
}
double inFeet(double atLeast) {
  return roundLength({LengthUnit::FeetInches, 16, '.'}, atLeast) / kMetresPerFoot;
}

TEST(RoundLength, CountsOneTwoFiveInMetres) {
  EXPECT_NEAR(inMetres(0.0004), 0.001, 1e-15);
  EXPECT_NEAR(inMetres(0.011), 0.02, 1e-15);
  EXPECT_NEAR(inMetres(0.2), 0.2, 1e-15);
  EXPECT_NEAR(inMetres(0.21), 0.5, 1e-15);
  EXPECT_NEAR(inMetres(3), 5, 1e-12);
  EXPECT_NEAR(inMetres(70), 100, 1e-12);
}

TEST(RoundLength, CountsInchesThenFeet) {
  EXPECT_NEAR(inFeet(0.01), 1.0 / 12, 1e-12);
  EXPECT_NEAR(inFeet(0.03), 2.0 / 12, 1e-12);
  EXPECT_NEAR(inFeet(0.06), 6.0 / 12, 1e-12);
  EXPECT_NEAR(inFeet(0.2), 1, 1e-12);
  EXPECT_NEAR(inFeet(1.0), 5, 1e-12);
  EXPECT_NEAR(inFeet(1.6), 10, 1e-12);
}

}  // namespace
}  // namespace baywright
