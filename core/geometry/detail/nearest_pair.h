// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <limits>

#include "geometry/closest.h"

/// Building blocks of closest(): nearest points without a sign.
namespace baywright::detail {

/// Below this share of the lengths involved two directions count as parallel. Treating them so moves a
/// distance by at most half this share; above it commonPerpendicular is still exact enough.
inline constexpr double kParallel = 1e-12;

/// Shapes nearer than this share of their size touch: the difference of their witnesses is rounding and has
/// no direction, so it is taken from the faces instead.
inline constexpr double kTouching = 1e-12;

struct NearestPair {
  double squared = std::numeric_limits<double>::infinity();  ///< of the distance
  Vec3 onFirst = Vec3::Zero();
  Vec3 onSecond = Vec3::Zero();

  bool found() const { return squared < std::numeric_limits<double>::infinity(); }
  void offer(const Vec3& first, const Vec3& second) {
    const double other = (first - second).squaredNorm();
    if (other < squared) *this = {other, first, second};
  }
  void offer(const NearestPair& other) {
    if (other.squared < squared) *this = other;
  }
};

/// Largest absolute coordinate.
inline double sizeOf(const Segment3& s) {
  return std::max(s.a.cwiseAbs().maxCoeff(), s.b.cwiseAbs().maxCoeff());
}

/// A unit vector at a right angle to v (any v but zero), always the same one.
Vec3 anyPerpendicular(const Vec3& v);

/// The part of v at a right angle to the unit vector `axis`, taken twice: it is perpendicular to rounding
/// even when v is almost parallel to axis, where the usual cross product is not.
inline Vec3 perpendicularPart(const Vec3& v, const Vec3& axis) {
  const Vec3 once = v - axis * v.dot(axis);
  return once - axis * once.dot(axis);
}

/// Unit vector at right angles to both, or zero when they are parallel or one is zero.
Vec3 commonPerpendicular(const Vec3& u, const Vec3& v);

/// Nearest point of the segment.
Vec3 nearestOn(const Segment3& segment, const Vec3& p);

NearestPair nearestPair(const Segment3& first, const Segment3& second);

/// A segment that is held against many edges, with what it needs for each computed once. Its nearest points
/// to a shape with straight edges lie at a vertex of the shape, on one of its edges, or in a face.
class SegmentProbe {
 public:
  explicit SegmentProbe(const Segment3& segment);

  void offerVertex(NearestPair& best, const Vec3& vertex) const {
    best.offer(nearestOn(segment_, vertex), vertex);
  }
  /// Pairs within the edge; its ends are for offerVertex.
  void offerEdge(NearestPair& best, const Vec3& from, const Vec3& to) const;

 private:
  void offerEnds(NearestPair& best, const Vec3& from, const Vec3& along, double squared) const;

  Segment3 segment_;
  Vec3 along_;
  Vec3 axis_ = Vec3::Zero();  ///< unit; zero for a point
  double squared_;
};

/// A gap's answer from its witnesses; when they touch, escape is `normal` (unit, from second to first).
Closest closestFrom(const NearestPair& pair, double size, const Vec3& normal);

/// An overlap's answer from the depth along `escape` and the point of the second shape at which they would
/// touch.
Closest overlapFrom(double depth, const Vec3& escape, const Vec3& onSecond);

/// The answer for a first shape grown by `radius`.
Closest grown(const Closest& core, double radius);

}  // namespace baywright::detail
