// SPDX-License-Identifier: Apache-2.0
#include "clearance/finding.h"

#include <gtest/gtest.h>

#include <limits>

namespace baywright {
namespace {

TEST(Verdict, IsClearFromTheHalfWidthOn) {
  const Uncertain just{1.96 * 0.01, 0.01};
  EXPECT_EQ(verdictOf(just), Verdict::Clear);
  EXPECT_EQ(verdictOf({just.value - 1e-4, just.sigma}), Verdict::Tight);
}

TEST(Verdict, IsBlockedBelowZeroHoweverUncertain) {
  EXPECT_EQ(verdictOf({-1e-5, 10}), Verdict::Blocked);
  EXPECT_EQ(verdictOf({-1e-9, 0}), Verdict::Tight);
  EXPECT_EQ(verdictOf({0, 0}), Verdict::Clear);
}

TEST(Verdict, IsUnknownForWhatIsNoNumber) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(verdictOf({nan, 0.01}), Verdict::Unknown);
  EXPECT_EQ(verdictOf({1, nan}), Verdict::Unknown);
}

}  // namespace
}  // namespace baywright
