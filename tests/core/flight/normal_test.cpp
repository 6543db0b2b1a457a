// SPDX-License-Identifier: Apache-2.0
#include "flight/detail/normal.h"

#include <gtest/gtest.h>

namespace baywright::detail {
namespace {

TEST(Normal, QuantileUndoesTheShareBelow) {
  for (const double x : {-5.9, -3.0, -1.5, -0.1, 0.0, 0.4, 2.0, 4.5})
    EXPECT_NEAR(normalQuantile(normalBelow(x)), x, 1e-9) << x;
}

TEST(Normal, SharesAreThoseOfTheTables) {
  // 68.27 and 95.45 % within one and two standard deviations.
  EXPECT_NEAR(normalBelow(1) - normalBelow(-1), 0.6827, 5e-5);
  EXPECT_NEAR(normalBelow(2) - normalBelow(-2), 0.9545, 5e-5);
  EXPECT_NEAR(normalQuantile(0.975), 1.959964, 5e-7);
}

}  // namespace
}  // namespace baywright::detail
