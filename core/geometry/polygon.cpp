// SPDX-License-Identifier: Apache-2.0
#include "geometry/polygon.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "geometry/detail/ring_edges.h"

namespace baywright {

double signedArea(std::span<const Vec2> ring) {
  if (ring.size() < 3) return 0;
  double twice = 0;
  // Taken about the first corner, so that a room far from the origin loses no digits.
  for (std::size_t i = 1; i + 1 < ring.size(); ++i) twice += cross(ring[i] - ring[0], ring[i + 1] - ring[0]);
  return 0.5 * twice;
}

double area(const Polygon& polygon) {
  double sum = std::abs(signedArea(polygon.outer));
  for (const Ring& hole : polygon.holes) sum -= std::abs(signedArea(hole));
  return sum;
}

double perimeter(std::span<const Vec2> ring) {
  double sum = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Segment2 edge = detail::edgeOf(ring, i);
    sum += (edge.b - edge.a).norm();
  }
  return sum;
}

namespace {

struct Moment {
  double area = 0;
  Vec2 first = Vec2::Zero();  ///< area times centre
};

/// About `origin`; the area counts positive whichever way the ring turns.
Moment momentOf(const Ring& ring, const Vec2& origin) {
  Moment sum;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Segment2 edge = detail::edgeOf(ring, i);
    const Vec2 a = edge.a - origin;
    const Vec2 b = edge.b - origin;
    const double piece = 0.5 * cross(a, b);
    sum.area += piece;
    sum.first += piece / 3 * (a + b);
  }
  if (sum.area < 0) return {-sum.area, -sum.first};
  return sum;
}

}  // namespace

Vec2 centroid(const Polygon& polygon) {
  if (polygon.outer.empty()) return Vec2::Zero();
  Vec2 mean = Vec2::Zero();
  for (const Vec2& p : polygon.outer) mean += p;
  mean /= static_cast<double>(polygon.outer.size());

  Moment sum = momentOf(polygon.outer, mean);
  for (const Ring& hole : polygon.holes) {
    const Moment gone = momentOf(hole, mean);
    sum.area -= gone.area;
    sum.first -= gone.first;
  }
  if (!(sum.area > 0)) return mean;
  return mean + sum.first / sum.area;
}

Polygon normalised(Polygon polygon) {
  if (signedArea(polygon.outer) < 0) std::reverse(polygon.outer.begin(), polygon.outer.end());
  for (Ring& hole : polygon.holes) {
    if (signedArea(hole) > 0) std::reverse(hole.begin(), hole.end());
  }
  return polygon;
}

Location locate(const Ring& ring, const Vec2& p) {
  bool inside = false;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Segment2 edge = detail::edgeOf(ring, i);
    const double turn = cross(edge.b - edge.a, p - edge.a);
    const Vec2 low = edge.a.cwiseMin(edge.b);
    const Vec2 high = edge.a.cwiseMax(edge.b);
    const bool within = (p.array() >= low.array()).all() && (p.array() <= high.array()).all();
    if (turn == 0 && within) return Location::Boundary;
    // A ray to the right; the half-open rule counts a corner that it meets once.
    const bool upward = edge.a.y() <= p.y() && p.y() < edge.b.y();
    const bool downward = edge.b.y() <= p.y() && p.y() < edge.a.y();
    if ((upward && turn > 0) || (downward && turn < 0)) inside = !inside;
  }
  return inside ? Location::Inside : Location::Outside;
}

Location locate(const Polygon& polygon, const Vec2& p) {
  const Location outer = locate(polygon.outer, p);
  if (outer != Location::Inside) return outer;
  for (const Ring& hole : polygon.holes) {
    const Location in = locate(hole, p);
    if (in == Location::Boundary) return Location::Boundary;
    if (in == Location::Inside) return Location::Outside;
  }
  return Location::Inside;
}

namespace {

template <class Query>
BoundaryPoint nearestEdge(const Polygon& polygon, const Query& query) {
  BoundaryPoint best;
  best.distance = std::numeric_limits<double>::infinity();
  const int rings = 1 + static_cast<int>(polygon.holes.size());
  for (int r = 0; r < rings; ++r) {
    const Ring& ring = r == 0 ? polygon.outer : polygon.holes[static_cast<std::size_t>(r - 1)];
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const detail::PlanPair pair = detail::nearestPair(detail::edgeOf(ring, i), query);
      if (pair.distance < best.distance) {
        best = {pair.distance, pair.onFirst, pair.onSecond, r, static_cast<int>(i)};
      }
    }
  }
  return best;
}

}  // namespace

BoundaryPoint closestOnBoundary(const Polygon& polygon, const Vec2& p) {
  return nearestEdge(polygon, Segment2{p, p});
}

BoundaryPoint closestOnBoundary(const Polygon& polygon, const Segment2& segment) {
  return nearestEdge(polygon, segment);
}

bool isConvex(std::span<const Vec2> ring) {
  if (ring.size() < 3) return false;
  const double sense = signedArea(ring) < 0 ? -1 : 1;
  double turned = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Segment2 in = detail::edgeOf(ring, i);
    const Segment2 out = detail::edgeOf(ring, (i + 1) % ring.size());
    const Vec2 u = in.b - in.a;
    const Vec2 v = out.b - out.a;
    const double turn = sense * cross(u, v);
    if (turn < 0 || (turn == 0 && u.dot(v) < 0)) return false;
    turned += std::atan2(turn, u.dot(v));
  }
  return std::abs(turned - 2 * kPi) < 1;  // a star goes round twice: 4 pi
}

}  // namespace baywright
