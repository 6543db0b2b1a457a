// SPDX-License-Identifier: Apache-2.0
#include "flight/capture.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>

#include "flight/detail/normal.h"
#include "flight_scene.h"

namespace baywright {
namespace {

using scene::bay;
using scene::box;
using scene::degrees;

double onScreen(const CaptureInput& input) {
  return captureOf(input)->onScreen();
}

/// Wide shots, so that every part of the bay gets some.
CaptureInput wildBay() {
  CaptureInput input = bay();
  input.shots.meanLaunch = 0.45;
  input.shots.sigmaLaunch = 0.20;
  input.shots.sigmaDirection = 0.25;
  return input;
}

TEST(Capture, SharesAddUpToOne) {
  for (const CaptureInput& input : {bay(), wildBay()}) {
    const auto capture = captureOf(input);
    ASSERT_TRUE(capture);
    EXPECT_NEAR(std::accumulate(capture->share.begin(), capture->share.end(), 0.0), 1, 1e-12);
  }
}

/// Shares of random shots, by outcome.
std::array<double, kMeetsCount> monteCarlo(const CaptureInput& input, int count) {
  std::mt19937_64 random(20);
  std::normal_distribution<double> normal;
  std::array<double, kMeetsCount> share{};
  for (int i = 0; i < count; ++i) {
    const double launch = input.shots.meanLaunch + input.shots.sigmaLaunch * normal(random);
    const double direction = input.shots.meanDirection + input.shots.sigmaDirection * normal(random);
    share[static_cast<std::size_t>(arrivalOf(input, launch, direction)->meets)] += 1.0 / count;
  }
  return share;
}

void expectMonteCarlo(const CaptureInput& input, double bound) {
  constexpr int kCount = 60000;
  const auto capture = captureOf(input);
  ASSERT_TRUE(capture);
  const auto expected = monteCarlo(input, kCount);
  for (std::size_t i = 0; i < kMeetsCount; ++i) {
    const double p = expected[i];
    const double sampling = 4 * std::sqrt(p * (1 - p) / kCount) + 2.0 / kCount;
    EXPECT_NEAR(capture->share[i], p, sampling + bound) << "outcome " << i;
  }
}

TEST(Capture, AgreesWithMonteCarlo) {
  expectMonteCarlo(wildBay(), kShareError);
  CaptureInput offset = wildBay();
  offset.ball = {-2.2, 0.7, 0.05};
  offset.shots.meanDirection = -0.1;
  expectMonteCarlo(offset, kShareError);
}

TEST(Capture, AgreesWithMonteCarloBehindObstacles) {
  CaptureInput input = wildBay();
  const std::vector<Obstacle> room = {box(1, {-1.6, -0.4, 1.1}, {-1.2, -0.1, 2.4}),
                                      box(2, {-2.5, 0.3, 0}, {-2.3, 0.6, 1.4}),
                                      box(3, {-5, -4, 2.7}, {1, 4, 2.8}),
                                      {Id{4}, Cylinder{{-1.2, 0.5, 0}, {-1.2, 0.5, 2.4}, 0.08}}};
  input.obstacles = room;
  expectMonteCarlo(input, kObstacleShareError);
}

TEST(Capture, IsTheNormalShareBetweenTheScreensEdgesWhereOnlyTheyDecide) {
  // Far tighter side to side than the screen is wide: only the launch angle matters, in one plane.
  CaptureInput input = bay();
  input.shots.sigmaDirection = 1e-3;
  input.shots.sigmaLaunch = 0.2;
  const auto window = captureWindow(input);
  ASSERT_TRUE(window);
  // The window's corners nearest to straight ahead: halfway along its lower and its upper side.
  const std::size_t half = window->size() / 4;
  const double low = (*window)[half].y();
  const double high = (*window)[window->size() - 1 - half].y();
  const auto below = [&](double angle) {
    return detail::normalBelow((angle - input.shots.meanLaunch) / input.shots.sigmaLaunch);
  };
  EXPECT_NEAR(onScreen(input), below(high) - below(low), kShareError);
}

TEST(Capture, CatchesMoreWithALargerScreen) {
  CaptureInput input = wildBay();
  input.frame.width = 6;
  input.frame.height = 4;
  double last = 0;
  for (double width = 1; width <= 5.5; width += 0.5) {
    input.screen.width = width;
    input.screen.height = 0.6 * width;
    const double share = onScreen(input);
    EXPECT_GT(share, last);
    last = share;
  }
}

TEST(Capture, CatchesLessFromFartherAway) {
  CaptureInput input = wildBay();
  double last = 1;
  for (double distance = 2.0; distance <= 6; distance += 0.5) {
    input.ball.x() = -distance;
    const double share = onScreen(input);
    EXPECT_LT(share, last);
    last = share;
  }
}

TEST(Capture, CatchesLessOfWilderShots) {
  CaptureInput input = bay();
  double last = 1 + kShareError;
  for (double sigma = 0.02; sigma <= 0.4; sigma += 0.04) {
    input.shots.sigmaLaunch = input.shots.sigmaDirection = sigma;
    const double share = onScreen(input);
    EXPECT_LE(share, last);
    last = share;
  }
  EXPECT_LT(last, 0.8);
}

TEST(Capture, IsMirroredWithTheBay) {
  CaptureInput right = wildBay();
  right.ball.y() = 0.5;
  right.shots.meanDirection = 0.08;
  CaptureInput left = right;
  left.ball.y() = -0.5;
  left.shots.meanDirection = -0.08;
  const auto a = captureOf(right);
  const auto b = captureOf(left);
  ASSERT_TRUE(a && b);
  for (std::size_t i = 0; i < kMeetsCount; ++i) EXPECT_NEAR(a->share[i], b->share[i], 1e-9);
}

TEST(Capture, NamesWhatIsHitAndByWhichShot) {
  CaptureInput input = wildBay();
  const std::vector<Obstacle> room = {box(7, {-1.0, -0.1, 1.8}, {-0.6, 0.1, 2.4}),
                                      box(8, {-0.9, 1.0, 1.0}, {-0.7, 1.2, 2.0})};
  input.obstacles = room;
  const auto capture = captureOf(input);
  ASSERT_TRUE(capture);
  ASSERT_EQ(capture->hits.size(), 2u);
  EXPECT_EQ(capture->hits[0].id, Id{7});
  EXPECT_GT(capture->hits[0].share, capture->hits[1].share);
  double sum = 0;
  for (const ObstacleHit& hit : capture->hits) {
    sum += hit.share;
    const auto again = arrivalOf(input, hit.launchAngle, hit.direction);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->obstacle, hit.id);
    EXPECT_EQ(again->position, hit.arrival.position);
  }
  EXPECT_NEAR(sum, capture->of(Meets::Obstacle), 1e-12);
}

TEST(Capture, DoesNotMissAThinThingInFrontOfTheScreen) {
  // 30 mm wide and less than a standard deviation across, well off the mean.
  CaptureInput input = bay();
  const std::vector<Obstacle> pole = {box(5, {-1.0, 0.30, 0}, {-0.97, 0.33, 2.4})};
  input.obstacles = pole;
  const auto capture = captureOf(input);
  ASSERT_TRUE(capture);
  const double left = std::atan2(0.30 - kBallRadius, 2.0);
  const double right = std::atan2(0.33 + kBallRadius, 2.0);
  const auto below = [&](double angle) { return detail::normalBelow(angle / input.shots.sigmaDirection); };
  EXPECT_NEAR(capture->of(Meets::Obstacle), below(right) - below(left), 0.005);
}

TEST(Capture, GivesTheSameBitsEachTime) {
  EXPECT_EQ(captureOf(wildBay())->share, captureOf(wildBay())->share);
}

TEST(CaptureWindow, BoundaryShotsTouchTheScreensEdge) {
  const CaptureInput input = bay();
  const auto window = captureWindow(input);
  ASSERT_TRUE(window);
  const double radius = kBallRadius;
  const double low = input.screen.bottom + radius;
  const double high = input.screen.bottom + input.screen.height - radius;
  const double half = input.screen.width / 2 - radius;
  for (const Vec2& shot : *window) {
    const double z = heightAtScreen(input, shot.y(), shot.x()).value();
    const double r = input.ball.y() - input.ball.x() * std::tan(shot.x());
    EXPECT_GT(z, low - 1e-6);
    EXPECT_LT(z, high + 1e-6);
    EXPECT_LT(std::abs(r), half + 1e-9);
    const double nearest = std::min({std::abs(z - low), std::abs(z - high), half - std::abs(r)});
    EXPECT_LT(std::abs(nearest), 1e-6);
  }
}

TEST(CaptureWindow, IsOneLoopWithDirectionToTheRight) {
  const auto window = captureWindow(bay());
  ASSERT_TRUE(window);
  double area = 0;
  for (std::size_t i = 0; i < window->size(); ++i)
    area += 0.5 * cross((*window)[i], (*window)[(i + 1) % window->size()]);
  // About 53 degrees by 36.
  EXPECT_GT(area, 0.5);
  EXPECT_LT(area, 0.65);
}

TEST(CaptureWindow, SaysWhenTheBallIsTooSlow) {
  CaptureInput input = bay();
  input.ball.x() = -11;
  input.shots.speed = 15;
  input.screen.height = 10;
  EXPECT_FALSE(captureWindow(input));
}

}  // namespace
}  // namespace baywright
