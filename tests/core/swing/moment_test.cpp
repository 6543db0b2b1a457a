// SPDX-License-Identifier: Apache-2.0
#include "swing/moment.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Moment, FindsItsWayBack) {
  for (double moment = 0; moment <= 1; moment += 0.01) EXPECT_NEAR(momentOf(placeAt(moment)), moment, 1e-7);
}

TEST(Moment, MeetsTheBallTwiceAndTheTopOnce) {
  EXPECT_EQ(placeAt(0), (LegPlace{SwingLeg::Backswing, 0}));
  EXPECT_NEAR(placeAt(kTopMoment).share, 1, 1e-12);
  EXPECT_EQ(placeAt(kImpactMoment).leg, SwingLeg::Downswing);
  EXPECT_NEAR(placeAt(kImpactMoment).share, 0, 1e-12);
  EXPECT_EQ(placeAt(1), (LegPlace{SwingLeg::FollowThrough, 1}));
}

TEST(Moment, DoesNotJump) {
  for (double moment = 0; moment < 1; moment += 1e-3)
    EXPECT_LT(std::abs(placeAt(moment + 1e-3).share - placeAt(moment).share), 0.02) << moment;
}

TEST(Moment, ClampsWhatLiesOutside) {
  EXPECT_EQ(placeAt(-3), placeAt(0));
  EXPECT_EQ(placeAt(8), placeAt(1));
  EXPECT_EQ(momentOf({SwingLeg::FollowThrough, 2}), 1);
}

TEST(Moment, HasTheNamesOfTheSwingInOrder) {
  SwingPhase last = SwingPhase::Address;
  for (double moment = 0; moment <= 1; moment += 1e-3) {
    EXPECT_GE(phaseAt(moment), last);
    last = phaseAt(moment);
  }
  EXPECT_EQ(last, SwingPhase::Finish);
  EXPECT_EQ(phaseAt(kTopMoment), SwingPhase::Top);
  EXPECT_EQ(phaseAt(kImpactMoment), SwingPhase::Impact);
}

}  // namespace
}  // namespace baywright
