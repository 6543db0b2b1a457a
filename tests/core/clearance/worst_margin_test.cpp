// SPDX-License-Identifier: Apache-2.0
#include "clearance/worst_margin.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace baywright {
namespace {

TEST(WorstMargin, PrefersTheLargestLackHoweverUncertain) {
  EXPECT_TRUE(isWorse({-0.10, 0.05}, {-0.04, 0.001}));
  EXPECT_TRUE(isWorse({-0.01, 0.05}, {0.01, 0.5}));
}

TEST(WorstMargin, PrefersTheDoubtfulOfWhatIsThere) {
  EXPECT_TRUE(isWorse({0.06, 0.05}, {0.05, 0.002}));
  EXPECT_FALSE(isWorse({0.05, 0.002}, {0.06, 0.05}));
}

TEST(WorstMargin, OrdersCertainMarginsByTheirSize) {
  EXPECT_TRUE(isWorse({0.1, 0}, {0.2, 0}));
  EXPECT_TRUE(isWorse({0.1, 0}, {5, 0.01}));
  EXPECT_TRUE(isWorse({0.5, 0.001}, {0.6, 0.01}));
  EXPECT_FALSE(isWorse({0.1, 0}, {0.1, 0}));
}

TEST(WorstMargin, IsTransitive) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> value(-0.2, 0.4);
  std::uniform_int_distribution<int> sigma(0, 3);
  for (int i = 0; i < 20000; ++i) {
    const Uncertain a{value(random), 0.02 * sigma(random)};
    const Uncertain b{value(random), 0.02 * sigma(random)};
    const Uncertain c{value(random), 0.02 * sigma(random)};
    EXPECT_TRUE(isWorse(a, c) || !isWorse(a, b) || !isWorse(b, c));
    EXPECT_FALSE(isWorse(a, b) && isWorse(b, a));
  }
}

TEST(WorstMargin, ReachesAsFarAsAnythingCouldBeWorse) {
  std::mt19937 random(8);
  std::uniform_real_distribution<double> value(-0.2, 0.6);
  std::uniform_real_distribution<double> sigma(0.001, 0.1);
  const double required = 0.15;
  for (int i = 0; i < 20000; ++i) {
    const Uncertain best{value(random), sigma(random)};
    const double largest = sigma(random);
    const Uncertain other{value(random), largest * std::uniform_real_distribution<double>(0, 1)(random)};
    const bool beyond = other.value + required > searchReach(best, required, largest);
    EXPECT_FALSE(beyond && isWorse(other, best));
  }
}

TEST(WorstMargin, CountsInHalfWidths) {
  EXPECT_NEAR(margins95({0.0392, 0.02}), 1.0, 1e-3);
  EXPECT_EQ(margins95({-0.1, 0}), -INFINITY);
}

}  // namespace
}  // namespace baywright
