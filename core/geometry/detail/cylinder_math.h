// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <span>

#include "geometry/detail/nearest_pair.h"

namespace baywright::detail {

/// A cylinder as its middle, unit axis and half length.
struct CylinderFrame {
  explicit CylinderFrame(const Cylinder& cylinder);

  Vec3 middle;
  Vec3 axis;
  double halfLength;
  double radius;
};

/// Largest absolute coordinate.
double sizeOf(const CylinderFrame& c);

/// The point of the solid nearest to p: p itself when inside.
Vec3 nearestIn(const CylinderFrame& c, const Vec3& p);

/// How far the solid reaches along a unit direction, from the frame's origin, and a point that reaches so
/// far.
double reachAlong(const CylinderFrame& c, const Vec3& direction);
Vec3 farthestAlong(const CylinderFrame& c, const Vec3& direction);

/// The generator on the side to which `direction` points: its ends lie on the two rims. The axis itself when
/// direction is along it.
Segment3 generatorTowards(const CylinderFrame& c, const Vec3& direction);

/// Nearest points of the segment and the solid; distance zero when they overlap.
NearestPair nearestPair(const Segment3& segment, const CylinderFrame& c);

/// Unit directions at a right angle to `line` in which the solid, pushed past the line through `through`, has
/// a locally shortest way to go by way of a rim: where its shadow along the line has the round part of its
/// outline nearest to the line's shadow. With the two directions across line and axis, where the outline is
/// straight, they hold the global minimum of reachAlong(c, n) - n.dot(through) over such n. Empty when line
/// and axis are parallel.
class ShadowNormals {
 public:
  ShadowNormals(const CylinderFrame& c, const Vec3& line, const Vec3& through);

  std::span<const Vec3> all() const { return {normals_.data(), count_}; }

 private:
  std::array<Vec3, 2> normals_;
  std::size_t count_ = 0;
};

}  // namespace baywright::detail
