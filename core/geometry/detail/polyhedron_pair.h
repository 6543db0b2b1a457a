// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>

#include "geometry/detail/nearest_pair.h"

namespace baywright::detail {

/// Where a shape stands along a direction.
struct Span {
  double low = 0;
  double high = 0;
};
Span spanOf(const ConvexPolyhedron& body, const Vec3& direction);
inline Span spanOf(const Segment3& s, const Vec3& direction) {
  const double a = direction.dot(s.a);
  const double b = direction.dot(s.b);
  return {std::min(a, b), std::max(a, b)};
}

/// The direction in which a first shape stands clearest of a second: `gap` is the width of the empty slab
/// between them, or the negative overlap; `normal` points from the second to the first.
struct Separation {
  double gap = -std::numeric_limits<double>::infinity();
  Vec3 normal = Vec3::UnitZ();

  void offer(double otherGap, const Vec3& otherNormal) {
    if (otherGap > gap) *this = {otherGap, otherNormal};
  }
  /// Both ways along a direction.
  void offer(const Span& first, const Span& second, const Vec3& direction) {
    offer(first.low - second.high, direction);
    offer(second.low - first.high, -direction);
  }
};

/// The faces of a body that another shape stands in front of. The nearest point of the body lies on one of
/// them: the way from there to the shape has a part along the normal of some face that it lies on.
class FacingFaces {
 public:
  /// `reach(normal)` is how far the shape extends along a direction.
  template <class Reach>
  FacingFaces(const ConvexPolyhedron& body, const Reach& reach) : body_(body) {
    const std::size_t size = std::min(body.faces().size(), kMost);
    for (std::size_t i = 0; i < size; ++i) {
      const ConvexPolyhedron::Face& face = body.faces()[i];
      if (!(reach(face.normal) > face.offset)) hidden_ |= std::uint64_t{1} << i;
    }
  }

  bool has(int face) const {
    return static_cast<std::size_t>(face) >= kMost || !(hidden_ >> static_cast<unsigned>(face) & 1);
  }
  template <class Visit>
  void forEachFace(const Visit& visit) const {
    for (std::size_t i = 0; i < body_.faces().size(); ++i) {
      if (has(static_cast<int>(i))) visit(body_.faces()[i]);
    }
  }
  template <class Visit>
  void forEachEdge(const Visit& visit) const {
    for (const ConvexPolyhedron::Edge& edge : body_.edges()) {
      if (has(edge.left) || has(edge.right)) visit(body_.vertex(edge.from), body_.vertex(edge.to));
    }
  }

 private:
  static constexpr std::size_t kMost = 64;  // faces beyond are simply looked at

  const ConvexPolyhedron& body_;
  std::uint64_t hidden_ = 0;
};

/// Feet of points on a face.
struct FaceFoot {
  const ConvexPolyhedron& body;
  const ConvexPolyhedron::Face& face;

  bool contains(const Vec3& p) const;
  Vec3 of(const Vec3& p) const { return p - (face.normal.dot(p) - face.offset) * face.normal; }
};

/// Nearest points of shapes that do not overlap, known to be at least `gap` apart: a pair as near as that
/// ends the search.
NearestPair nearestPair(const Segment3& segment, const ConvexPolyhedron& body, double gap);
NearestPair nearestPair(const ConvexPolyhedron& first, const ConvexPolyhedron& second, double gap);

/// Largest absolute coordinate.
inline double sizeOf(const ConvexPolyhedron& body) {
  return std::max(body.bounds().low.cwiseAbs().maxCoeff(), body.bounds().high.cwiseAbs().maxCoeff());
}

}  // namespace baywright::detail
