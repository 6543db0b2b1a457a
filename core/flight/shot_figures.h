// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "flight/arrival.h"

namespace baywright {

/// One shot in numbers, integrated (trajectory.h), whatever stands in its way.
struct ShotFigures {
  /// At the plane of the screen's face, the ball's centre; none when it does not get there.
  struct AtScreen {
    double time = 0;    ///< seconds since it was struck
    double height = 0;  ///< above the floor
    double speed = 0;
    double energy = 0;  ///< joules of flight
  };
  std::optional<AtScreen> atScreen;

  // As if there were no room: on level ground, down to the height that it was struck from.
  double carry = 0;  ///< metres along the shot's direction
  double apex = 0;   ///< above where it was struck
  double time = 0;
  double landingSpeed = 0;
  double landingAngle = 0;  ///< below the horizon, radians
};

/// Pure backspin. Refused as arrivalOf; carry and what follows are zero for a shot that starts downward.
Result<ShotFigures> shotFigures(const CaptureInput& input, double launchAngle, double direction);

}  // namespace baywright
