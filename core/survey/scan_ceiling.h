// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/scan_outline.h"

namespace baywright {

/// One plane of the ceiling: z = height + slope . (p - anchor).
struct CeilingPlane {
  Vec2 anchor = Vec2::Zero();
  double height = 0;
  Vec2 slope = Vec2::Zero();
  double area = 0;  ///< of the plan over which it was seen, square metres
  double rms = 0;   ///< of its points, robust
  /// Over which it is the ceiling, simple and counter-clockwise, where it is not the lowest of all planes
  /// over the whole floor.
  std::vector<Ring> regions;
  bool isPartial = false;  ///< it has regions

  double at(const Vec2& p) const { return height + slope.dot(p - anchor); }
  bool covers(const Vec2& p) const;
};

/// Planes through what is highest over each place of the floor, the largest first, fitted to the points by
/// reweighted least squares. Level where its fall over the room is within kLevelFall. Beams and ducts,
/// narrower than kNarrowest, are none. A plane that would hang below ceiling seen elsewhere has regions
/// (scan_ceiling_regions.h).
std::vector<CeilingPlane> ceilingOf(const LevelScan& scan, const ScanOutline& outline,
                                    const std::vector<ScanLine>& lines, const Progress& progress = {});
inline constexpr double kLevelFall = 0.02;  ///< metres over the room: twice what a hand-held scan is sure of
inline constexpr double kNarrowest = 0.60;  ///< metres

}  // namespace baywright
