// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/progress.h"
#include "survey/scan_outline.h"

namespace baywright {

/// Fits each side of an outline to what was seen between its own corners: a line that was found over the whole
/// scan is drawn aside by leaves, reveals and things that stand beside it. Each square of the wall has one
/// say, shared out over the depths at which its samples lie, those overhead twice, for little stands there; the
/// line is where most of them agree (the highest value of a kernel estimate over place and direction), then
/// refined by reweighted least squares. A side keeps its place where too little of it was seen. Corners are
/// moved to where the sides cross; all stays as it was where one would go far.
void settleSides(const LevelScan& scan, ScanOutline& outline, const Progress& progress);

}  // namespace baywright
