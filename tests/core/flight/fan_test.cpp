// SPDX-License-Identifier: Apache-2.0
#include "flight/fan.h"

#include <gtest/gtest.h>

#include "flight/capture.h"
#include "flight_scene.h"

namespace baywright {
namespace {

using scene::bay;

double signedArea(const std::vector<Vec2>& ring) {
  double area = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) area += 0.5 * cross(ring[i], ring[(i + 1) % ring.size()]);
  return area;
}

TEST(Fan, OpensFromTheBallToTheScreen) {
  const CaptureInput input = bay();
  const auto fan = fanOf(input, rangeOf(input.shots, 2));
  ASSERT_TRUE(fan);
  EXPECT_EQ(fan->plan.front(), flat(input.ball));
  EXPECT_EQ(fan->elevation.front(), Vec2(input.ball.x(), input.ball.z()));
  double farthest = -10;
  double left = 0;
  double right = 0;
  for (const Vec2& p : fan->plan) {
    farthest = std::max(farthest, p.x());
    left = std::min(left, p.y());
    right = std::max(right, p.y());
  }
  EXPECT_NEAR(farthest, 0, 1e-9);
  EXPECT_NEAR(right, 3 * std::tan(0.14), 1e-9);
  EXPECT_NEAR(left, -right, 1e-9);
}

TEST(Fan, GrowsWithItsBundle) {
  const CaptureInput input = bay();
  const auto narrow = fanOf(input, rangeOf(input.shots, 1));
  const auto wide = fanOf(input, rangeOf(input.shots, 3));
  ASSERT_TRUE(narrow && wide);
  EXPECT_GT(std::abs(signedArea(wide->plan)), std::abs(signedArea(narrow->plan)));
  EXPECT_GT(std::abs(signedArea(wide->elevation)), std::abs(signedArea(narrow->elevation)));
}

TEST(Fan, OfTheCaptureWindowEndsAtTheScreensEdges) {
  const CaptureInput input = bay();
  const auto window = captureWindow(input);
  ASSERT_TRUE(window);
  const auto fan = fanOf(input, rangeOf(*window));
  ASSERT_TRUE(fan);
  double right = 0;
  for (const Vec2& p : fan->plan) right = std::max(right, p.y());
  EXPECT_NEAR(right, input.screen.width / 2 - kBallRadius, 1e-6);
}

TEST(Fan, RefusesABundleTurnedInsideOut) {
  EXPECT_FALSE(fanOf(bay(), {0.5, 0.1, -0.1, 0.1}));
  EXPECT_FALSE(fanOf(bay(), {0.1, 0.5, 0.1, -0.1}));
  EXPECT_FALSE(fanOf(bay(), {0.1, 5, -0.1, 0.1}));
}

TEST(Fan, OfAnEmptyWindowIsNoRange) {
  EXPECT_EQ(rangeOf(std::vector<Vec2>{}), ShotRange{});
}

}  // namespace
}  // namespace baywright
