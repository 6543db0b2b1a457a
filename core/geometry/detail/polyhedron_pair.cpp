// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/polyhedron_pair.h"

namespace baywright::detail {

Span spanOf(const ConvexPolyhedron& body, const Vec3& direction) {
  Span span{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
  for (const Vec3& p : body.vertices()) {
    const double at = direction.dot(p);
    span.low = std::min(span.low, at);
    span.high = std::max(span.high, at);
  }
  return span;
}

bool FaceFoot::contains(const Vec3& p) const {
  const auto loop = body.corners(face);
  const Vec3* from = &body.vertex(loop.back());
  for (const int corner : loop) {
    const Vec3* to = &body.vertex(corner);
    if (face.normal.dot((*to - *from).cross(p - *from)) < 0) return false;
    from = to;
  }
  return true;
}

namespace {

/// Whether a pair found is as near as can be, but for rounding.
bool reaches(const NearestPair& pair, double gap) {
  return pair.squared <= gap * gap * (1 + 2 * kTouching);
}

}  // namespace

NearestPair nearestPair(const Segment3& segment, const ConvexPolyhedron& body, double gap) {
  const FacingFaces facing(body, [&](const Vec3& n) { return spanOf(segment, n).high; });
  NearestPair best;
  facing.forEachFace([&](const ConvexPolyhedron::Face& face) {
    const FaceFoot foot{body, face};
    for (const Vec3& end : {segment.a, segment.b}) {
      if (face.normal.dot(end) >= face.offset && foot.contains(end)) best.offer(end, foot.of(end));
    }
  });
  if (reaches(best, gap)) return best;
  const SegmentProbe probe(segment);
  facing.forEachEdge([&](const Vec3& from, const Vec3& to) { probe.offerEdge(best, from, to); });
  for (const Vec3& vertex : body.vertices()) probe.offerVertex(best, vertex);
  return best;
}

namespace {

/// Pairs of a vertex of `first` and the inside of a face of `second`.
void offerFeet(NearestPair& best, const ConvexPolyhedron& first, const ConvexPolyhedron& second,
               const FacingFaces& facing) {
  facing.forEachFace([&](const ConvexPolyhedron::Face& face) {
    const FaceFoot foot{second, face};
    for (const Vec3& p : first.vertices()) {
      const double height = face.normal.dot(p) - face.offset;
      if (height >= 0 && height * height < best.squared && foot.contains(p)) best.offer(p, foot.of(p));
    }
  });
}

}  // namespace

NearestPair nearestPair(const ConvexPolyhedron& first, const ConvexPolyhedron& second, double gap) {
  const FacingFaces ofFirst(first, [&](const Vec3& n) { return spanOf(second, n).high; });
  const FacingFaces ofSecond(second, [&](const Vec3& n) { return spanOf(first, n).high; });
  NearestPair best;
  offerFeet(best, second, first, ofFirst);
  std::swap(best.onFirst, best.onSecond);
  offerFeet(best, first, second, ofSecond);
  if (reaches(best, gap)) return best;
  ofFirst.forEachEdge([&](const Vec3& a, const Vec3& b) {
    const SegmentProbe probe({a, b});
    ofSecond.forEachEdge([&](const Vec3& from, const Vec3& to) { probe.offerEdge(best, from, to); });
    for (const Vec3& vertex : second.vertices()) probe.offerVertex(best, vertex);
  });
  return best;
}

}  // namespace baywright::detail
