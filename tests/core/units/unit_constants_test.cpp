// SPDX-License-Identifier: Apache-2.0
#include "units/unit_constants.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

// The factors as NIST Special Publication 811 (2008), appendix B.8, prints them, to its seven digits.
// Values from memory; the publication itself was not at hand.
TEST(UnitConstants, AgreeWithThePrintedConversionTables) {
  EXPECT_EQ(kMetresPerInch, 2.54e-2);
  EXPECT_EQ(kMetresPerFoot, 3.048e-1);
  EXPECT_NEAR(kKilogramsPerPound, 4.535924e-1, 0.5e-7);
  EXPECT_NEAR(kKilogramsPerOunce, 2.834952e-2, 0.5e-8);
  EXPECT_EQ(kMetresPerSecondPerMph, 4.4704e-1);
  EXPECT_NEAR(kMetresPerSecondPerKmh, 2.777778e-1, 0.5e-7);
  EXPECT_NEAR(kRadiansPerDegree, 1.745329e-2, 0.5e-8);
  EXPECT_NEAR(kRadiansPerSecondPerRpm, 1.047198e-1, 0.5e-7);
  EXPECT_NEAR(kLuxPerFootcandle, 1.076391e1, 0.5e-5);
  EXPECT_NEAR(kNitsPerFootLambert, 3.426259, 0.5e-6);
}

TEST(UnitConstants, TwelveInchesAreAFoot) {
  EXPECT_DOUBLE_EQ(12 * kMetresPerInch, kMetresPerFoot);
}

}  // namespace
}  // namespace baywright
