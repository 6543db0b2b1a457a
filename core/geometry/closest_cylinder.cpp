// SPDX-License-Identifier: Apache-2.0
// Capsules and cylinders. A gap is the root of a monotone slope along the core. In an overlap the nearest
// point of the boundary of the Minkowski difference has one normal only (the largest ball inside touches
// there), and only these are normals of just one point: both ends', those across the axis, and those across
// the core that touch a rim.
#include <cmath>

#include "geometry/closest.h"
#include "geometry/detail/cylinder_math.h"
#include "geometry/detail/polyhedron_pair.h"

namespace baywright {

namespace {

using detail::CylinderFrame;
using detail::Separation;

/// Least overlaps across the axis: seen along it, a disc and a segment.
void offerAcrossAxis(Separation& best, const Segment3& core, const CylinderFrame& c, double size) {
  const auto offer = [&](const Vec3& n) {
    best.offer(detail::spanOf(core, n).low - detail::reachAlong(c, n), n);
  };
  const Vec3 a = detail::perpendicularPart(core.a - c.middle, c.axis);
  const Vec3 b = detail::perpendicularPart(core.b - c.middle, c.axis);
  const Vec3 nearest = detail::perpendicularPart(detail::nearestOn({a, b}, Vec3::Zero()), c.axis);
  const double off = nearest.norm();
  if (off > detail::kTouching * size) offer(nearest / off);
  const Vec3 across = detail::commonPerpendicular(c.axis, core.b - core.a);
  const Vec3 sideways = across.isZero() ? detail::anyPerpendicular(c.axis) : across;
  offer(sideways);
  offer(-sideways);
}

Separation overlapOf(const Segment3& core, const CylinderFrame& c, double size) {
  Separation best;
  const auto offer = [&](const Vec3& n) {
    best.offer(detail::spanOf(core, n).low - detail::reachAlong(c, n), n);
  };
  offer(c.axis);
  offer(-c.axis);
  offerAcrossAxis(best, core, c, size);
  const detail::ShadowNormals rims(c, core.b - core.a, core.a);
  for (const Vec3& normal : rims.all()) offer(normal);
  return best;
}

}  // namespace

Closest closest(const Capsule& first, const Cylinder& second) {
  const Segment3 core = first.core();
  const CylinderFrame c(second);
  const double size = std::max(detail::sizeOf(core), detail::sizeOf(c));
  const detail::NearestPair pair = detail::nearestPair(core, c);
  if (pair.squared > std::pow(detail::kTouching * size, 2)) {
    return detail::grown(detail::closestFrom(pair, size, c.axis), first.radius);
  }
  const Separation best = overlapOf(core, c, size);
  // Moved out along the escape until well clear, the shapes are nearest where they will touch.
  const Vec3 out = (c.radius + c.halfLength - best.gap) * best.normal;
  const detail::NearestPair touch = detail::nearestPair({core.a + out, core.b + out}, c);
  return detail::grown(detail::overlapFrom(-best.gap, best.normal, touch.onSecond), first.radius);
}

}  // namespace baywright
