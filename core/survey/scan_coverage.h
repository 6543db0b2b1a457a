// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "base/progress.h"
#include "survey/scan_faces.h"
#include "survey/scan_lines.h"

namespace baywright {

/// Where on the plan floor, ceiling or anything lying was seen, in square cells of kCoverCell, and whether a
/// ceiling hangs near. Ceiling itself says most: nothing that stands in a room hides it, but for a cupboard
/// as high as the room, and a yard has none.
struct PlanCoverage {
  Vec2 low = Vec2::Zero();
  Vec2 high = Vec2::Zero();
  int columns = 0;
  int rows = 0;
  /// Row by row: kCeilingSays ceiling, 1 anything else lying, kBareFloor where no ceiling hangs near, 0 not
  /// seen.
  std::vector<double> seen;

  double at(const Vec2& p) const;
};
inline constexpr double kCoverCell = 0.05;
/// Floor without a ceiling is a yard seen through a door rather than room, unless walls say otherwise.
inline constexpr double kBareFloor = 0.3;
inline constexpr double kCeilingSays = 1.5;

/// Marks the surroundings of every sample on a lying patch, as far as the samples of such a patch lie apart.
PlanCoverage coverageOf(const LevelScan& scan, const Progress& progress = {});

struct SeenFloor {
  double share = 0.5;  ///< of a face that was seen
  double worth = 0.5;  ///< mean of PlanCoverage::seen over it
};

/// For each face; one half where it is too small to tell.
std::vector<SeenFloor> seenShares(const PlanCoverage& coverage, const PlanFaces& plan,
                                  std::span<const ScanLine> lines);

}  // namespace baywright
