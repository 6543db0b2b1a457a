// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>
#include <vector>

#include "geometry/closest.h"

/// The slow truth. Nothing here shares a line with the code under test beyond the shapes themselves.
namespace baywright::test {

/// Least value of a convex function on [0, 1] by golden sections, good to rounding in the value.
template <class Function>
double leastConvex(const Function& f) {
  const double golden = 0.5 * (std::sqrt(5.0) - 1);
  double low = 0;
  double high = 1;
  double left = high - golden;
  double right = low + golden;
  double atLeft = f(left);
  double atRight = f(right);
  double best = std::min({f(0), f(1), atLeft, atRight});
  while (high - low > 1e-12) {
    if (atLeft <= atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - golden * (high - low);
      best = std::min(best, atLeft = f(left));
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + golden * (high - low);
      best = std::min(best, atRight = f(right));
    }
  }
  return best;
}

inline double distanceTo(const Segment3& s, const Vec3& p) {
  const double length = (s.b - s.a).squaredNorm();
  const double share = length > 0 ? std::clamp((p - s.a).dot(s.b - s.a) / length, 0.0, 1.0) : 0.0;
  return (s.a + share * (s.b - s.a) - p).norm();
}

inline double distanceTo(const Triangle& t, const Vec3& p) {
  const double onEdges = std::min({distanceTo(Segment3{t.a, t.b}, p), distanceTo(Segment3{t.b, t.c}, p),
                                   distanceTo(Segment3{t.c, t.a}, p)});
  const Vec3 normal = (t.b - t.a).cross(t.c - t.a);
  if (normal.norm() < 1e-12) return onEdges;
  const Vec3 unit = normal.normalized();
  const Vec3 foot = p - unit.dot(p - t.a) * unit;
  const auto inside = [&](const Vec3& a, const Vec3& b) { return (b - a).cross(foot - a).dot(unit) >= 0; };
  if (inside(t.a, t.b) && inside(t.b, t.c) && inside(t.c, t.a)) return std::abs(unit.dot(p - t.a));
  return onEdges;
}

inline double distanceTo(const Segment3& s, const Triangle& t) {
  return leastConvex([&](double share) { return distanceTo(t, s.a + share * (s.b - s.a)); });
}

inline double distanceTo(const ConvexPolyhedron& body, const Vec3& p) {
  bool inside = true;
  for (const auto& face : body.faces()) {
    const double height = face.normal.dot(p) - face.offset;
    if (height <= 0) continue;
    inside = false;
    const auto loop = body.corners(face);
    bool over = true;
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const Vec3& a = body.vertex(loop[i]);
      const Vec3& b = body.vertex(loop[(i + 1) % loop.size()]);
      over = over && (b - a).cross(p - a).dot(face.normal) >= 0;
    }
    if (over) return height;
  }
  if (inside) return 0;
  double best = std::numeric_limits<double>::infinity();
  for (const auto& edge : body.edges()) {
    best = std::min(best, distanceTo(Segment3{body.vertex(edge.from), body.vertex(edge.to)}, p));
  }
  return best;
}

inline double distanceTo(const Cylinder& c, const Vec3& p) {
  const double length = (c.b - c.a).norm();
  const double along = (p - c.a).dot(c.b - c.a) / length;
  const double across = (p - c.a).cross(c.b - c.a).norm() / length;
  return std::hypot(std::max({0.0, -along, along - length}), std::max(0.0, across - c.radius));
}

inline double distanceTo(const Solid& solid, const Vec3& p) {
  return std::visit([&](const auto& body) { return distanceTo(body, p); }, solid);
}

/// Zero when they overlap.
inline double distanceTo(const Segment3& s, const Solid& solid) {
  return leastConvex([&](double share) { return distanceTo(solid, s.a + share * (s.b - s.a)); });
}

/// How far a shape reaches along a direction.
inline double reachOf(const Segment3& s, const Vec3& n) {
  return std::max(n.dot(s.a), n.dot(s.b));
}
inline double reachOf(const ConvexPolyhedron& body, const Vec3& n) {
  double reach = -std::numeric_limits<double>::infinity();
  for (const Vec3& p : body.vertices()) reach = std::max(reach, n.dot(p));
  return reach;
}
inline double reachOf(const Cylinder& c, const Vec3& n) {
  const Vec3 axis = (c.b - c.a).normalized();
  return std::max(n.dot(c.a), n.dot(c.b)) + c.radius * n.cross(axis).norm();
}
inline double reachOf(const Solid& solid, const Vec3& n) {
  return std::visit([&](const auto& body) { return reachOf(body, n); }, solid);
}

/// The way that the first shape must go along `n` to be free of the second.
template <class First, class Second>
double wayOut(const First& first, const Second& second, const Vec3& n) {
  return reachOf(second, n) + reachOf(first, -n);
}

/// Directions spread evenly over the sphere (Fibonacci's spiral).
inline std::vector<Vec3> spreadDirections(int count) {
  std::vector<Vec3> all;
  for (int i = 0; i < count; ++i) {
    const double z = 1 - (2 * i + 1.0) / count;
    const double turn = kPi * (3 - std::sqrt(5.0)) * i;
    const double r = std::sqrt(1 - z * z);
    all.emplace_back(r * std::cos(turn), r * std::sin(turn), z);
  }
  return all;
}

/// Penetration depth from above: the shortest way out over many directions, the best of which are followed
/// downhill with ever shorter steps.
template <class First, class Second>
double shortestWayOut(const First& first, const Second& second, const std::vector<Vec3>& directions) {
  std::vector<std::pair<double, Vec3>> ways;
  for (const Vec3& n : directions) ways.emplace_back(wayOut(first, second, n), n);
  const auto shorter = [](const auto& a, const auto& b) { return a.first < b.first; };
  const std::size_t kept = std::min<std::size_t>(ways.size(), 5);
  std::partial_sort(ways.begin(), ways.begin() + static_cast<std::ptrdiff_t>(kept), ways.end(), shorter);
  ways.resize(kept);
  double best = ways[0].first;
  for (auto& [way, n] : ways) {
    double step = 0.2;
    for (int count = 0; count < 150 && step > 1e-9; ++count) {
      const Vec3 u = n.unitOrthogonal();
      const Vec3 v = n.cross(u);
      std::pair<double, Vec3> next{way, n};
      for (int k = 0; k < 8; ++k) {
        const double angle = kPi * k / 4 + count;  // never the same grid twice
        const Vec3 other = (n + step * (std::cos(angle) * u + std::sin(angle) * v)).normalized();
        next = std::min(next, {wayOut(first, second, other), other}, shorter);
      }
      if (next.first < way) {
        std::tie(way, n) = next;
      } else {
        step *= 0.5;
      }
    }
    best = std::min(best, way);
  }
  return best;
}

}  // namespace baywright::test
