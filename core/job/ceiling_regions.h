// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "job/room_geometry.h"

namespace baywright {

/// Where a part of the ceiling is what one sees from below, as far as parts over the whole floor hide each
/// other: two planes that cross over a room each count on their own side of the crease. Counter-clockwise
/// rings, the largest first; none where another part lies below it everywhere. A part with a region of its
/// own has that region, and what is not measured hides nothing and is not hidden. Accurate to a micrometre
/// (kPlanGrid).
std::vector<Ring> seenRegions(const Room& room, const CeilingPart& part);

/// How low and how high the part gets there; over its whole region where nothing is seen of it.
CeilingSpan seenSpan(const Room& room, const CeilingPart& part);

}  // namespace baywright
