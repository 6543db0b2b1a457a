// SPDX-License-Identifier: Apache-2.0
#include "clearance/ball_zone.h"

#include "clearance/obstacles.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

std::vector<BallSetting> ballsOf(const Job& job) {
  return BallZoneMaker().make(job, obstaclesOf(job));
}

TEST(BallZone, IsOneForEachHandInUse) {
  EXPECT_EQ(ballsOf(garage(8, 6).job()).size(), 1u);  // nobody yet: shown for a right-hander
  const auto left = ballsOf(garage(8, 6).withGolfer(1.7, Hand::Left).withClub().job());
  ASSERT_EQ(left.size(), 1u);
  EXPECT_EQ(left[0].zone.hand, Hand::Left);
  EXPECT_EQ(ballsOf(roomyHall().withGolfer(1.7, Hand::Left, "Kim").withClub().job()).size(), 2u);
}

TEST(BallZone, DoesNotCountWhatNobodyMeasuredAsAWall) {
  const auto onScreen = [](bool known) {
    const Job job = roomyHall().with([&](Job& j) { j.room.ceiling[0].height.known = known; }).job();
    return ballsOf(job)[0].zone.capture.onScreen();
  };
  EXPECT_EQ(onScreen(true), onScreen(false));
}

TEST(BallZone, IsTheSameWhenKept) {
  BallZoneMaker maker;
  const Job first = roomyHall().job();
  const Job second = roomyHall().with([](Job& j) { j.options[0].kit.screen.restitution = 0.3; }).job();
  maker.make(first, obstaclesOf(first));
  const auto kept = maker.make(second, obstaclesOf(second));
  const auto fresh = ballsOf(second);
  ASSERT_TRUE(kept[0].zone.rebound && fresh[0].zone.rebound);
  EXPECT_EQ(kept[0].zone.rebound->worst.speedAtStrike, fresh[0].zone.rebound->worst.speedAtStrike);
  EXPECT_EQ(kept[0].zone.window, fresh[0].zone.window);
}

}  // namespace
}  // namespace baywright
