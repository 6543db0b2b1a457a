// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "base/progress.h"
#include "survey/scan_lines.h"

namespace baywright {

struct WeightedPoint {
  Vec2 place = Vec2::Zero();
  double weight = 1;
};

/// The line through points that lie near `start`, by orthogonal least squares with Tukey's biweight: points
/// beyond `reach` of the start have no say. Keeps `start` where fewer than two points have.
ScanLine fittedLine(std::span<const WeightedPoint> points, const ScanLine& start, double reach);

/// Fits each line to all samples near the patches on it, and notes where it is seen.
void refineOnPoints(const LevelScan& scan, std::vector<ScanLine>& lines, const Progress& progress = {});

}  // namespace baywright
