// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/scan_wall_grid.h"

namespace baywright::detail {

/// A rectangle of a wall's squares.
struct HoleRect {
  int left = 0, right = 0, bottom = 0, top = 0;  ///< squares; right and top are beyond the last

  int width() const { return right - left; }
  int height() const { return top - bottom; }
  int area() const { return width() * height(); }
};

/// The largest rectangle of squares that are neither wall nor `taken` (a flag a square, as WallGrid::isWall);
/// empty where there are none.
HoleRect largestRect(const WallGrid& grid, const std::vector<bool>& taken);

/// Grown over rows and columns that are mostly free: one stray square may not cost a hole its edge. Stays
/// inside the wall.
HoleRect grown(const WallGrid& grid, const std::vector<bool>& taken, HoleRect rect);

/// How much of what lies just beside the rectangle is wall; an edge outside of the wall has none.
struct HoleEdges {
  double left = 0, right = 0, bottom = 0, top = 0;
};
HoleEdges edgesOf(const WallGrid& grid, const HoleRect& rect);

}  // namespace baywright::detail
