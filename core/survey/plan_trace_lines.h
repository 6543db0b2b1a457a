// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "base/problem.h"
#include "base/progress.h"
#include "job/scan.h"
#include "survey/line_detect.h"

namespace baywright {

/// What a plan's picture shows that a corner may be put on while it is traced; pixels of the picture.
struct PictureTraces {
  std::vector<Segment2> lines;  ///< straight strokes and edges, strongest first, lengthened over kOverTheEnd
  std::vector<Vec2> ends;       ///< where the strokes themselves end: of a scale bar, of walls at a door
};

/// Straight lines of a picture that was `shrunk` times smaller than the plan's own, in pixels of the plan's
/// own. Lines within kMargin of the picture's border are the paper's edge and left out. Refused: what
/// detectLines refuses.
Result<PictureTraces> picturedTraces(const GrayImage& image, double shrunk, const Progress& progress = {});
/// Lines that make a corner stop short of it, or one past the other, by up to this: pixels of `image`.
inline constexpr double kOverTheEnd = 12;
inline constexpr double kMargin = 3;

/// The traces on the plan where one sees them now, world metres; what a photographed plan sends to the
/// horizon is left out.
PictureTraces tracesOnPlan(const PlanScan& scan, const PictureTraces& traces);

}  // namespace baywright
