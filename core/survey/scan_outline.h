// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/problem.h"
#include "geometry/polygon.h"
#include "survey/scan_lines.h"

namespace baywright {

/// A floor made of lines: corner i lies where lines i - 1 and i cross, side i runs along line i.
struct ScanOutline {
  std::vector<ScanLine> sides;  ///< counter-clockwise; normals point into the room
  Ring corners;
  std::vector<double> seen;  ///< share of each side's length where its wall was seen, 0..1
  std::vector<std::string> notes;
};

/// Chooses the floor between the lines: what lies over floor or under ceiling that was seen is inside, and
/// its edge should run where walls stand. Doors and what hides a wall leave gaps, which cost their length
/// (an exact minimum, scan_min_cut.h). What is seen beyond an opening that reaches up to a lintel is left out
/// unless it is closed by walls of its own, and noted. Standing columns do not make holes.
/// Refused with a sentence: nothing that walls enclose, a cancel.
Result<ScanOutline> outlineOf(const LevelScan& scan, const std::vector<ScanLine>& lines,
                              const Progress& progress = {});

}  // namespace baywright
