// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "survey/scan_hole_rect.h"

namespace baywright::detail {

/// Where an edge of a hole lies, metres along the wall or above the floor.
struct HolePlace {
  double at = 0;
  bool isSure = false;  ///< false: no wall beside the edge tells, and `at` is the edge of its squares
};

struct HolePlaces {
  HolePlace start, end;  ///< along the wall
  HolePlace sill, head;  ///< heights
};

/// The edges of a hole more exactly than its squares: where the points of a reveal heap up, or else where the
/// density of the wall's points, which noise does not move, says that they end.
HolePlaces placesOf(const WallGrid& grid, const HoleRect& rect);

}  // namespace baywright::detail
