// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <vector>

#include "flight/arrival.h"

namespace baywright {

/// How much of the dispersion hits one thing in the room, and its most likely shot.
struct ObstacleHit {
  Id id;
  double share = 0;
  double launchAngle = 0;
  double direction = 0;
  Arrival arrival;  ///< of that shot
};

/// Where the shots of a dispersion go. Shares add up to one.
struct Capture {
  std::array<double, kMeetsCount> share{};  ///< by Meets
  std::vector<ObstacleHit> hits;            ///< the largest share first

  double of(Meets what) const { return share[static_cast<std::size_t>(what)]; }
  double onScreen() const { return of(Meets::Screen); }
};

/// In each of a set of vertical planes through the ball the spans of launch angle are found (arrival.h) and
/// weighed by the normal distribution: exactly along a plane, by Gauss-Legendre quadrature across the planes.
/// The planes are split at the directions of the screen's and the frame's sides, and of the sides of
/// obstacles. Directions beyond six standard deviations are left out. Deterministic. A share is good to
/// kShareError where screen and frame decide, to kObstacleShareError where obstacles do. Refused with a
/// sentence: whatever problemWith() refuses.
inline constexpr double kShareError = 2e-4;
inline constexpr double kObstacleShareError = 0.02;
Result<Capture> captureOf(const CaptureInput& input);

/// The directions whose shots cross the screen's face with the whole ball on it, whatever stands in their
/// way: a region of (direction, launch angle) in radians, counter-clockwise. Its corners lie on the true
/// boundary, straight pieces between them within 1e-4 rad of it. Shots that come down on the screen from
/// above it (slow lobs) are left out.
Result<std::vector<Vec2>> captureWindow(const CaptureInput& input);

}  // namespace baywright
