// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/progress.h"
#include "survey/scan_lines.h"

namespace baywright {

/// Adds the upright surfaces that are too narrow for patches to show: the sides of chimney breasts and niches,
/// the ends of nibs. Where samples that belong to none of the lines stand over one place of the plan from low
/// down to the ceiling, a short line runs square or parallel to a large one. Those places are counted along each
/// such direction; where at least two in a row line up, a line is fitted across, its direction the large one's.
/// At most kMostLines in all.
void addShortLines(const LevelScan& scan, std::vector<ScanLine>& lines, const Progress& progress);

}  // namespace baywright
