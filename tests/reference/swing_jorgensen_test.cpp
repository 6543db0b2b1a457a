// SPDX-License-Identifier: Apache-2.0
// Jorgensen, The Physics of Golf (1994, 1999), technical appendix, section 4: the downswing as a double
// pendulum, with the numbers of Bourg and Bywalec, Physics for Game Developers, 2nd ed. (2013), chapter 19.
// The book prints plots; the expected values are the converged solution of its equations, computed apart from
// this program.
#include <gtest/gtest.h>

#include "geometry/vec.h"
#include "swing/double_pendulum.h"
#include "swing/schedule.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;

TEST(Jorgensen, ReachesTheBallWhenAndHowTheEquationsSay) {
  const DoublePendulum pendulum;
  const PendulumState ball = swingDown(pendulum, 5 * kDegree).back();
  EXPECT_NEAR(ball.time, 0.2884, 0.002 * 0.2884);
  EXPECT_NEAR(ball.arms / kDegree, -30.84, 0.002 * 30.84);
  EXPECT_NEAR(ball.cock / kDegree, 35.83, 0.002 * 35.83);
  EXPECT_NEAR(ball.headSpeed(pendulum), 40.24, 0.002 * 40.24);
}

TEST(Jorgensen, StartsWithTheParametersOfTheBook) {
  const DoublePendulum pendulum;
  EXPECT_NEAR(pendulum.startArms / kDegree, 135, 1e-9);
  EXPECT_NEAR(pendulum.startCock / kDegree, 120, 1e-9);
  EXPECT_EQ(pendulum.arm, 0.62);
  EXPECT_EQ(pendulum.club, 1.1);
}

TEST(Jorgensen, HasATopOfTheBackswingLikeOurs) {
  const LegAngles& up = legAngles(SwingStyle::Expected, SwingLeg::Backswing);
  EXPECT_NEAR(up.arms(1) / kDegree, 135, 10);
  EXPECT_NEAR((up.club(1, 1) - up.arms(1)) / kDegree, 120, 10);
}

// A released club goes as fast as recreational golfers' do: men 93 mph, women 72 (R&A and USGA, 2023).
TEST(Jorgensen, ReleasesTheClubAtTheSpeedOfARecreationalGolfer) {
  const DoublePendulum pendulum = releasePendulum();
  const double speed = swingDown(pendulum, 0).back().headSpeed(pendulum);
  EXPECT_NEAR(speed, 93 * 0.44704, 0.10 * 93 * 0.44704);
}

}  // namespace
}  // namespace baywright
