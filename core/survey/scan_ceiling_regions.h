// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/scan_ceiling.h"

namespace baywright {

/// A place of the ceiling and the plane on which it lies.
struct CeilingSpot {
  Vec2 place = Vec2::Zero();
  double area = 0;  ///< square metres for which it stands
  int plane = -1;   ///< -1: on none of them
};

/// Gives each plane the regions over which it is the ceiling. The floor is cut along walls, faces of steps,
/// creases between planes and the ends of each plane; every piece goes to the plane most of whose spots it
/// holds, smoothed over its edges (Besag's iterated conditional modes), and empty pieces to their neighbours.
/// A plane that hangs below no other gets none: it is the ceiling wherever nothing hangs lower.
void giveRegions(std::vector<CeilingPlane>& planes, const std::vector<CeilingSpot>& spots,
                 const LevelScan& scan, const ScanOutline& outline, const std::vector<ScanLine>& lines,
                 const Progress& progress = {});

}  // namespace baywright
