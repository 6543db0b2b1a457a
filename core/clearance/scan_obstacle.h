// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "base/id.h"
#include "geometry/point_tree.h"
#include "geometry/triangle_tree.h"
#include "job/scan.h"

namespace baywright {

/// A scanned surface that a swing must keep clear of, with a tree to find its nearest part. A scan has no
/// inside, so a swing that passes through it is found to touch, not how deep it goes. What lies lower than
/// kScanFloorBand above the floor is left out, since a club head passes there on purpose: steps and kerbs
/// below that are not seen.
struct ScanObstacle {
  Id id;
  std::string name;
  double sigma = 0;  ///< of a point, metres
  std::optional<TriangleTree> triangles;
  std::optional<PointTree> points;
};
inline constexpr double kScanFloorBand = 0.15;

/// Nothing for a scan that is no obstacle or has nothing above the floor band.
std::optional<ScanObstacle> scanObstacle(const RoomScan& scan);

}  // namespace baywright
