// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <functional>
#include <limits>

#include "flight/capture.h"
#include "flight/danger_zone.h"
#include "flight/fan.h"
#include "flight_scene.h"

namespace baywright {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

using Spoil = std::function<void(CaptureInput&)>;

TEST(FlightInput, EveryQuestionRefusesWhatCannotBe) {
  const Spoil spoils[] = {
      [](auto& i) { i.ball.x() = 0.5; },        [](auto& i) { i.ball.x() = kNaN; },
      [](auto& i) { i.ball.z() = -1; },         [](auto& i) { i.shots.speed = 3; },
      [](auto& i) { i.shots.speed = 1e9; },     [](auto& i) { i.shots.spin = -1; },
      [](auto& i) { i.shots.sigmaLaunch = 0; }, [](auto& i) { i.shots.sigmaDirection = kNaN; },
      [](auto& i) { i.shots.meanLaunch = 2; },  [](auto& i) { i.frame.width = 0; },
      [](auto& i) { i.frame.height = -1; },     [](auto& i) { i.screen.width = 0; },
      [](auto& i) { i.screen.height = kNaN; },  [](auto& i) { i.frame.depth = -1; },
  };
  for (const Spoil& spoil : spoils) {
    CaptureInput input = scene::bay();
    spoil(input);
    const auto capture = captureOf(input);
    ASSERT_FALSE(capture);
    EXPECT_FALSE(capture.error().what.empty());
    EXPECT_FALSE(capture.error().next.empty());
    EXPECT_FALSE(arrivalOf(input, 0.2, 0));
    EXPECT_FALSE(captureWindow(input));
    EXPECT_FALSE(heightAtScreen(input, 0.2, 0));
    EXPECT_FALSE(launchSpans(input, {}));
    EXPECT_FALSE(fanOf(input, {0.1, 0.3, -0.1, 0.1}));
    ReboundInput back = scene::reboundBay();
    back.frame = input.frame;
    back.screen = input.screen;
    back.ball = input.ball;
    back.shots = input.shots;
    EXPECT_FALSE(reboundOf(back, 0.2, 0));
    EXPECT_FALSE(reboundSafety(back, 3));
    DangerInput danger;
    danger.rebound = back;
    EXPECT_FALSE(dangerZone(danger));
  }
}

TEST(FlightInput, RefusalNamesTheFigureAndItsRange) {
  CaptureInput input = scene::bay();
  input.shots.speed = 3;
  EXPECT_EQ(captureOf(input).error().sentence(),
            "A ball speed of 3 m/s cannot be computed. Give 15 to 120 m/s.");
}

TEST(FlightInput, DirectionsMustBeDirections) {
  EXPECT_FALSE(arrivalOf(scene::bay(), 2, 0));
  EXPECT_FALSE(arrivalOf(scene::bay(), 0, 4));
  EXPECT_FALSE(arrivalOf(scene::bay(), kNaN, 0));
  EXPECT_FALSE(launchSpans(scene::bay(), {0, 0.5, 0.5}));
  EXPECT_FALSE(reboundSafety(scene::reboundBay(), kNaN));
}

TEST(FlightInput, EdgesOfWhatIsAllowedStillAnswer) {
  CaptureInput input = scene::bay();
  input.ball = {-0.3, 0, 0};
  input.frame.depth = 0;
  input.frame.behindScreen = 0.4;
  EXPECT_TRUE(captureOf(input));
  input.ball = {-12, 15, 2};
  input.shots.sigmaLaunch = 1;
  input.shots.sigmaDirection = 1;
  const auto capture = captureOf(input);
  ASSERT_TRUE(capture);
  EXPECT_NEAR(capture->onScreen(), 0, 0.1);
}

}  // namespace
}  // namespace baywright
