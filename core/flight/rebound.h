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
/// along the normal; friction 0.40. A bare hard floor is about 0.8 (value from memory). `rolling` slows a
/// rolling ball by 5/7 rolling g; 0.131 is a medium green, 0.065 a fast and 0.196 a slow one (Penner, "The
/// physics of putting", Can. J. Phys. 80 (2002) 83-96).
struct FloorSurface {
  std::optional<double> restitution;
  double friction = 0.40;
  double rolling = 0.131;

  bool operator==(const FloorSurface&) const = default;
};
/// Normal speed in m/s, >= 0.
double turfRestitution(double normalSpeed);
double restitutionOf(const FloorSurface& floor, double normalSpeed);

/// A shot against the screen and back, in the bay frame. Assumed:
/// - Along the normal the screen gives back Screen::restitution of the speed. No published figure exists;
///   it is to be measured on the screen at hand, and every figure here hangs on it.
/// - The ball sinks into a pocket of the fabric, whose sides stop it as its bottom does: along the fabric
///   it keeps the same share, or `alongFabric` if that is given (5/7 is a ball that grips a stiff wall),
///   and no spin. No source. It starts back at the screen's resting face.
/// - Side and roof fabric on the way back throw back with the same restitution, and the ball grips them.
/// - No air on the way back, which makes the ball come farther: at 10 m/s drag would take 2 % in 2 m.
/// - The floor as above; the ball grips or slides on it as Penner has it. His tilt of the surface under
///   steep fast balls is left out, since thin turf on a hard floor does not yield. A hop below 5 mm is
///   rolling, and the ball then grips at once.
/// - Nothing else in the way: room walls, people, the mat's edge; a rolling ball is not stopped by side
///   fabric.
struct ReboundInput {
  Frame frame;
  Screen screen;
  Vec3 ball{-3.0, 0, 0.05};  ///< centre of the ball at rest; -12 <= d <= -0.3
  Shots shots;
  std::optional<double> alongFabric;  ///< 0 to 1; none: as Screen::restitution
  FloorSurface floor;
  double ceiling = 1e3;              ///< height of a level ceiling in front of the frame
  double ceilingRestitution = 0.75;  ///< hard ceiling (value from memory)
  Surroundings surroundings;
};

/// What is wrong with the input, if anything.
std::optional<Problem> problemWith(const ReboundInput& input);

struct Rebound {
  Vec3 atScreen = Vec3::Zero();  ///< centre of the ball
  Vec3 velocityIn = Vec3::Zero();
  Vec3 velocityOut = Vec3::Zero();
  double energyIn = 0;          ///< joules of flight at the screen
  Vec3 landing = Vec3::Zero();  ///< first touch of the floor
  Vec3 rest = Vec3::Zero();     ///< where it stops
  double reach = 0;             ///< how far in front of the screen's face it comes, metres
  double speedAtStrike = 0;     ///< m/s when it passes the strike distance; 0 if it stops before
  std::vector<Vec3> path;       ///< for drawing: from the screen to rest
};
/// Refused with a sentence when the shot does not get to the screen's plane inside the frame.
Result<Rebound> reboundOf(const ReboundInput& input, double launchAngle, double direction);

/// Shots straight at the mean direction, with the mean launch angle and one and two standard deviations above
/// and below it; those that meet the floor, the roof or a frame member first are left out.
struct ReboundSafety {
  Rebound worst;  ///< fastest at the strike distance, then the one that comes farthest
  double worstLaunch = 0;
  /// Smallest distance from ball to screen such that there, and in steps of kReboundStep farther away, no
  /// such shot passes the strike point faster than the limit. At least kReboundNearest; none if even
  /// kReboundFarthest is not enough.
  std::optional<double> smallestDistance;
};
inline constexpr double kReboundNearest = 1.0;
inline constexpr double kReboundFarthest = 12.0;
inline constexpr double kReboundStep = 0.25;
/// `speedLimit` in m/s, >= 0.
Result<ReboundSafety> reboundSafety(const ReboundInput& input, double speedLimit);

}  // namespace baywright
