// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "clearance/obstacle.h"
#include "geometry/convex_polyhedron.h"
#include "job/room.h"

namespace baywright {

/// A sectional overhead door as it takes up room. Two tracks stand beside the opening and run into the room
/// under the ceiling, their upper edge `trackHeadroom` above the opening; open, the door hangs between them.
/// Sizes of tracks are those of light residential doors: 2 in. nominal track with its brackets (value from
/// memory).
struct SectionalDoorBodies {
  std::vector<ConvexPolyhedron> tracks;
  std::optional<ConvexPolyhedron> open;
  ObstacleUncertainty uncertainty;
  std::string missing;  ///< as RoomObstacle::missing
};
inline constexpr double kTrackWidth = 0.06;
inline constexpr double kTrackHeight = 0.08;
/// Between the opening's side and the track.
inline constexpr double kTrackGap = 0.02;
/// Standard uncertainty of where tracks hang, as nobody tapes them (common practice, no source).
inline constexpr double kTrackSigma = 0.02;
/// How much farther than the opening is high its tracks reach, for the bend and the stop
/// (Opening::trackDepth).
inline constexpr double kTrackRunOut = 0.45;

/// Nothing when the opening's wall is missing or its sizes make no body.
std::optional<SectionalDoorBodies> sectionalDoor(const Room& room, const Opening& opening);

/// What the leaf of a hinged door sweeps from shut to open, on the plan, counter-clockwise: a sector about
/// the hinge, drawn with tangents that lie outside the true arc by under kSectorExcess of the leaf's width.
/// More than half a turn never occurs. Empty when the opening's wall is missing.
std::vector<Vec2> leafSector(const Room& room, const Opening& opening);
inline constexpr double kSectorExcess = 6e-4;

/// Width that remains between the leaf, stood open at a right angle, and the other jamb: the opening's width
/// less the leaf's thickness. Stops and handles are not in the job and take some more. Passages and sectional
/// doors keep their width.
Uncertain clearOpeningWidth(const Opening& opening);

}  // namespace baywright
