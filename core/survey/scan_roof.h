// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <limits>
#include <vector>

#include "survey/scan_cube_map.h"
#include "survey/scan_planes.h"

namespace baywright {

/// Where a ceiling hangs over the plan: it tells a room from the yard that was seen through its door or
/// window. A scan of which hardly any floor lies under a ceiling says nothing of the kind, and all of it
/// counts.
class RoofMap {
 public:
  RoofMap() = default;
  /// Of patches that `level` turns so that z is up; floor and ceiling may lie at any height.
  explicit RoofMap(const std::vector<ScanPatch>& patches, const Mat3& level = Mat3::Identity());

  /// Whether enough floor lies under a ceiling for the map to say anything.
  bool saysSomething() const { return says_; }
  /// Something lying hangs at least kLeastHeadroom above p, there or in a cell beside it.
  bool covers(const Vec3& p) const { return highestNear(p, 1) > p.z() + kLeastHeadroom; }
  /// True in all of a scan whose map says nothing.
  bool isIndoors(const Vec3& p) const { return !says_ || covers(p); }
  /// Height of what hangs highest over p or `cells` cells round it; `otherwise` where that is lower than
  /// kLeastHeadroom above a floor at zero, or nothing does.
  double topAt(const Vec2& p, double otherwise, int cells = 1) const {
    const double top = highestNear(raised(p, 0), cells);
    return top > kLeastHeadroom ? top : otherwise;
  }
  /// Something lying hangs at least kLeastHeadroom over `floor` within about half a metre.
  bool isNear(const Vec2& p, double floor) const {
    return !says_ || highestNear(raised(p, 0), 2) > floor + kLeastHeadroom;
  }

  static constexpr double kCell = 0.20;          ///< metres
  static constexpr double kLeastHeadroom = 1.3;  ///< metres; a slope may come down to knee walls
  static constexpr double kEnoughCovered = 3.0;  ///< square metres of floor under ceiling

 private:
  double highestNear(const Vec3& p, int cells) const;

  CubeMap cells_;
  std::vector<double> highest_;
  bool says_ = false;
};

}  // namespace baywright
