// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "geometry/closest.h"
#include "geometry/detail/nearest_pair.h"

namespace baywright {

namespace {

/// Edges and normal of a triangle whose longest edge comes first: the plane of a sliver is then as exact as
/// its corners allow.
struct TrianglePlane {
  Triangle corners;
  Vec3 normal = Vec3::Zero();  ///< unit, zero for a triangle without area
};

TrianglePlane planeOf(const Triangle& t) {
  const double ab = (t.b - t.a).squaredNorm();
  const double bc = (t.c - t.b).squaredNorm();
  const double ca = (t.a - t.c).squaredNorm();
  TrianglePlane plane{t};
  if (bc > ab && bc >= ca) {
    plane.corners = {t.b, t.c, t.a};
  } else if (ca > ab && ca > bc) {
    plane.corners = {t.c, t.a, t.b};
  }
  const Vec3 longest = plane.corners.b - plane.corners.a;
  const Vec3 other = plane.corners.c - plane.corners.a;
  const Vec3 rough = longest.cross(other);
  const double scale = longest.squaredNorm();
  if (!(rough.squaredNorm() > detail::kParallel * detail::kParallel * scale * other.squaredNorm()))
    return plane;
  // Made perpendicular once more: the cross product of a sliver leans along its longest edge by rounding.
  plane.normal = (rough - longest * (rough.dot(longest) / scale)).normalized();
  return plane;
}

bool containsFoot(const TrianglePlane& plane, const Vec3& p) {
  const auto& [a, b, c] = plane.corners;
  const auto leftOf = [&](const Vec3& from, const Vec3& to) {
    return plane.normal.dot((to - from).cross(p - from)) >= 0;
  };
  return leftOf(a, b) && leftOf(b, c) && leftOf(c, a);
}

/// Heights of the segment's ends over the plane.
struct Heights {
  double a = 0;
  double b = 0;
};

Heights heightsOver(const TrianglePlane& plane, const Segment3& s) {
  return {plane.normal.dot(s.a - plane.corners.a), plane.normal.dot(s.b - plane.corners.a)};
}

void offerFace(detail::NearestPair& best, const Segment3& s, const TrianglePlane& plane,
               const Heights& height) {
  if (containsFoot(plane, s.a)) best.offer(s.a, s.a - height.a * plane.normal);
  if (containsFoot(plane, s.b)) best.offer(s.b, s.b - height.b * plane.normal);
  if ((height.a < 0) == (height.b < 0)) return;
  const Vec3 through = s.a + (s.b - s.a) * (height.a / (height.a - height.b));
  if (containsFoot(plane, through)) best.offer(through, through);
}

}  // namespace

Closest closest(const Segment3& first, const Triangle& second) {
  const TrianglePlane plane = planeOf(second);
  const auto& [a, b, c] = plane.corners;
  // Without area the longest edge is the whole triangle.
  if (plane.normal == Vec3::Zero()) return closest(first, Segment3{a, b});

  const detail::SegmentProbe probe(first);
  detail::NearestPair best;
  for (const Vec3& corner : {a, b, c}) probe.offerVertex(best, corner);
  probe.offerEdge(best, a, b);
  probe.offerEdge(best, b, c);
  probe.offerEdge(best, c, a);
  const double size = std::max({detail::sizeOf(first), detail::sizeOf({a, b}), c.cwiseAbs().maxCoeff()});
  const Heights height = heightsOver(plane, first);
  offerFace(best, first, plane, height);
  const bool mostlyAbove = std::max(height.a, height.b) >= -std::min(height.a, height.b);
  return detail::closestFrom(best, size, mostlyAbove ? plane.normal : Vec3(-plane.normal));
}

Closest closest(const Capsule& first, const Triangle& second) {
  return detail::grown(closest(first.core(), second), first.radius);
}

}  // namespace baywright
