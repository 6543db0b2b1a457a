// SPDX-License-Identifier: Apache-2.0
#include "flight/shot_figures.h"

#include <gtest/gtest.h>

#include "flight_scene.h"

namespace baywright {
namespace {

using namespace scene;

TEST(ShotFigures, AreThoseOfAParabolaInAVacuum) {
  CaptureInput input = bay();
  input.surroundings = vacuum();
  const double g = input.surroundings.gravity;
  const double a = degrees(12);
  const ShotFigures figures = *shotFigures(input, a, 0);
  ASSERT_TRUE(figures.atScreen);
  EXPECT_NEAR(figures.atScreen->time, 3 / (70 * std::cos(a)), 1e-9);
  EXPECT_NEAR(figures.atScreen->height,
              0.05 + 3 * std::tan(a) - g * 9 / (2 * 4900 * std::cos(a) * std::cos(a)), 1e-8);
  EXPECT_NEAR(figures.carry, 4900 * std::sin(2 * a) / g, 1e-4);
  EXPECT_NEAR(figures.apex, 4900 * std::sin(a) * std::sin(a) / (2 * g), 1e-4);
  EXPECT_NEAR(figures.time, 2 * 70 * std::sin(a) / g, 1e-6);
  EXPECT_NEAR(figures.landingSpeed, 70, 1e-5);
  EXPECT_NEAR(figures.landingAngle, a, 1e-6);
}

TEST(ShotFigures, KnowAShotThatFallsShort) {
  CaptureInput input = bay();
  const auto topped = shotFigures(input, degrees(-10), 0);
  ASSERT_TRUE(topped);
  EXPECT_FALSE(topped->atScreen);
  EXPECT_EQ(topped->carry, 0);
}

TEST(ShotFigures, GoFartherInThinnerAirWhereLiftMattersLess) {
  CaptureInput input = bay();
  input.surroundings.aerodynamics = ConstantCoefficients{0.25, 0};
  const double low = shotFigures(input, degrees(12), 0)->carry;
  input.surroundings.air = *standardAir(2000);
  EXPECT_GT(shotFigures(input, degrees(12), 0)->carry, low * 1.02);
}

}  // namespace
}  // namespace baywright
