// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "geometry/convex_polyhedron.h"
#include "job/room.h"
#include "job/room_geometry.h"

namespace baywright {

/// A convex piece of a ceiling part on the plan, counter-clockwise. For each of its edges what is beyond:
/// open air below the plane of a higher part, or nothing that one could leave through (more ceiling, a wall,
/// a place where nobody measured one).
struct CeilingPiece {
  Ring plan;
  std::vector<std::optional<SlopedPlane>> openBelow;
};

/// The underside of a part.
SlopedPlane planeOf(const CeilingPart& part);

/// The part's region in convex pieces, cut so that beyond an edge it is the same from end to end: a slope
/// that rises past a level neighbour is two pieces. What changes within kShortestCut of an end is left. None
/// for a part without a region of its own.
std::vector<CeilingPiece> ceilingPieces(const Room& room, const CeilingPart& part);
inline constexpr double kShortestCut = 0.01;

}  // namespace baywright
