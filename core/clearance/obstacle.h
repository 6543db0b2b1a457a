// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "geometry/closest.h"
#include "geometry/convex_polyhedron.h"
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

/// A side of a piece of something larger that is no way out of it, or not a whole one.
struct SharedSide {
  Vec3 normal = Vec3::UnitX();  ///< outward, unit
  /// Beyond the side it is open up to this plane: one leaves sideways, and down as far as one reached above
  /// it. Without: no way out.
  std::optional<SlopedPlane> openBelow;
};

/// What a swing meets of something that nothing gets through, where that is more than its solid: fabric
/// counts as solid for some way behind, so that a club that would pass it is found deep in it and freed to
/// its own side.
struct Backing {
  Solid solid;
  Aabb3 bounds;
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
  std::vector<SharedSide> sharedSides;
  std::optional<Backing> backing;
};

/// All of `like` but its body.
RoomObstacle withSolid(RoomObstacle like, Solid solid);

/// Standard uncertainty of the obstacle's surface at `at` along the unit vector `outward`, which points away
/// from the obstacle. First order.
double sigmaAlong(const RoomObstacle& obstacle, const Vec3& at, const Vec3& outward);

/// Never below sigmaAlong, wherever and whichever way.
double largestSigma(const RoomObstacle& obstacle);

/// Signed distance and witnesses of a part of a swing, first the capsule's. As closest() with the backing
/// where there is one, except that an overlap is not resolved through a shared side: then the depth is that
/// behind the face that remains, or that of going out sideways and down where a side is open below, whichever
/// is less. It is that of the part of the capsule inside this piece; where several pieces are entered the
/// largest of their depths is a little less than the shift that frees the whole capsule at once.
Closest closest(const Capsule& capsule, const RoomObstacle& obstacle);

/// Never above the distance of that capsule, or of any capsule inside that box, from the obstacle,
/// overlapping or not. Some ten nanoseconds.
double lowerBound(const Capsule& capsule, const RoomObstacle& obstacle);
double lowerBound(const Aabb3& box, const RoomObstacle& obstacle);

/// True where a person of `height` (metres) cannot be: the obstacle reaches below that and above ankle
/// height.
bool standsInTheWay(const RoomObstacle& obstacle, double height);

}  // namespace baywright
