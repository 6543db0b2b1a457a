// SPDX-License-Identifier: Apache-2.0
#include "geometry/bounds.h"

#include <cmath>

namespace baywright {

Aabb3 joined(const Aabb3& first, const Aabb3& second) {
  return {first.low.cwiseMin(second.low), first.high.cwiseMax(second.high)};
}

Aabb3 boundsOf(std::span<const Vec3> points) {
  Aabb3 box;
  for (const Vec3& p : points) box = joined(box, {p, p});
  return box;
}

Aabb3 boundsOf(const Segment3& segment) {
  return {segment.a.cwiseMin(segment.b), segment.a.cwiseMax(segment.b)};
}

Aabb3 boundsOf(const Capsule& capsule) {
  const Aabb3 core = boundsOf(capsule.core());
  const Vec3 reach = Vec3::Constant(capsule.radius);
  return {core.low - reach, core.high + reach};
}

Aabb3 boundsOf(const Triangle& triangle) {
  return joined(boundsOf(Segment3{triangle.a, triangle.b}), {triangle.c, triangle.c});
}

Aabb3 boundsOf(const Cylinder& cylinder) {
  const Vec3 axis = (cylinder.b - cylinder.a).normalized();
  // A disc with normal n reaches radius * sqrt(1 - n_i^2) along axis i.
  const Vec3 reach = cylinder.radius * (1 - axis.array().square()).max(0).sqrt().matrix();
  const Aabb3 core = boundsOf(Segment3{cylinder.a, cylinder.b});
  return {core.low - reach, core.high + reach};
}

}  // namespace baywright
