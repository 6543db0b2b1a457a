// SPDX-License-Identifier: Apache-2.0
#include "swing/double_pendulum.h"

#include <array>
#include <cmath>
#include <numbers>

namespace baywright {
namespace {

constexpr double kStep = 1e-4;
constexpr double kLongest = 1.0;

enum class Wrists { Free, AtStop };

/// Rates of change of a state. Wrists at their stop stay there while the club presses against it.
PendulumState rates(const DoublePendulum& p, const PendulumState& s, Wrists wrists) {
  const double first = p.clubMass * p.club * p.clubBalance;  // first moment of the club about the wrists
  const double armFirst = p.armMass * p.arm * p.armBalance;
  const double coupling = p.arm * first;
  const double i = p.clubMomentAtWrist;
  const double clubAngle = s.arms + s.cock;
  // Jorgensen counts the arms' angle from the start of the downswing.
  const double a1 = -s.armRate;
  const double b1 = s.cockRate;

  const double a = p.armMoment + i + p.clubMass * p.arm * p.arm + 2 * coupling * std::cos(s.cock);
  const double b = -(i + coupling * std::cos(s.cock));
  const double clubWeight =
      first * (p.gravity * std::sin(clubAngle) - p.hubAcceleration * std::cos(clubAngle));
  const double armWeight =
      (armFirst + p.clubMass * p.arm) * (p.gravity * std::sin(s.arms) - p.hubAcceleration * std::cos(s.arms));
  const double f =
      p.shoulderTorque - (b1 * b1 - 2 * a1 * b1) * coupling * std::sin(s.cock) + clubWeight + armWeight;
  const double g =
      (s.time < p.wristTorqueTime ? p.wristTorque : 0) - a1 * a1 * coupling * std::sin(s.cock) - clubWeight;

  double a2 = (f - b * g / i) / (a - b * b / i);
  double b2 = (g - b * a2) / i;
  if (wrists == Wrists::AtStop && g - b * (f / a) > 0) {
    a2 = f / a;
    b2 = 0;
  }
  return {1, s.armRate, s.cockRate, -a2, b2};
}

PendulumState moved(const PendulumState& s, const PendulumState& rate, double by) {
  return {s.time + by * rate.time, s.arms + by * rate.arms, s.cock + by * rate.cock,
          s.armRate + by * rate.armRate, s.cockRate + by * rate.cockRate};
}

PendulumState stepped(const DoublePendulum& p, const PendulumState& s, double h) {
  const Wrists wrists = p.stopsAtStartCock && s.cock >= p.startCock ? Wrists::AtStop : Wrists::Free;
  const PendulumState k1 = rates(p, s, wrists);
  const PendulumState k2 = rates(p, moved(s, k1, h / 2), wrists);
  const PendulumState k3 = rates(p, moved(s, k2, h / 2), wrists);
  const PendulumState k4 = rates(p, moved(s, k3, h), wrists);
  PendulumState next = s;
  for (const auto& [rate, weight] : {std::pair{k1, 1.0}, {k2, 2.0}, {k3, 2.0}, {k4, 1.0}})
    next = moved(next, rate, h * weight / 6);
  return next;
}

}  // namespace

double PendulumState::headSpeed(const DoublePendulum& p) const {
  const double x = p.arm * p.club * std::cos(cock);
  const double a1 = -armRate;
  return std::sqrt((p.arm * p.arm + p.club * p.club + 2 * x) * a1 * a1 +
                   p.club * p.club * cockRate * cockRate - 2 * (p.club * p.club + x) * a1 * cockRate);
}

std::vector<PendulumState> swingDown(const DoublePendulum& pendulum, double clubAngle) {
  std::vector<PendulumState> states{{0, pendulum.startArms, pendulum.startCock, 0, 0}};
  while (states.back().time < kLongest) {
    const PendulumState& last = states.back();
    PendulumState next = stepped(pendulum, last, kStep);
    if (next.arms + next.cock <= clubAngle) {
      const double before = last.arms + last.cock - clubAngle;
      const double after = next.arms + next.cock - clubAngle;
      states.push_back(stepped(pendulum, last, kStep * before / (before - after)));
      break;
    }
    states.push_back(next);
  }
  return states;
}

DoublePendulum releasePendulum() {
  constexpr double kDegree = std::numbers::pi / 180;
  DoublePendulum pendulum;
  const double balance = pendulum.club * pendulum.clubBalance;
  pendulum.clubMomentAtWrist += pendulum.clubMass * balance * balance;
  pendulum.wristTorque = 0;
  pendulum.startArms = 130 * kDegree;
  pendulum.startCock = 112 * kDegree;
  pendulum.stopsAtStartCock = true;
  return pendulum;
}

}  // namespace baywright
