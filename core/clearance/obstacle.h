// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "base/id.h"
#include "geometry/solid.h"
#include "job/fixture.h"
#include "job/room.h"

namespace baywright {

enum class ObstacleKind {
  Wall,
  Window,
  Ceiling,
  Fixture,
  SectionalDoor,  ///< the door itself, open under the ceiling
  DoorTrack,
  Projector,
  ProjectorMount,
  Monitor,
  FrameMember,
  Bystander,
};

/// How far off an obstacle may really be from where the job says: independent parts, as standard
/// uncertainties.
struct ObstacleUncertainty {
  /// Of the place on the plan at `from` and at `to`, in between mixed by (1 - t) and t; a thing without a run
  /// has both ends alike.
  PlanCovariance atFrom;
  PlanCovariance atTo;
  Segment2 run;
  double bottom = 0;   ///< of the height of its underside, metres
  double top = 0;      ///< of the height of its upper side, metres
  double surface = 0;  ///< of the surface itself, the same in all directions, metres
};

/// One solid thing that a swing, a frame or a light beam must keep clear of, world metres. A thing made of
/// several convex pieces is several obstacles with one id.
struct RoomObstacle {
  Id id;  ///< wall, ceiling part, opening, fixture, kit or bystander
  ObstacleKind kind = ObstacleKind::Wall;
  std::string name;  ///< as a sentence says it: "wall A", "the beam"
  std::optional<FixtureKind> fixture;
  Solid solid;
  Aabb3 bounds;
  ObstacleUncertainty uncertainty;
  bool breakable = false;  ///< a ball must not reach it
  bool overhead = false;   ///< hangs above: the ceiling and whatever does not reach down to a person's height
  bool moves = false;      ///< stands in the bay and follows when the bay is moved
  std::string missing;  ///< the measurement that nobody took yet ("the height of the beam"); empty: all known
};

/// Standard uncertainty of the obstacle's surface at `at` along the unit vector `along`. `at` is the witness
/// on the obstacle, so that its height tells underside from upper side. First order; the parts are
/// independent.
double sigmaAlong(const RoomObstacle& obstacle, const Vec3& at, const Vec3& along);

}  // namespace baywright
