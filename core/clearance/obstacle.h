// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "geometry/closest.h"
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
  Frame,
  Bystander,
};

/// How far an obstacle may really be from where the job says: independent parts, standard uncertainties in
/// metres.
struct ObstacleUncertainty {
  /// Of its place on the plan at both ends of `run`, mixed by 1 - t and t in between. A thing without a run
  /// has both alike.
  PlanCovariance atFrom;
  PlanCovariance atTo;
  Segment2 run;
  double bottom = 0;   ///< of the height of its underside
  double top = 0;      ///< of the height of its upper side
  double surface = 0;  ///< of its surface, the same in all directions
};

/// One solid thing that a swing, a frame, a ball or the light must keep clear of; world frame, metres. A
/// thing made of several convex pieces is several obstacles with one id.
struct RoomObstacle {
  Id id;  ///< wall, window, ceiling part, door, fixture, kit or bystander
  ObstacleKind kind = ObstacleKind::Wall;
  std::string name;  ///< as a sentence says it: "wall A", "the beam"
  std::optional<FixtureKind> fixture;
  Solid solid = Cylinder{};
  Aabb3 bounds;
  ObstacleUncertainty uncertainty;
  bool breakable = false;  ///< a ball must not reach it
  bool overhead = false;   ///< hangs: the ceiling, and whatever one can stand under
  bool inBay = false;      ///< stands in the bay and follows when the bay is moved
  /// The figure that nobody took yet, as "the height of the beam"; empty: all known. The solid is then as
  /// large as the missing figure can make it, so that what is clear of it is clear whatever the figure turns
  /// out to be.
  std::string missing;
  /// Outward unit normals of sides that border on more of the same: no way out of it for what overlaps.
  std::vector<Vec3> sharedSides;
};

/// All of `like` but its body.
RoomObstacle withSolid(RoomObstacle like, Solid solid);

/// Standard uncertainty of the obstacle's surface at `at` along the unit vector `outward`, which points away
/// from the obstacle. First order.
double sigmaAlong(const RoomObstacle& obstacle, const Vec3& at, const Vec3& outward);

/// Never below sigmaAlong, wherever and whichever way.
double largestSigma(const RoomObstacle& obstacle);

/// Signed distance and witnesses, first the capsule's. As closest(), except that an overlap is never resolved
/// through a shared side: then the depth is that under the underside or behind the face that remains.
Closest closest(const Capsule& capsule, const RoomObstacle& obstacle);

/// Never above the distance of that capsule, or of any capsule inside that box, from the obstacle,
/// overlapping or not. Some ten nanoseconds.
double lowerBound(const Capsule& capsule, const RoomObstacle& obstacle);
double lowerBound(const Aabb3& box, const RoomObstacle& obstacle);

/// True where a person of `height` (metres) cannot be: the obstacle reaches below that and above ankle
/// height.
bool standsInTheWay(const RoomObstacle& obstacle, double height);

}  // namespace baywright
