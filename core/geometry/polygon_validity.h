// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace baywright {

/// Two edges that meet where they should not. Rings: 0 is outer, i + 1 is holes[i].
struct EdgeCrossing {
  int firstRing = 0;
  int firstEdge = 0;
  int secondRing = 0;
  int secondEdge = 0;
  Vec2 point = Vec2::Zero();  ///< a common point; the middle of the common piece where they overlap

  bool operator==(const EdgeCrossing&) const = default;
};

/// Every pair of edges that has a common point other than a shared corner of neighbours: crossings, touches,
/// overlaps, spikes that fold back. In order of first ring and edge.
std::vector<EdgeCrossing> selfCrossings(const Polygon& polygon);

/// Smallest area of a region, square metres: a square of a hundredth of a millimetre. Below it there is none.
inline constexpr double kMinimumArea = 1e-10;

/// Nothing, or why the polygon is no region: too few corners, numbers that are not finite, repeated corners,
/// edges that cross (named from 1, with the place), no area, holes outside or inside each other.
Result<void> validated(const Polygon& polygon);

}  // namespace baywright
