// SPDX-License-Identifier: Apache-2.0
#include "clearance/shifted_swing.h"

#include <cmath>
#include <random>

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(ShiftedSwing, SearchAgreesWithLookingAtEverythingToTheLastBit) {
  const Job job = garage(7, 6)
                      .withSlopedCeiling(2.5, 3.1, 6)
                      .withBeam({3, 0}, {3.4, 6}, 0.2, 2.6, 3.0)
                      .withColumn({2, 4}, 0.15, 3)
                      .withGolfer(1.85, Hand::Left)
                      .withClub()
                      .job();
  const Swing swing = *swingOf(job.golfers[0], job.golfers[0].clubs[0]);
  const PlacedSwing at = placed(swing.expected, worldFromBay(BayPose{{0, 0}, 0.4}));
  ShiftedSwing fast(at, roomObstacles(job));
  ShiftedSwing slow(at, roomObstacles(job));
  std::mt19937 random(2);
  std::uniform_real_distribution<double> x(-0.5, 7.5);
  std::uniform_real_distribution<double> y(-0.5, 6.5);
  for (int i = 0; i < 150; ++i) {
    const Vec2 ball(x(random), y(random));
    EXPECT_EQ(fast.distanceAt(ball), slow.distanceAt(ball, Search::Everything)) << ball.transpose();
  }
}

TEST(ShiftedSwing, IsFarFromNothing) {
  const Job job = roomyHall().job();
  const Swing swing = *swingOf(job.golfers[0], job.golfers[0].clubs[0]);
  EXPECT_TRUE(std::isinf(ShiftedSwing(placed(swing.expected, {}), {}).distanceAt({0, 0})));
}

}  // namespace
}  // namespace baywright
