// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/progress.h"
#include "survey/scan_lines.h"

namespace baywright {

/// Adds the sides of jogs that no scanner faced: where a wall ends in front of another that runs parallel and
/// goes on there, as the face of a chimney breast does before the wall behind it, some surface joins the two,
/// square to them. It is put where the samples of the front one end, told by their density, which noise does
/// not move. Such a line has no area, and `seen` says where the jog is but that nothing was seen there. At
/// most kMostLines in all.
void addHiddenLines(const LevelScan& scan, std::vector<ScanLine>& lines, const Progress& progress);

}  // namespace baywright
