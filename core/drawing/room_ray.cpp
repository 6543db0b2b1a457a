// SPDX-License-Identifier: Apache-2.0
#include "drawing/room_ray.h"

#include <cmath>

#include "job/room_geometry.h"

namespace baywright::detail {

std::optional<double> distanceToWall(const Room& room, const Vec2& from, const Vec2& direction) {
  // A thing that touches its wall is at no distance from it, whatever rounding says.
  constexpr double kTouching = 1e-9;
  std::optional<double> nearest;
  for (const WallLine& line : wallLines(room)) {
    const double approach = -direction.dot(line.inward);
    if (approach < kTouching) continue;  // along the wall, or out of its back
    const double distance = (from - line.start).dot(line.inward) / approach;
    if (distance < -kTouching) continue;
    const double along = (from + distance * direction - line.start).dot(line.along);
    if (along < -kTouching || along > line.length + kTouching) continue;
    if (!nearest || distance < *nearest) nearest = std::max(distance, 0.0);
  }
  return nearest;
}

}  // namespace baywright::detail
