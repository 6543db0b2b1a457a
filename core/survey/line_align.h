// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/problem.h"
#include "geometry/homography.h"
#include "geometry/shapes.h"
#include "job/scan.h"

namespace baywright {

/// What a line of known length says of a picture's scale: a scale bar with its figure, a door with its width.
struct ScaleSuggestion {
  double metresPerPixel = 0;
  double sigma = 0;  ///< of metresPerPixel: each end is found to within kEndSigma
  /// n of the sheet's 1:n, where the picture's own resolution is known; else 0.
  double sheetScale = 0;
  /// Where the picture's own resolution is known: the usual scale of drawings that this is, 50 for 1:50, if
  /// it is one of them to within three sigma.
  std::optional<double> usualScale;
};

/// How well an end of a line is found in a picture, pixels: strokes end roundly, and clicks are no better.
inline constexpr double kEndSigma = 1.0;

/// `dotsPerMetre` is the picture's resolution on paper, 0 where nobody knows it (a photo). Refused: a line of
/// less than ten pixels, a length that is not positive.
Result<ScaleSuggestion> suggestedScale(const Segment2& pixels, double length, double dotsPerMetre);

/// A second sheet laid upon the first.
struct SheetAlignment {
  PlanScan scan;
  double turn = 0;  ///< radians, counter-clockwise, by which it was turned
  double scaleChange =
      1;  ///< by which it grew; far from 1 for two sheets that had been scaled: one of them is wrong
};

/// The scan moved, turned and scaled alike in all directions, so that two points seen on it (`from`, world
/// metres as it lies now) come to lie where the same points are on the first sheet (`to`). Two points fix
/// this exactly, so what they disagree by is all in `scaleChange`. The scan counts as scaled
/// afterwards if the first sheet does, which the caller knows. Refused: points of either sheet that
/// coincide, a change of scale beyond kLargestFactor either way.
Result<SheetAlignment> alignedByTwoPoints(PlanScan scan, const PointPair& first, const PointPair& second);

}  // namespace baywright
