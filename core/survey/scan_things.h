// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "base/progress.h"
#include "job/fixture.h"
#include "survey/scan_ceiling.h"
#include "survey/scan_outline.h"
#include "survey/scan_wall_grid.h"

namespace baywright {

/// What is left of a scan in a room.
struct ScanThings {
  std::vector<Fixture> fixtures;  ///< upright boxes, proposals; no ids yet, the largest first
  std::size_t surface = 0;        ///< samples on walls, floor and ceiling
  std::size_t inThings = 0;       ///< samples in the boxes
  std::size_t unrecognised = 0;   ///< samples within the room in neither
  std::size_t outside = 0;        ///< samples beyond the walls
  std::size_t small = 0;          ///< things left out: smaller than kLeastThing
  std::size_t tooMany = 0;        ///< things left out: more than kMostScanThings
};

/// Groups samples inside the room that belong to no surface of it by touching cubes, and puts a box round
/// each group, turned as the walls or as it is smallest. What almost reaches floor or ceiling is taken to
/// stand or hang there; what hides the wall behind it, to reach the wall. Boxes that touch or nearly do are
/// one where that adds little: the boxes on a rack make one of shelving. What is smaller than kLeastThing is
/// left out. The kind is a guess by place and shape. `noise` is the scatter of the scan's points, metres.
ScanThings thingsOf(const LevelScan& scan, const ScanOutline& outline,
                    const std::vector<CeilingPlane>& ceiling, const std::vector<WallGrid>& grids,
                    double noise, const Progress& progress = {});
inline constexpr std::size_t kMostScanThings = 60;
inline constexpr double kLeastThing = 0.25;  ///< metres of a box's longest side

}  // namespace baywright
