// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <vector>

#include "geometry/polygon.h"

namespace baywright {

/// A polygon cut into triangles that add no corner. `corners` lists those of normalised(polygon): outer, then
/// each hole. A corner on a straight line may belong to no triangle.
struct Triangulation {
  std::vector<Vec2> corners;
  std::vector<std::array<int, 3>> triangles;  ///< counter-clockwise
};

/// Ear clipping, the ear with the shortest cut first; holes are joined to the outline by bridges. The time
/// grows with the third power of the number of corners at worst: for floors and outlines, not for traced
/// contours of thousands. Refused like validated().
Result<Triangulation> triangulated(const Polygon& polygon);

/// The same region as convex rings, counter-clockwise: triangles merged over edges that are not needed
/// (Hertel and Mehlhorn 1983; at most four times as many as the fewest possible).
Result<std::vector<Ring>> convexPieces(const Polygon& polygon);

}  // namespace baywright
