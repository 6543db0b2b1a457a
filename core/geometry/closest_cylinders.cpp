// SPDX-License-Identifier: Apache-2.0
// Two cylinders. Their rims can meet in any direction, so a gap is found by nearing steps and an overlap by
// bounding directions; the closed forms below are those of all other contacts.
#include <cmath>

#include "geometry/closest.h"
#include "geometry/detail/cylinder_math.h"
#include "geometry/detail/shallowest_direction.h"

namespace baywright {

namespace {

using detail::CylinderFrame;
using detail::Farthest;
using detail::NearestPair;
using detail::Separation;

/// Share of the size to which both searches run.
constexpr double kSearch = 1e-10;
/// Share of the size that is rounding: a search to this goes on until no step helps.
constexpr double kRounding = 1e-16;

Farthest farthestOf(const CylinderFrame& c) {
  return [&c](const Vec3& direction) { return detail::farthestAlong(c, direction); };
}

/// Contacts of an end, of two sides, and of a side with a rim.
Separation closedForms(const CylinderFrame& first, const CylinderFrame& second) {
  Separation best;
  const auto offer = [&](const Vec3& n) {
    best.offer(-detail::reachAlong(first, -n) - detail::reachAlong(second, n), n);
    best.offer(-detail::reachAlong(first, n) - detail::reachAlong(second, -n), -n);
  };
  offer(first.axis);
  offer(second.axis);
  const Vec3 across = detail::commonPerpendicular(first.axis, second.axis);
  if (!across.isZero()) {
    offer(across);
  } else {
    const Vec3 between = detail::perpendicularPart(first.middle - second.middle, second.axis);
    offer(between.norm() > 0 ? Vec3(between.normalized()) : detail::anyPerpendicular(second.axis));
  }
  const detail::ShadowNormals secondRims(second, first.axis, first.middle);
  for (const Vec3& normal : secondRims.all()) offer(normal);
  const detail::ShadowNormals firstRims(first, second.axis, second.middle);
  for (const Vec3& normal : firstRims.all()) offer(normal);
  return best;
}

/// The point of the second cylinder at which the first, moved out, will touch it.
Vec3 touchOf(const CylinderFrame& first, const CylinderFrame& second, const Separation& out, double size) {
  const Vec3 touch = detail::farthestAlong(second, out.normal);
  const Vec3 inner = detail::farthestAlong(first, -out.normal);
  // Rim to rim each has one farthest point. A flat side or end has many, of which the nearest steps find a
  // common one.
  if ((touch - inner + out.gap * out.normal).norm() <= kClosestRelativeError * size) return touch;
  CylinderFrame moved = first;
  moved.middle += (second.radius + second.halfLength - out.gap) * out.normal;
  return detail::nearestPairOfConvex(farthestOf(moved), farthestOf(second), kRounding * size).onSecond;
}

}  // namespace

Closest closest(const Cylinder& first, const Cylinder& second) {
  const CylinderFrame a(first);
  const CylinderFrame b(second);
  const double size = std::max(detail::sizeOf(a), detail::sizeOf(b));
  const NearestPair pair = detail::nearestPairOfConvex(farthestOf(a), farthestOf(b), kSearch * size);
  if (pair.squared > 0) return detail::closestFrom(pair, size, b.axis);

  const Separation best =
      detail::shallowestDirection(farthestOf(a), farthestOf(b), closedForms(a, b), kSearch * size);
  return detail::overlapFrom(-best.gap, best.normal, touchOf(a, b, best, size));
}

}  // namespace baywright
