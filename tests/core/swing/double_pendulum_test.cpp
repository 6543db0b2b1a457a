// SPDX-License-Identifier: Apache-2.0
#include "swing/double_pendulum.h"

#include <gtest/gtest.h>

#include <cmath>

#include "geometry/vec.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;

double energy(const DoublePendulum& p, const PendulumState& s) {
  const double first = p.clubMass * p.club * p.clubBalance;
  const double clubRate = s.armRate + s.cockRate;
  const double kinetic = 0.5 * (p.armMoment + p.clubMass * p.arm * p.arm) * s.armRate * s.armRate +
                         0.5 * p.clubMomentAtWrist * clubRate * clubRate +
                         p.arm * first * std::cos(s.cock) * s.armRate * clubRate;
  const double armFirst = p.armMass * p.arm * p.armBalance + p.clubMass * p.arm;
  return kinetic - p.gravity * (armFirst * std::cos(s.arms) + first * std::cos(s.arms + s.cock));
}

TEST(DoublePendulum, KeepsItsEnergyWhenNothingDrivesIt) {
  DoublePendulum p = releasePendulum();
  p.shoulderTorque = 0;
  p.hubAcceleration = 0;
  p.stopsAtStartCock = false;
  const std::vector<PendulumState> states = swingDown(p, -0.5);
  ASSERT_GT(states.size(), 1000U);
  for (const PendulumState& state : states) EXPECT_NEAR(energy(p, state), energy(p, states.front()), 1e-6);
}

TEST(DoublePendulum, GainsTheWorkOfTheShoulders) {
  DoublePendulum p = releasePendulum();
  p.hubAcceleration = 0;
  const std::vector<PendulumState> states = swingDown(p, 0);
  const double work = p.shoulderTorque * (states.front().arms - states.back().arms);
  EXPECT_NEAR(energy(p, states.back()) - energy(p, states.front()), work, 0.01);
}

TEST(DoublePendulum, StopsWhereItWasAskedTo) {
  const std::vector<PendulumState> states = swingDown(DoublePendulum{}, 5 * kDegree);
  EXPECT_NEAR(states.back().arms + states.back().cock, 5 * kDegree, 1e-6);
}

TEST(DoublePendulum, NeverCocksPastItsStop) {
  const DoublePendulum p = releasePendulum();
  for (const PendulumState& state : swingDown(p, 0)) EXPECT_LE(state.cock, p.startCock + 1e-9);
}

TEST(DoublePendulum, EndsAfterASecondWhenNothingMovesIt) {
  DoublePendulum p;
  p.shoulderTorque = 0;
  p.gravity = 0;
  p.hubAcceleration = 0;
  p.wristTorque = 0;
  EXPECT_NEAR(swingDown(p, 0).back().time, 1, 1e-3);
}

TEST(DoublePendulum, TellsTheHeadSpeedOfAStiffClub) {
  const DoublePendulum p;
  PendulumState state;
  state.armRate = -10;
  EXPECT_NEAR(state.headSpeed(p), 10 * (p.arm + p.club), 1e-9);
}

}  // namespace
}  // namespace baywright
