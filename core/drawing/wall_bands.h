// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "job/room.h"

namespace baywright::detail {

/// A wall cut at the height of the plan: what is masonry and which of its edges are drawn. World plan.
struct WallBand {
  Id wall;
  std::vector<std::vector<Vec2>> solids;  ///< convex quadrilaterals, counter-clockwise
  std::vector<std::vector<Vec2>> edges;   ///< faces and jambs; not where two walls join
};

/// Walls are mitred at corners; openings are cut square through them. Outer faces of walls that meet at less
/// than about 20 degrees end short of the mitre. Empty before survey.
std::vector<WallBand> wallBands(const Room& room);

}  // namespace baywright::detail
