// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "geometry/shapes.h"

namespace baywright::detail {

inline Segment2 edgeOf(std::span<const Vec2> ring, std::size_t index) {
  return {ring[index], ring[index + 1 == ring.size() ? 0 : index + 1]};
}

struct PlanPair {
  double distance = 0;
  Vec2 onFirst = Vec2::Zero();
  Vec2 onSecond = Vec2::Zero();
};

/// Nearest points of two segments on the plan; distance zero where they cross.
PlanPair nearestPair(const Segment2& first, const Segment2& second);

/// Share of the way from segment.a to segment.b, 0..1, of the point nearest to p; 0 for a point.
double nearestShare(const Segment2& segment, const Vec2& p);

}  // namespace baywright::detail
