// SPDX-License-Identifier: Apache-2.0
#include "survey/chi_square.h"

#include <gtest/gtest.h>

#include <cmath>

namespace baywright {
namespace {

// From scipy.stats.chi2.sf, scipy 1.10.1.
TEST(ChiSquare, AgreesWithScipy) {
  EXPECT_NEAR(chiSquareTail(3.84, 1), 0.05004352124870519, 1e-12);
  EXPECT_NEAR(chiSquareTail(0.5, 3), 0.9188914116546758, 1e-12);
  EXPECT_NEAR(chiSquareTail(12.59, 6), 0.05002901173891519, 1e-12);
  EXPECT_NEAR(chiSquareTail(30, 4), 4.894437128029217e-06, 1e-15);
  EXPECT_NEAR(chiSquareTail(200, 150), 0.003973185970821635, 1e-13);
}

TEST(ChiSquare, IsAnExponentialForTwoDegrees) {
  for (const double x : {0.01, 1.0, 3.99, 4.01, 20.0, 900.0})
    EXPECT_NEAR(chiSquareTail(x, 2) / std::exp(-x / 2), 1, 1e-11) << x;
  EXPECT_NEAR(chiSquareTail(kEllipse95 * kEllipse95, 2), 0.05, 1e-12);
}

TEST(ChiSquare, IsCertainWhereThereIsNothingToTest) {
  EXPECT_EQ(chiSquareTail(0, 3), 1);
  EXPECT_EQ(chiSquareTail(5, 0), 1);
  EXPECT_EQ(chiSquareTail(1e9, 3), 0);
}

}  // namespace
}  // namespace baywright
