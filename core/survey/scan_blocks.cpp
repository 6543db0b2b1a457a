// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_blocks.h"

#include <algorithm>

namespace baywright {
namespace {

// Wardrobes and fitted cupboards (common practice, no source), metres.
constexpr double kShallowest = 0.20;
constexpr double kDeepest = 0.80;
constexpr double kWidest = 3.0;

bool isDepth(double length) {
  return length >= kShallowest && length <= kDeepest;
}

}  // namespace

std::vector<ScanBlock> blocksOf(const ScanOutline& outline) {
  const std::size_t n = outline.corners.size();
  const auto corner = [&](std::size_t i) -> const Vec2& { return outline.corners[i % n]; };
  const auto lengthOf = [&](std::size_t side) { return (corner(side + 1) - corner(side)).norm(); };
  const auto standsOut = [&](std::size_t i) {  // the room goes round the corner
    return cross(corner(i) - corner(i + n - 1), corner(i + 1) - corner(i)) < 0;
  };
  std::vector<ScanBlock> blocks;
  if (n < 6) return blocks;
  for (std::size_t i = 0; i < n; ++i) {
    if (standsOut(i) || !standsOut(i + 1)) continue;
    if (!standsOut(i + 2)) {
      const double depth = std::min(lengthOf(i), lengthOf(i + 1));
      const double width = std::max(lengthOf(i), lengthOf(i + 1));
      if (isDepth(depth) && width <= kWidest) blocks.push_back({i, (i + 1) % n, depth, width});
    } else if (!standsOut(i + 3)) {
      const double depth = 0.5 * (lengthOf(i) + lengthOf(i + 2));
      if (isDepth(depth) && lengthOf(i + 1) <= kWidest)
        blocks.push_back({i, (i + 2) % n, depth, lengthOf(i + 1)});
    }
  }
  return blocks;
}

}  // namespace baywright
