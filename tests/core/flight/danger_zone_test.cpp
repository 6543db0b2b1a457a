// SPDX-License-Identifier: Apache-2.0
#include "flight/danger_zone.h"

#include <gtest/gtest.h>

#include "flight_scene.h"

namespace baywright {
namespace {

DangerInput bay() {
  DangerInput input;
  input.rebound = scene::reboundBay();
  return input;
}

/// The place that far from the ball in that direction, degrees to the right.
Vec2 fromBall(const DangerInput& input, double distance, double direction) {
  const double angle = scene::degrees(direction);
  return flat(input.rebound.ball) + distance * Vec2(std::cos(angle), std::sin(angle));
}

bool isDirect(const DangerInput& input, const Vec2& place) {
  return locate(dangerZone(input)->direct, place) == Location::Inside;
}

TEST(DangerZone, CoversTheWayToTheScreenAndWhatItTravels) {
  const DangerInput input = bay();
  EXPECT_TRUE(isDirect(input, {-1.5, 0}));
  EXPECT_TRUE(isDirect(input, {-2.9, 1.5}));
  EXPECT_TRUE(isDirect(input, {input.rebound.screen.travel - 0.01, 0}));
  EXPECT_FALSE(isDirect(input, {input.rebound.screen.travel + 0.01, 0}));
  EXPECT_FALSE(isDirect(input, {-3.1, 0}));
}

TEST(DangerZone, OpensToTheShankSideOfTheHand) {
  DangerInput input = bay();
  EXPECT_TRUE(isDirect(input, fromBall(input, 4, 70)));
  EXPECT_FALSE(isDirect(input, fromBall(input, 4, 80)));
  EXPECT_FALSE(isDirect(input, fromBall(input, 4, -70)));
  input.hand = Hand::Left;
  EXPECT_TRUE(isDirect(input, fromBall(input, 4, -70)));
  EXPECT_FALSE(isDirect(input, fromBall(input, 4, 70)));
}

TEST(DangerZone, EndsAtItsRadius) {
  const DangerInput input = bay();
  EXPECT_TRUE(isDirect(input, fromBall(input, 5.99, 60)));
  EXPECT_FALSE(isDirect(input, fromBall(input, 6.05, 60)));
}

TEST(DangerZone, IsMirroredForTheOtherHand) {
  DangerInput right = bay();
  right.rebound.ball.y() = 0.3;
  DangerInput left = right;
  left.rebound.ball.y() = -0.3;
  left.hand = Hand::Left;
  const auto a = dangerZone(right);
  const auto b = dangerZone(left);
  ASSERT_TRUE(a && b);
  EXPECT_NEAR(signedArea(a->direct), signedArea(b->direct), 1e-5);
  EXPECT_NEAR(signedArea(a->returning), signedArea(b->returning), 1e-9);
  for (const Vec2& p : a->returning)
    EXPECT_LT(closestOnBoundary({b->returning, {}}, Vec2(p.x(), -p.y())).distance, 1e-9);
}

TEST(DangerZone, ShutsTheSidesOfABallThatStandsInsideTheFrame) {
  DangerInput input = bay();
  input.rebound.ball.x() = -1.0;
  EXPECT_FALSE(isDirect(input, fromBall(input, 4, 70)));
}

TEST(DangerZone, ReturningReachesFromTheScreenToWhereBallsAreSlow) {
  DangerInput input = bay();
  input.returningSpeed = 1;
  const auto zone = dangerZone(input);
  ASSERT_TRUE(zone);
  EXPECT_GT(signedArea(zone->returning), 0);
  const auto straight = reboundOf(input.rebound, input.rebound.shots.meanLaunch, 0);
  ASSERT_TRUE(straight);
  double nearest = 0;
  for (const Vec2& p : zone->returning) nearest = std::min(nearest, p.x());
  EXPECT_LT(nearest, straight->landing.x());
  EXPECT_GT(nearest, straight->rest.x() - 2);
}

TEST(DangerZone, ReturningShrinksWithTheSpeedThatIsHarmless) {
  DangerInput input = bay();
  double last = 1e9;
  for (const double speed : {0.5, 1.0, 2.0, 3.0}) {
    input.returningSpeed = speed;
    const double area = signedArea(dangerZone(input)->returning);
    EXPECT_LE(area, last);
    last = area;
  }
  input.returningSpeed = 30;
  EXPECT_TRUE(dangerZone(input)->returning.empty());
}

TEST(DangerZone, RefusesImpossibleFigures) {
  DangerInput input = bay();
  input.sectorRadius = 0;
  EXPECT_FALSE(dangerZone(input));
  input = bay();
  input.rebound.screen.restitution = 1.5;
  EXPECT_FALSE(dangerZone(input));
}

}  // namespace
}  // namespace baywright
