// SPDX-License-Identifier: Apache-2.0
#include "flight/detail/bounce.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>

namespace baywright::detail {
namespace {

constexpr double kGrips = std::numeric_limits<double>::infinity();

/// Velocity of the skin where it touches.
Vec3 slip(const BallState& state, const Vec3& normal, const Ball& ball) {
  const Vec3 skin = state.velocity - ball.radius * state.spin.cross(normal);
  return skin - skin.dot(normal) * normal;
}

TEST(Bounce, LosesEnergyWhateverItMeets) {
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> side(-1, 1);
  const Ball ball;
  const auto vector = [&](double size) -> Vec3 {
    return size * Vec3(side(random), side(random), side(random));
  };
  for (int i = 0; i < 2000; ++i) {
    const BallState state{Vec3::Zero(), vector(70), vector(800)};
    const Surface surface{vector(1).normalized(), 0.5 + 0.5 * side(random), 1 + side(random)};
    EXPECT_LE(energyOf(bounced(state, surface, ball), ball), energyOf(state, ball) * (1 + 1e-12));
  }
}

TEST(Bounce, LeavesRollingWhenItGrips) {
  const Ball ball;
  const BallState state{Vec3::Zero(), {8, 3, -4}, {0, -250, 30}};
  const BallState after = bounced(state, {Vec3::UnitZ(), 0.3, kGrips}, ball);
  EXPECT_LT(slip(after, Vec3::UnitZ(), ball).norm(), 1e-12);
  EXPECT_DOUBLE_EQ(after.velocity.z(), 1.2);
}

TEST(Bounce, KeepsFiveSeventhsOfItsSpeedAlongASurfaceThatItGripsWithoutSpin) {
  const BallState after = bounced({Vec3::Zero(), {7, 0, -1}, Vec3::Zero()}, {Vec3::UnitZ(), 0, kGrips}, {});
  EXPECT_NEAR(after.velocity.x(), 5, 1e-12);
}

TEST(Bounce, SlidesWhenFrictionIsBelowTheCriticalOne) {
  const Ball ball;
  const BallState state{Vec3::Zero(), {10, 0, -2}, {0, -100, 0}};
  const double rim = ball.radius * 100;
  const double critical = 2 * (10 + rim) / (7 * (1 + 0.4) * 2);
  const BallState slides = bounced(state, {Vec3::UnitZ(), 0.4, 0.9 * critical}, ball);
  EXPECT_GT(slip(slides, Vec3::UnitZ(), ball).x(), 0.1);
  EXPECT_NEAR(slides.velocity.x(), 10 - 0.9 * critical * 1.4 * 2, 1e-12);
  const BallState grips = bounced(state, {Vec3::UnitZ(), 0.4, 1.01 * critical}, ball);
  EXPECT_LT(slip(grips, Vec3::UnitZ(), ball).norm(), 1e-12);
}

TEST(Bounce, BackspinHoldsTheBallBack) {
  const Surface floor{Vec3::UnitZ(), 0.4, 0.4};
  const Vec3 velocity(5, 0, -5);
  const double without = bounced({Vec3::Zero(), velocity, Vec3::Zero()}, floor, {}).velocity.x();
  const double with = bounced({Vec3::Zero(), velocity, {0, -400, 0}}, floor, {}).velocity.x();
  EXPECT_LT(with, without);
}

TEST(Bounce, LeavesABallAloneThatMovesAway) {
  const BallState state{Vec3::Zero(), {1, 2, 3}, {4, 5, 6}};
  EXPECT_EQ(bounced(state, {Vec3::UnitZ(), 0.5, 0.4}, {}).velocity, state.velocity);
}

}  // namespace
}  // namespace baywright::detail
