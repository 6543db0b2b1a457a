// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <limits>
#include <span>

#include "geometry/shapes.h"

namespace baywright {

/// Box with sides along the axes, from corner `low` to corner `high`, both included. The default is empty
/// (low above high): joining anything to it gives that thing.
struct Aabb3 {
  Vec3 low = Vec3::Constant(std::numeric_limits<double>::infinity());
  Vec3 high = Vec3::Constant(-std::numeric_limits<double>::infinity());

  bool operator==(const Aabb3&) const = default;

  bool empty() const { return (low.array() > high.array()).any(); }
  Vec3 centre() const { return 0.5 * (low + high); }
  Vec3 size() const { return high - low; }
};

/// The smallest box that holds both.
Aabb3 joined(const Aabb3& first, const Aabb3& second);

/// The smallest box that holds the shape (exact up to rounding).
Aabb3 boundsOf(std::span<const Vec3> points);
Aabb3 boundsOf(const Segment3& segment);
Aabb3 boundsOf(const Capsule& capsule);
Aabb3 boundsOf(const Triangle& triangle);
Aabb3 boundsOf(const Cylinder& cylinder);

}  // namespace baywright
