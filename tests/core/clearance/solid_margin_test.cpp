// SPDX-License-Identifier: Apache-2.0
#include "clearance/solid_margin.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "clearance/worst_margin.h"

namespace baywright {
namespace {

RoomObstacle boxAt(const Vec2& centre, double heading, double size, double sigma) {
  RoomObstacle like;
  like.uncertainty.surface = sigma;
  return withSolid(like, *boxFrom(UprightBox{centre, heading, {size, size}, 0, 2}));
}

PutBody frameAt(const Vec2& centre, double heading) {
  PutBody put{*boxFrom(UprightBox{centre, heading, {1.5, 3}, 0, 2.5})};
  put.required = 0.05;
  put.ownSigma = 0.005;
  put.placeSigma = 0.005;
  put.headingSigma = 0.002;
  put.pivot = centre;
  return put;
}

TEST(SolidMargin, IsTheGapLessWhatIsRequired) {
  const std::vector<RoomObstacle> obstacles = {boxAt({3, 0}, 0, 1, 0.01)};
  const std::size_t which = 0;
  const auto found = tightest(frameAt({0, 0}, 0), obstacles, {&which, 1});
  ASSERT_TRUE(found);
  EXPECT_NEAR(found->margin.value, 3 - 0.75 - 0.5 - 0.05, 1e-12);
  EXPECT_NEAR(found->closest.onFirst.x(), 0.75, 1e-12);
}

TEST(SolidMargin, AddsUpIndependentParts) {
  const std::vector<RoomObstacle> obstacles = {boxAt({3, 0}, 0, 1, 0.01)};
  const PutBody put = frameAt({0, 0}, 0);
  Closest closest;
  closest.escape = -Vec3::UnitX();
  closest.onFirst = {0.75, 1.2, 1};
  closest.onSecond = {2.5, 1.2, 1};
  const double turn = 0.002 * 1.2;
  EXPECT_NEAR(solidMarginSigma(put, obstacles[0], closest), std::sqrt(1e-4 + 2 * 25e-6 + turn * turn), 1e-9);
}

TEST(SolidMargin, PassesOverNothingThatCouldBeWorse) {
  std::mt19937 random(9);
  std::uniform_real_distribution<double> place(-4, 4);
  std::uniform_real_distribution<double> sigma(0.001, 0.2);
  for (int round = 0; round < 60; ++round) {
    std::vector<RoomObstacle> obstacles;
    std::vector<std::size_t> which;
    for (std::size_t i = 0; i < 12; ++i) {
      obstacles.push_back(boxAt({place(random), place(random)}, place(random), 0.4, sigma(random)));
      which.push_back(i);
    }
    const PutBody put = frameAt({place(random) / 4, place(random) / 4}, place(random));
    const auto found = tightest(put, obstacles, which);
    std::optional<Uncertain> worst;
    for (std::size_t i = 0; i < obstacles.size(); ++i) {
      const auto one = tightest(put, obstacles, {&i, 1});
      if (!worst || isWorse(one->margin, *worst)) worst = one->margin;
    }
    EXPECT_EQ(found->margin, *worst);
  }
}

}  // namespace
}  // namespace baywright
