// SPDX-License-Identifier: Apache-2.0
#include "job/bay_start.h"

#include <cmath>
#include <limits>

#include "job/room_geometry.h"

namespace baywright {
namespace {

/// Metres of floor in front of the middle of a wall, to the next wall.
double depthBefore(const WallLine& wall, const std::vector<WallLine>& walls) {
  const Vec2 from = 0.5 * (wall.start + wall.end);
  double nearest = std::numeric_limits<double>::infinity();
  for (const WallLine& other : walls) {
    if (other.wall == wall.wall) continue;
    const Vec2 span = other.end - other.start;
    const double denominator = cross(wall.inward, span);
    if (denominator == 0) continue;
    const double along = cross(other.start - from, span) / denominator;
    const double share = cross(other.start - from, wall.inward) / denominator;
    if (along > 0 && share >= 0 && share <= 1) nearest = std::min(nearest, along);
  }
  return std::isfinite(nearest) ? nearest : 0;
}

}  // namespace

BayPose startingPose(const Room& room, const Frame& frame) {
  const std::vector<WallLine> walls = wallLines(room);
  const WallLine* best = nullptr;
  double bestDepth = 0;
  bool bestIsWide = false;
  for (const WallLine& wall : walls) {
    const double depth = depthBefore(wall, walls);
    const bool isWide = wall.length > frame.width;
    if (best && (isWide < bestIsWide || (isWide == bestIsWide && depth <= bestDepth))) continue;
    best = &wall;
    bestDepth = depth;
    bestIsWide = isWide;
  }
  if (!best) return {};
  const Vec2 middle = 0.5 * (best->start + best->end);
  const double back = std::min(frame.behindScreen + kStartBehind, bestDepth / 2);
  return {middle + back * best->inward, std::atan2(-best->inward.y(), -best->inward.x())};
}

}  // namespace baywright
