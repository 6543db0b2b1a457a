// SPDX-License-Identifier: Apache-2.0
#include "flight/rebound.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "flight_scene.h"

namespace baywright {
namespace {

using scene::reboundBay;

TEST(Rebound, GivesBackTheScreensShareOfTheSpeed) {
  ReboundInput input = reboundBay();
  input.screen.restitution = 0.2;
  const auto rebound = reboundOf(input, 0.2, 0.1);
  ASSERT_TRUE(rebound);
  EXPECT_NEAR(rebound->velocityOut.x(), -0.2 * rebound->velocityIn.x(), 1e-12);
  EXPECT_NEAR(rebound->velocityOut.z(), 0.2 * rebound->velocityIn.z(), 1e-12);
  input.alongFabric = 0.5;
  const auto slippery = reboundOf(input, 0.2, 0.1);
  ASSERT_TRUE(slippery);
  EXPECT_NEAR(slippery->velocityOut.y(), 0.5 * slippery->velocityIn.y(), 1e-12);
}

TEST(Rebound, EnergyAtTheScreenIsThatOfTheFlightThere) {
  const auto rebound = reboundOf(reboundBay(), 0.1, 0);
  ASSERT_TRUE(rebound);
  const double speed = rebound->velocityIn.norm();
  EXPECT_DOUBLE_EQ(rebound->energyIn, 0.5 * kBallMass * speed * speed);
  EXPECT_LT(rebound->energyIn, kineticEnergy({}, 70));
  EXPECT_GT(rebound->energyIn, 0.94 * kineticEnergy({}, 70));
}

TEST(Rebound, PathGoesFromTheScreenToRestOnTheFloorWithoutEnteringAnything) {
  const ReboundInput input = reboundBay();
  for (const double launch : {0.02, 0.15, 0.3, 0.45, 0.6}) {
    const auto rebound = reboundOf(input, launch, 0.2);
    ASSERT_TRUE(rebound) << launch;
    EXPECT_EQ(rebound->path.front(), rebound->atScreen);
    EXPECT_EQ(rebound->path.back(), rebound->rest);
    EXPECT_NEAR(rebound->rest.z(), kBallRadius, 1e-9);
    for (const Vec3& p : rebound->path) {
      EXPECT_LE(p.x(), 1e-9);
      EXPECT_GE(p.z(), kBallRadius - 1e-9);
      if (p.x() < -1.4) continue;
      EXPECT_LE(p.z(), input.frame.height - kBallRadius + 1e-9);
    }
  }
}

TEST(Rebound, LandsWhereABallisticFallDoes) {
  const ReboundInput input = reboundBay();
  const auto rebound = reboundOf(input, 0.1, 0);
  ASSERT_TRUE(rebound);
  const double g = 9.80665;
  const double up = rebound->velocityOut.z();
  const double fall = rebound->atScreen.z() - kBallRadius;
  const double time = (up + std::sqrt(up * up + 2 * g * fall)) / g;
  EXPECT_NEAR(rebound->landing.x(), rebound->velocityOut.x() * time, 1e-9);
  EXPECT_NEAR(rebound->landing.z(), kBallRadius, 1e-9);
}

TEST(Rebound, RollsToRestAsFarAsItsSpeedCarriesIt) {
  // A ball that barely falls, on a floor without friction or bounce until it rolls: v^2 / (2 * 5/7 rolling
  // g).
  ReboundInput input = reboundBay();
  input.alongFabric = 0;
  input.floor.restitution = 0;
  input.floor.friction = 0;
  const auto rebound = reboundOf(input, 0.05, 0);
  ASSERT_TRUE(rebound);
  const double rolls = 5.0 / 7.0 * -rebound->velocityOut.x();
  const double expected = rolls * rolls / (2 * 5.0 / 7.0 * 0.131 * 9.80665);
  EXPECT_NEAR(rebound->landing.x() - rebound->rest.x(), expected, 1e-9);
}

TEST(Rebound, IsMirroredWithTheShot) {
  const auto right = reboundOf(reboundBay(), 0.25, 0.3);
  const auto left = reboundOf(reboundBay(), 0.25, -0.3);
  ASSERT_TRUE(right && left);
  EXPECT_NEAR(right->rest.x(), left->rest.x(), 1e-9);
  EXPECT_NEAR(right->rest.y(), -left->rest.y(), 1e-9);
  EXPECT_EQ(right->speedAtStrike, left->speedAtStrike);
}

TEST(Rebound, ComesFartherFromALivelierScreen) {
  ReboundInput input = reboundBay();
  double last = 0;
  for (double restitution = 0.01; restitution <= 0.1; restitution += 0.01) {
    input.screen.restitution = restitution;
    const auto rebound = reboundOf(input, 0.05, 0);
    ASSERT_TRUE(rebound);
    EXPECT_GT(rebound->reach, last);
    last = rebound->reach;
  }
}

TEST(Rebound, PassesTheStrikePointSlowerThanItLeftTheScreen) {
  // A level ball gains at most what its fall from the screen gives it.
  ReboundInput input = reboundBay();
  for (double restitution = 0.05; restitution <= 0.4; restitution += 0.05) {
    input.screen.restitution = restitution;
    const auto rebound = reboundOf(input, 0.05, 0);
    ASSERT_TRUE(rebound);
    const double out = rebound->velocityOut.norm();
    const double fall = 2 * 9.80665 * rebound->atScreen.z();
    EXPECT_LE(rebound->speedAtStrike, std::sqrt(out * out + fall));
    EXPECT_GT(rebound->speedAtStrike, 0);
  }
}

TEST(Rebound, OfADeadScreenDropsAtItsFoot) {
  ReboundInput input = reboundBay();
  input.screen.restitution = 0;
  const auto rebound = reboundOf(input, 0.2, 0);
  ASSERT_TRUE(rebound);
  EXPECT_LT(rebound->reach, 1e-9);
  EXPECT_EQ(rebound->speedAtStrike, 0);
}

TEST(Rebound, SaysWhatStopsAShotBeforeTheScreen) {
  const auto high = reboundOf(reboundBay(), 0.8, 0);
  ASSERT_FALSE(high);
  EXPECT_EQ(high.error().what, "This shot does not get to the screen: it meets the roof fabric first.");
}

TEST(ReboundSafety, WorstShotIsAtLeastAsBadAsTheMeanOne) {
  const ReboundInput input = reboundBay();
  const auto safety = reboundSafety(input, 3);
  const auto mean = reboundOf(input, input.shots.meanLaunch, 0);
  ASSERT_TRUE(safety && mean);
  EXPECT_GE(safety->worst.speedAtStrike, mean->speedAtStrike);
}

TEST(ReboundSafety, SmallestDistanceKeepsTheLimitAndALittleLessDoesNot) {
  ReboundInput input = reboundBay();
  for (const double limit : {1.0, 2.0, 2.3}) {
    const auto safety = reboundSafety(input, limit);
    ASSERT_TRUE(safety && safety->smallestDistance);
    ASSERT_GT(*safety->smallestDistance, kReboundNearest);
    const auto speedAt = [&](double distance) {
      ReboundInput moved = input;
      moved.ball.x() = -distance;
      return reboundSafety(moved, limit)->worst.speedAtStrike;
    };
    EXPECT_LE(speedAt(*safety->smallestDistance), limit);
    EXPECT_GT(speedAt(*safety->smallestDistance - 1e-3), limit);
    for (double distance = kReboundFarthest; distance > *safety->smallestDistance; distance -= kReboundStep)
      EXPECT_LE(speedAt(distance), limit);
  }
}

TEST(ReboundSafety, AsksForMoreDistanceWhenLessSpeedIsAllowed) {
  double last = 0;
  for (double limit = 3.5; limit >= 0.5; limit -= 0.5) {
    const auto safety = reboundSafety(reboundBay(), limit);
    ASSERT_TRUE(safety && safety->smallestDistance);
    EXPECT_GE(*safety->smallestDistance, last);
    last = *safety->smallestDistance;
  }
}

TEST(ReboundSafety, FindsNoDistanceForAWallOfRubber) {
  ReboundInput input = reboundBay();
  input.screen.restitution = 0.5;
  const auto safety = reboundSafety(input, 3);
  ASSERT_TRUE(safety);
  EXPECT_FALSE(safety->smallestDistance);
}

TEST(ReboundSafety, SaysWhenNoShotGetsThere) {
  ReboundInput input = reboundBay();
  input.shots.meanLaunch = 1.2;
  const auto safety = reboundSafety(input, 3);
  ASSERT_FALSE(safety);
  EXPECT_EQ(safety.error().what, "No shot of the stated launch angles gets to the screen.");
}

TEST(Turf, TakesMoreFromFasterBallsUpToTwentyMetresASecond) {
  double last = 1;
  for (double speed = 0; speed <= 20; speed += 1) {
    EXPECT_LT(turfRestitution(speed), last);
    last = turfRestitution(speed);
  }
  EXPECT_EQ(turfRestitution(60), turfRestitution(21));
  EXPECT_EQ(restitutionOf({0.8, 0.4, 0.1}, 12), 0.8);
}

}  // namespace
}  // namespace baywright
