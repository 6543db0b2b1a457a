// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "geometry/polygon.h"

namespace baywright {

/// Everything on the plan with normal.dot(p) <= offset; `normal` is a unit vector.
struct HalfPlane {
  Vec2 normal{1, 0};
  double offset = 0;
};

/// What lies behind edge i of a counter-clockwise ring: the side on which a convex ring itself is.
HalfPlane behindEdge(const Ring& ring, std::size_t edge);

/// The part of a convex ring inside the half-plane, counter-clockwise; empty when nothing is left.
Ring clipped(const Ring& convex, const HalfPlane& keep);

/// The convex ring that all half-planes have in common, within `reach` metres of `middle` (a square); empty
/// when they have nothing in common.
Ring commonOf(std::span<const HalfPlane> halfPlanes, const Vec2& middle, double reach);

}  // namespace baywright
