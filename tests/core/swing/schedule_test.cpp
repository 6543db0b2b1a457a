// SPDX-License-Identifier: Apache-2.0
#include "swing/schedule.h"

#include <gtest/gtest.h>

#include "swing/double_pendulum.h"

namespace baywright {
namespace {

using enum SwingLeg;
constexpr double kDegree = kPi / 180;

TEST(Schedule, StartsEveryLegAtTheBall) {
  for (const SwingStyle style : {SwingStyle::Expected, SwingStyle::FullExtension}) {
    for (const SwingLeg leg : {Backswing, Downswing, FollowThrough}) {
      EXPECT_EQ(legAngles(style, leg).arms(0), 0);
      EXPECT_EQ(legAngles(style, leg).club(0, 1), 0);
    }
  }
}

TEST(Schedule, ComesDownFromWhereItWentUp) {
  for (const SwingStyle style : {SwingStyle::Expected, SwingStyle::FullExtension}) {
    const LegAngles& up = legAngles(style, Backswing);
    const LegAngles& down = legAngles(style, Downswing);
    EXPECT_DOUBLE_EQ(up.arms(1), down.arms(1));
    EXPECT_DOUBLE_EQ(up.club(1, 1), down.club(1, 1));
  }
}

TEST(Schedule, NeverTurnsBackWithinALeg) {
  for (const SwingLeg leg : {Backswing, Downswing, FollowThrough}) {
    const LegAngles& angles = legAngles(SwingStyle::Expected, leg);
    for (double share = 0; share < 1; share += 0.01) {
      EXPECT_GE(std::abs(angles.arms(share + 0.01)), std::abs(angles.arms(share)));
      EXPECT_GT(std::abs(angles.club(share + 0.01, 1)), std::abs(angles.club(share, 1)));
    }
  }
}

TEST(Schedule, KeepsArmsAndClubInLineWithoutCock) {
  const LegAngles& angles = legAngles(SwingStyle::FullExtension, Backswing);
  const LegAngles& expected = legAngles(SwingStyle::Expected, Backswing);
  for (double share = 0; share <= 1; share += 0.05) {
    EXPECT_NEAR(angles.club(share, 1), angles.arms(share), 1e-12);
    EXPECT_NEAR(expected.club(share, 0), expected.arms(share), 1e-12);
  }
}

TEST(Schedule, KeepsTheWristsCockedLongerOnTheWayDown) {
  const LegAngles& up = legAngles(SwingStyle::Expected, Backswing);
  const LegAngles& down = legAngles(SwingStyle::Expected, Downswing);
  const auto cockAt = [](const LegAngles& leg, double arms) {
    double share = 0;
    while (leg.arms(share) < arms) share += 1e-4;
    return leg.club(share, 1) - leg.arms(share);
  };
  for (double arms = 10; arms <= 120; arms += 10)
    EXPECT_GT(cockAt(down, arms * kDegree), cockAt(up, arms * kDegree)) << arms;
}

/// The share of the cock that is left, over the share of the arms' way down, as a free double pendulum has
/// it.
TEST(Schedule, ReleasesTheWristsAsADoublePendulumDoes) {
  const DoublePendulum pendulum = releasePendulum();
  const std::vector<PendulumState> states = swingDown(pendulum, 0);
  const PendulumState& end = states.back();
  const LegAngles& down = legAngles(SwingStyle::Expected, Downswing);
  const double topArms = down.arms(1);
  const double topCock = down.club(1, 1) - topArms;
  for (double way = 0.05; way < 1; way += 0.05) {
    const auto state = std::find_if(states.begin(), states.end(), [&](const PendulumState& each) {
      return pendulum.startArms - each.arms >= way * (pendulum.startArms - end.arms);
    });
    const double left = (state->cock - end.cock) / (pendulum.startCock - end.cock);
    double share = 1;
    while (topArms - down.arms(share) < way * topArms) share -= 1e-4;
    const double scheduled = (down.club(share, 1) - down.arms(share)) / topCock;
    EXPECT_NEAR(scheduled, left, 0.02) << way;
  }
}

TEST(Schedule, LeavesTheBodyAsAtAddressNearImpact) {
  const BodySchedule& body = bodySchedule(SwingStyle::Expected);
  EXPECT_EQ(body.shoulderTurn(0), 0);
  EXPECT_EQ(body.hubShift(0), 0);
  EXPECT_EQ(body.standUp(0), 0);
  EXPECT_EQ(body.armReach(0), 1);
  EXPECT_EQ(body.flattening(0), 0);
  EXPECT_EQ(body.awayFromBall(5 * kDegree), 0);
}

TEST(Schedule, FinishesUprightAndTurnedToTheTarget) {
  const BodySchedule& body = bodySchedule(SwingStyle::Expected);
  const double finish = legAngles(SwingStyle::Expected, FollowThrough).arms(1);
  EXPECT_EQ(body.standUp(finish), 1);
  EXPECT_LT(body.shoulderTurn(finish), -90 * kDegree);
  EXPECT_GT(body.hubShift(finish), 0);
  EXPECT_LT(body.armReach(finish), 0.6);
}

}  // namespace
}  // namespace baywright
