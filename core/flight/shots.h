// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "flight/ball.h"
#include "flight/trajectory.h"
#include "job/placement.h"
#include "job/requirements.h"

namespace baywright {

/// The shots that a bay must catch: all of one ball speed and spin, their directions normally distributed
/// about a mean, launch angle and direction independent of each other. Radians, m/s, rad/s.
struct Shots {
  double speed = 70;
  double spin =
      471;  ///< 4500 rpm, the middle of the bag: tour averages run from 2700 (driver) to 9300 (wedge)
  double meanLaunch = 0.28;
  double sigmaLaunch = 0.07;  ///< > 0
  double meanDirection = 0;
  double sigmaDirection = 0.07;  ///< > 0

  bool operator==(const Shots&) const = default;
};
/// The least scatter that shots are computed with: over 12 m the width of a hair. Requirements that state
/// less mean one shot alone and get this.
inline constexpr double kLeastDispersion = 1e-4;
Shots shotsFrom(const Requirements& requirements);

/// Standard air at the room's altitude; at sea level where that is out of range.
Surroundings surroundingsFrom(const Requirements& requirements);

/// Centre of the ball before it is struck, in the bay frame: on the mat, without a tee. A tee lifts it by up
/// to about 0.05 m for a driver (common practice, no source), which raises where it arrives by as much.
Vec3 ballAtRest(const Mat& mat, const Placement& placement, Hand hand);

}  // namespace baywright
