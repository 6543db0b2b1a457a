// SPDX-License-Identifier: Apache-2.0
// Polyhedra against segments, capsules and each other. A gap is the least distance over pairs of features; an
// overlap is found by separating axes, which are exact here: the Minkowski difference of the two shapes has
// no other faces.
#include <algorithm>

#include "geometry/closest.h"
#include "geometry/detail/polyhedron_pair.h"

namespace baywright {

namespace {

using detail::NearestPair;
using detail::Separation;

Segment3 shifted(const Segment3& s, const Vec3& by) {
  return {s.a + by, s.b + by};
}

ConvexPolyhedron shifted(const ConvexPolyhedron& body, const Vec3& by) {
  return transformed(body, {Mat3::Identity(), by});
}

Separation separationOf(const Segment3& segment, const ConvexPolyhedron& body) {
  Separation best;
  for (const ConvexPolyhedron::Face& face : body.faces()) {
    best.offer(detail::spanOf(segment, face.normal).low - face.offset, face.normal);
  }
  if (best.gap > 0) return best;  // parted: the exact gap needs no more directions
  const Vec3 along = segment.b - segment.a;
  for (const Vec3& axis : body.edgeAxes()) {
    const Vec3 normal = detail::commonPerpendicular(axis, along);
    if (!normal.isZero()) best.offer(detail::spanOf(segment, normal), detail::spanOf(body, normal), normal);
  }
  return best;
}

Separation separationOf(const ConvexPolyhedron& first, const ConvexPolyhedron& second) {
  Separation best;
  const auto offer = [&](const Vec3& normal) {
    best.offer(detail::spanOf(first, normal), detail::spanOf(second, normal), normal);
  };
  for (const Vec3& axis : first.faceAxes()) offer(axis);
  for (const Vec3& axis : second.faceAxes()) offer(axis);
  if (best.gap > 0) return best;
  for (const Vec3& a : first.edgeAxes()) {
    for (const Vec3& b : second.edgeAxes()) {
      const Vec3 normal = detail::commonPerpendicular(a, b);
      if (!normal.isZero()) offer(normal);
    }
  }
  return best;
}

template <class Shape>
Closest signedClosest(const Shape& first, const ConvexPolyhedron& second) {
  const double size = std::max(detail::sizeOf(first), detail::sizeOf(second));
  const Separation best = separationOf(first, second);
  if (best.gap > 0) {
    const NearestPair pair = detail::nearestPair(first, second, best.gap);
    // A gap that is mere rounding may leave no face facing the other shape; then they touch.
    if (pair.found()) return detail::closestFrom(pair, size, best.normal);
  }

  // Moved out along the escape until well clear, the shapes are nearest where they will touch.
  const double clear = -best.gap + second.bounds().size().maxCoeff();
  const NearestPair touch =
      detail::nearestPair(shifted(first, clear * best.normal), second, clear + best.gap);
  return detail::overlapFrom(-best.gap, best.normal, touch.onSecond);
}

}  // namespace

Closest closest(const Capsule& first, const ConvexPolyhedron& second) {
  return detail::grown(signedClosest(first.core(), second), first.radius);
}

Closest closest(const ConvexPolyhedron& first, const ConvexPolyhedron& second) {
  return signedClosest(first, second);
}

}  // namespace baywright
