// SPDX-License-Identifier: Apache-2.0
// Segments, capsules and bounding boxes.
#include <algorithm>
#include <cmath>

#include "geometry/closest.h"
#include "geometry/detail/nearest_pair.h"

namespace baywright {

Closest reversed(const Closest& closest) {
  return {closest.distance, closest.onSecond, closest.onFirst, -closest.escape};
}

namespace {

/// A way to part two segments that touch: across both; across the longer where they are parallel; up for two
/// points.
Vec3 partingNormal(const Vec3& u, const Vec3& v) {
  const Vec3 normal = detail::commonPerpendicular(u, v);
  if (!normal.isZero()) return normal;
  const Vec3& longer = u.squaredNorm() >= v.squaredNorm() ? u : v;
  return longer.isZero() ? Vec3(Vec3::UnitZ()) : detail::anyPerpendicular(longer);
}

}  // namespace

Closest closest(const Segment3& first, const Segment3& second) {
  const detail::NearestPair pair = detail::nearestPair(first, second);
  const double size = std::max(detail::sizeOf(first), detail::sizeOf(second));
  if (pair.squared > std::pow(detail::kTouching * size, 2))
    return detail::closestFrom(pair, size, Vec3::Zero());
  return detail::closestFrom(pair, size, partingNormal(first.b - first.a, second.b - second.a));
}

Closest closest(const Capsule& first, const Capsule& second) {
  const Closest core = closest(first.core(), second.core());
  return reversed(detail::grown(reversed(detail::grown(core, first.radius)), second.radius));
}

double lowerBound(const Capsule& capsule, const Aabb3& box) {
  const Aabb3 core = boundsOf(capsule.core());
  const Eigen::Array3d gap = (core.low - box.high).cwiseMax(box.low - core.high);
  const double widest = gap.maxCoeff();
  // Apart along some axis: the boxes' distance. Otherwise the shallowest axis bounds the depth of whatever is
  // inside.
  const double between = widest > 0 ? gap.max(0).matrix().norm() : widest;
  return between - capsule.radius;
}

}  // namespace baywright
