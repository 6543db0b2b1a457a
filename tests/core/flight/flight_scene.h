// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "flight/arrival.h"
#include "flight/rebound.h"

namespace baywright::scene {

constexpr double degrees(double value) {
  return value * kPi / 180;
}
constexpr double rpm(double value) {
  return value * kPi / 30;
}

inline Surroundings vacuum() {
  Surroundings surroundings;
  surroundings.aerodynamics = ConstantCoefficients{0, 0};
  return surroundings;
}

/// A ball 3 m in front of a screen of 3.0 x 2.25 m in a frame of 3.2 x 2.5 x 1.5 m.
inline CaptureInput bay() {
  CaptureInput input;
  input.ball = {-3, 0, 0.05};
  return input;
}

inline ReboundInput reboundBay() {
  ReboundInput input;
  input.ball = {-3, 0, 0.05};
  input.screen.restitution = 0.05;
  return input;
}

/// From corner to corner, along the axes of the bay.
inline Obstacle box(std::uint32_t id, const Vec3& low, const Vec3& high) {
  const TiltedBox body{0.5 * (low + high), Mat3((0.5 * (high - low)).asDiagonal())};
  return {Id{id}, *boxFrom(body)};
}

}  // namespace baywright::scene
