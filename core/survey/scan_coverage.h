// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "survey/scan_faces.h"
#include "survey/scan_lines.h"

namespace baywright {

/// Where on the plan floor, ceiling or anything lying was seen, in square cells of kCoverCell, and whether a
/// ceiling hangs near.
struct PlanCoverage {
  Vec2 low = Vec2::Zero();
  Vec2 high = Vec2::Zero();
  int columns = 0;
  int rows = 0;
  std::vector<double> seen;  ///< row by row: 1 seen, kBareFloor where no ceiling hangs near, 0 not seen

  double at(const Vec2& p) const;
};
inline constexpr double kCoverCell = 0.05;
/// Floor without a ceiling is a yard seen through a door rather than room, unless walls say otherwise.
inline constexpr double kBareFloor = 0.3;

/// Marks the surroundings of every sample on a lying patch, as far as the samples of such a patch lie apart.
PlanCoverage coverageOf(const LevelScan& scan);

/// For each face, the share of it that was seen; one half where it is too small to tell.
std::vector<double> seenShares(const PlanCoverage& coverage, const PlanFaces& plan,
                               std::span<const ScanLine> lines);

}  // namespace baywright
