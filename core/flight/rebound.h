// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "base/problem.h"
#include "flight/shots.h"
#include "flight/trajectory.h"
#include "job/kit.h"

namespace baywright {

/// What the ball comes back over. With no `restitution` it is turf after Penner, "The run of a golf ball",
/// Can. J. Phys. 80 (2002) 931-940: e = 0.510 - 0.0375 v + 0.000903 v^2 up to 20 m/s, 0.120 above, v in m/s
/// along the normal; friction 0.40. `rolling` slows a rolling ball by 5/7 rolling g; 0.131 is Penner's value
/// for a medium green, 0.065 and 0.196 for a fast and a slow one ("The physics of putting", Can. J. Phys. 80
/// (2002) 83-96). Penner's tilt of the surface under steep fast balls is left out: thin turf on a hard floor
/// does not yield.
struct FloorSurface {
  std::optional<double> restitution;
  double friction = 0.40;
  double rolling = 0.131;
};
double turfRestitution(double normalSpeed);
double restitutionOf(const FloorSurface& floor, double normalSpeed);

/// Ball against screen. Normal speed is returned times Screen::restitution, for which no published figure
/// exists: it is to be measured. Along the fabric the ball is taken to grip and leave rolling, so it keeps
/// 5/7 of its speed, and 2/7 of its backspin's rim speed turns it down. `travel` of the screen is left out.
struct ReboundInput {
  Frame frame;
  Screen screen;
  Vec3 ball{-3.0, 0, 0.05};  ///< centre of the ball at rest; d < 0
  Shots shots;
  FloorSurface floor;
  double ceiling = 1e3;              ///< height of a level ceiling outside the frame
  double ceilingRestitution = 0.75;  ///< hard ceiling (common practice, no source)
  Surroundings surroundings;
};

/// One shot, there and back. Bay frame; the way back has no drag (it only makes the ball come farther).
struct Rebound {
  Vec3 atScreen = Vec3::Zero();
  Vec3 velocityIn = Vec3::Zero();
  Vec3 velocityOut = Vec3::Zero();
  double energyIn = 0;          ///< joules at the screen
  Vec3 landing = Vec3::Zero();  ///< first touch of the floor
  Vec3 rest = Vec3::Zero();     ///< where it stops
  double reach = 0;             ///< how far from the screen's face it comes, metres
  double speedAtStrike = 0;     ///< m/s when it passes the strike point's distance, 0 if it stops before
  std::vector<Vec3> path;       ///< for drawing: from the screen to rest
};
Result<Rebound> reboundOf(const ReboundInput& input, double launchAngle, double direction);

/// The worst of the shots: mean launch plus and minus up to two standard deviations, straight at the mean
/// direction.
struct ReboundSafety {
  Rebound worst;
  double worstLaunch = 0;
  /// Smallest distance from ball to screen from which on no such shot comes back faster than the limit; none
  /// if even kReboundSearch is not enough.
  std::optional<double> smallestDistance;
};
inline constexpr double kReboundSearch = 12.0;
Result<ReboundSafety> reboundSafety(const ReboundInput& input, double speedLimit);

}  // namespace baywright
