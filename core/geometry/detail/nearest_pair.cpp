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

SegmentProbe::SegmentProbe(const Segment3& segment)
    : segment_(segment), along_(segment.b - segment.a), squared_(along_.squaredNorm()) {
  if (squared_ > 0) axis_ = along_ / std::sqrt(squared_);
}

void SegmentProbe::offerEnds(NearestPair& best, const Vec3& from, const Vec3& along, double squared) const {
  for (const Vec3& end : {segment_.a, segment_.b}) {
    const double reach = along.dot(end - from);
    if (reach > 0 && reach < squared) best.offer(end, from + along * (reach / squared));
  }
}

void SegmentProbe::offerEdge(NearestPair& best, const Vec3& from, const Vec3& to) const {
  const Vec3 along = to - from;
  const double squared = along.squaredNorm();
  offerEnds(best, from, along, squared);
  // Where both are nearest within. In the plane across our axis the edge must pass the origin at a right
  // angle: that form loses no digits at small angles.
  const Vec3 across = perpendicularPart(along, axis_);
  const double squaredAcross = across.squaredNorm();
  if (!(squared_ > 0 && squaredAcross > kParallel * kParallel * squared)) return;
  const double t = across.dot(segment_.a - from);
  if (!(t > 0 && t < squaredAcross)) return;
  const Vec3 onEdge = from + (t / squaredAcross) * along;
  const double s = along_.dot(onEdge - segment_.a);
  if (!(s > 0 && s < squared_)) return;
  best.offer(segment_.a + (s / squared_) * along_, onEdge);
}

NearestPair nearestPair(const Segment3& first, const Segment3& second) {
  const SegmentProbe probe(first);
  NearestPair best;
  probe.offerVertex(best, second.a);
  probe.offerVertex(best, second.b);
  probe.offerEdge(best, second.a, second.b);
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
