// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/nearest_pair.h"

#include <algorithm>
#include <cmath>

namespace baywright::detail {

Vec3 anyPerpendicular(const Vec3& v) {
  Eigen::Index flattest = 0;
  v.cwiseAbs().minCoeff(&flattest);
  return v.cross(Vec3::Unit(flattest)).normalized();
}

Vec3 commonPerpendicular(const Vec3& u, const Vec3& v) {
  const double lengthU = u.norm();
  const double lengthV = v.norm();
  if (!(lengthU > 0) || !(lengthV > 0)) return Vec3::Zero();
  const Vec3 axis = u / lengthU;
  const Vec3 across = perpendicularPart(v / lengthV, axis);
  const double sine = across.norm();
  if (sine <= kParallel) return Vec3::Zero();
  return axis.cross(across / sine).normalized();
}

Vec3 nearestOn(const Segment3& segment, const Vec3& p) {
  const Vec3 along = segment.b - segment.a;
  const double reach = along.dot(p - segment.a);
  if (!(reach > 0)) return segment.a;
  const double squared = along.squaredNorm();
  if (reach >= squared) return segment.b;
  return segment.a + along * (reach / squared);
}

namespace {

/// The point where the lines are nearest, if it lies within both segments and they are not parallel. In the
/// plane across `first`, second's line must pass the origin at a right angle: that form loses no digits at
/// small angles.
void offerInterior(NearestPair& best, const Segment3& first, const Segment3& second) {
  const Vec3 u = first.b - first.a;
  const Vec3 v = second.b - second.a;
  const double squaredU = u.squaredNorm();
  if (!(squaredU > 0)) return;
  const Vec3 axis = u / std::sqrt(squaredU);
  const Vec3 across = perpendicularPart(v, axis);
  const double squaredAcross = across.squaredNorm();
  if (!(squaredAcross > kParallel * kParallel * v.squaredNorm())) return;
  const double t = across.dot(first.a - second.a) / squaredAcross;
  if (!(t > 0 && t < 1)) return;
  const Vec3 onSecond = second.a + t * v;
  const double s = u.dot(onSecond - first.a) / squaredU;
  if (!(s > 0 && s < 1)) return;
  best.offer(first.a + s * u, onSecond);
}

}  // namespace

NearestPair nearestPair(const Segment3& first, const Segment3& second) {
  NearestPair best;
  best.offer(first.a, nearestOn(second, first.a));
  best.offer(first.b, nearestOn(second, first.b));
  best.offer(nearestOn(first, second.a), second.a);
  best.offer(nearestOn(first, second.b), second.b);
  offerInterior(best, first, second);
  return best;
}

Closest closestFrom(const NearestPair& pair, double size, const Vec3& normal) {
  const Vec3 apart = pair.onFirst - pair.onSecond;
  const double distance = std::sqrt(pair.squared);
  if (distance > kTouching * size) return {distance, pair.onFirst, pair.onSecond, apart / distance};
  return {distance, pair.onFirst, pair.onSecond, normal};
}

Closest overlapFrom(double depth, const Vec3& escape, const Vec3& onSecond) {
  return {-depth, onSecond - depth * escape, onSecond, escape};
}

Closest grown(const Closest& core, double radius) {
  return {core.distance - radius, core.onFirst - radius * core.escape, core.onSecond, core.escape};
}

}  // namespace baywright::detail
