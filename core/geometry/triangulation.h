// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <vector>

#include "geometry/polygon.h"

namespace baywright {

/// A polygon cut into triangles that add no corner: `corners` lists outer, then each hole.
struct Triangulation {
  std::vector<Vec2> corners;
  std::vector<std::array<int, 3>> triangles;  ///< counter-clockwise
};

/// Ear clipping, holes joined by bridges; quadratic in the number of corners. Refused like validated().
Result<Triangulation> triangulated(const Polygon& polygon);

/// The same region as convex rings, counter-clockwise: triangles merged over edges that are not needed
/// (Hertel and Mehlhorn 1983; at most four times as many as the fewest possible).
Result<std::vector<Ring>> convexPieces(const Polygon& polygon);

}  // namespace baywright
