// SPDX-License-Identifier: Apache-2.0
#include "flight/shots.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Shots, TakeWhatTheJobAsksFor) {
  Requirements requirements;
  requirements.ballSpeed = 61;
  requirements.meanLaunch = 0.31;
  requirements.dispersionUp = 0.05;
  requirements.dispersionSide = 0.09;
  const Shots shots = shotsFrom(requirements);
  EXPECT_EQ(shots.speed, 61);
  EXPECT_EQ(shots.meanLaunch, 0.31);
  EXPECT_EQ(shots.sigmaLaunch, 0.05);
  EXPECT_EQ(shots.sigmaDirection, 0.09);
}

TEST(Shots, BallRestsOnTheMatAtItsStrikePoint) {
  Placement placement;
  placement.strikeDistance = 3.2;
  placement.strikeRightHanded = 0.25;
  placement.strikeLeftHanded = -0.25;
  Mat mat;
  mat.thickness = 0.04;
  const Vec3 ball = ballAtRest(mat, placement, Hand::Left);
  EXPECT_EQ(ball.x(), -3.2);
  EXPECT_EQ(ball.y(), -0.25);
  EXPECT_DOUBLE_EQ(ball.z(), 0.04 + kBallRadius);
}

TEST(Shots, WithoutScatterAreOneShot) {
  Requirements requirements;
  requirements.dispersionUp = requirements.dispersionSide = 0;
  EXPECT_EQ(shotsFrom(requirements).sigmaLaunch, kLeastDispersion);
  EXPECT_EQ(shotsFrom(requirements).sigmaDirection, kLeastDispersion);
}

}  // namespace
}  // namespace baywright
