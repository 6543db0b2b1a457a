// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace baywright {

/// Any number of regions on the plan that do not overlap; outer rings counter-clockwise, holes clockwise. As
/// input the regions may overlap and wind either way: together they mean their union.
using PolygonSet = std::vector<Polygon>;

/// Results are rounded to this grid, a micrometre. Each operation moves a boundary by less than its diagonal.
inline constexpr double kPlanGrid = 1e-6;
/// Coordinates beyond this are refused: the grid's integers would lose exactness.
inline constexpr double kPlanLimit = 1e6;

/// All of these refuse numbers that are not finite or beyond kPlanLimit. Regions that touch in a point are
/// kept apart.
Result<PolygonSet> unionOf(const PolygonSet& first, const PolygonSet& second = {});
Result<PolygonSet> differenceOf(const PolygonSet& first, const PolygonSet& second);
Result<PolygonSet> intersectionOf(const PolygonSet& first, const PolygonSet& second);

enum class OffsetCorner { Miter, Round };
/// The region grown by `distance` (metres; negative shrinks). Round: all points within the distance, drawn
/// with chords that lie at most kArcTolerance inside the true arc. Miter: edges moved outward and prolonged
/// up to 4 times the distance, then cut off.
inline constexpr double kArcTolerance = 1e-4;
Result<PolygonSet> offsetOf(const PolygonSet& set, double distance, OffsetCorner corner);

/// All sums of a point of `set` and a point of the simple ring `footprint`. Obstacles summed with the
/// footprint mirrored through its origin (mirrored()) are the places where that origin may not stand. Exact
/// but for the grid; holes that the footprint cannot reach remain, false ones do not appear.
Result<PolygonSet> minkowskiSum(const PolygonSet& set, const Ring& footprint);
/// Every corner negated.
Ring mirrored(const Ring& ring);

double area(const PolygonSet& set);

}  // namespace baywright
