// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "flight/ball.h"

namespace baywright {

/// Club against ball, to turn a club head speed into a ball speed and to judge whether typed figures can
/// belong together.

/// Ball speed over club head speed for a square hit: (1 + e) / (1 + m / M) * cos(loft) (Cochran & Stobbs,
/// "The Search for the Perfect Swing", appendix). Radians; e is 0.83 for a driver at its limit (Equipment
/// Rules, Part 2 section 4c). A bound for well-struck shots; tour averages reach 1.48.
struct SmashInput {
  double restitution = 0.83;
  double headMass = 0.200;  ///< kg
  double loft = 0;
  Ball ball;
};
double smashFactor(const SmashInput& input);

/// A driver's impact after Penner, "The physics of golf: The optimum loft of a driver", Am. J. Phys. 69
/// (2001) 563-568: the ball grips the face and leaves it rolling, restitution 0.86 - 0.0029 s/m times the
/// normal speed. Valid for drivers, 30 to 60 m/s and 5 to 25 degrees of loft.
struct ImpactInput {
  double headSpeed = 45;    ///< m/s
  double loft = 0.19;       ///< radians, dynamic
  double headMass = 0.200;  ///< kg
  Ball ball;
};
struct Impact {
  double restitution = 0;
  double ballSpeed = 0;    ///< m/s
  double launchAngle = 0;  ///< radians above the head's path
  double spin = 0;         ///< rad/s of backspin
};
Impact impactOf(const ImpactInput& input);

}  // namespace baywright
