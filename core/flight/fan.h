// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "flight/arrival.h"

namespace baywright {

/// A bundle of shots: launch angles and directions from one bound to the other, radians.
struct ShotRange {
  double launchLow = 0;
  double launchHigh = 0;
  double directionLeft = 0;
  double directionRight = 0;

  bool operator==(const ShotRange&) const = default;
};
/// Mean plus and minus that many standard deviations.
ShotRange rangeOf(const Shots& shots, double sigmas);
/// The box around a capture window.
ShotRange rangeOf(const std::vector<Vec2>& window);

/// Outline of a bundle for drawing, closed polygons: from the ball along one outermost shot to where it meets
/// something, back along the other. Plan in (d, r) for the mean launch angle, elevation in (d, u) for the
/// mean direction.
struct Fan {
  std::vector<Vec2> plan;
  std::vector<Vec2> elevation;
};
Result<Fan> fanOf(const CaptureInput& input, const ShotRange& range);

}  // namespace baywright
