// SPDX-License-Identifier: Apache-2.0
// The Equipment Rules (R&A and USGA, 2019), Part 2: section 1c, length of a club; section 4b(i), size of a
// wood's head.
#include <gtest/gtest.h>

#include "swing/envelope.h"

namespace baywright {
namespace {

constexpr double kInch = 0.0254;

bool swings(double inches) {
  Golfer golfer;
  golfer.stature = taped(1.80);
  Club club;
  club.length = inches * kInch;
  return swingOf(golfer, club).has_value();
}

TEST(EquipmentRules, EveryClubThatConformsCanBeSwung) {
  EXPECT_TRUE(swings(48));  // the longest
  EXPECT_TRUE(swings(46));  // Model Local Rule G-10
  EXPECT_TRUE(swings(18));  // the shortest
}

TEST(EquipmentRules, ALittleMoreIsLetThroughButNotMuch) {
  EXPECT_TRUE(swings(49));
  EXPECT_FALSE(swings(50));
  EXPECT_FALSE(swings(17));
}

TEST(EquipmentRules, TheBallAboutAHeadHoldsTheLargestWood) {
  // 5 in from heel to toe, 2.8 in from sole to crown; on the floor at address.
  EXPECT_DOUBLE_EQ(2 * kClubHeadRadius, 5 * kInch);
  EXPECT_GE(2 * kClubHeadRadius, 2.8 * kInch);
}

}  // namespace
}  // namespace baywright
