// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "geometry/polygon.h"

namespace baywright::detail {

/// Convex rings, counter-clockwise by their numbers. Exact up to rounding; no grid, unlike polygon_sets.h,
/// because a picture is asked about again on every mouse move.

/// The part of `subject` inside `window` (Sutherland-Hodgman); empty when they share no area.
Ring clipped(const Ring& subject, const Ring& window);

/// Area of the union. Cuts the plane into strips between all corners and crossings; within one strip no edges
/// cross, so the covered width is linear in height and its middle gives the exact area.
double unionArea(std::span<const Ring> rings);

/// Integral of |p - centre|^2 over the ring.
double secondMoment(const Ring& ring, const Vec2& centre);

}  // namespace baywright::detail
