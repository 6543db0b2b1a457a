// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <tuple>

#include "geometry/detail/ring_edges.h"
#include "geometry/polygon.h"

namespace baywright {

namespace {

double offLine(const Segment2& chord, const Vec2& p) {
  const double share = detail::nearestShare(chord, p);
  return (chord.a + share * (chord.b - chord.a) - p).norm();
}

/// Marks the corners between `first` and `last` that a chord would cut by more than the tolerance (Douglas
/// and Peucker 1973): each corner that is left out stays within the tolerance of the kept line.
void keepFarCorners(const Ring& ring, double tolerance, std::size_t first, std::size_t last,
                    std::vector<bool>& keep) {
  std::vector<std::pair<std::size_t, std::size_t>> open{{first, last}};
  while (!open.empty()) {
    const auto [from, to] = open.back();
    open.pop_back();
    const Segment2 chord{ring[from], ring[to % ring.size()]};
    double worst = tolerance;
    std::size_t at = from;
    for (std::size_t i = from + 1; i < to; ++i) {
      const double off = offLine(chord, ring[i]);
      if (off > worst) std::tie(worst, at) = std::tuple{off, i};
    }
    if (at == from) continue;
    keep[at] = true;
    open.emplace_back(from, at);
    open.emplace_back(at, to);
  }
}

std::size_t farthestFrom(const Ring& ring, const Vec2& p) {
  std::size_t best = 0;
  for (std::size_t i = 1; i < ring.size(); ++i) {
    if ((ring[i] - p).squaredNorm() > (ring[best] - p).squaredNorm()) best = i;
  }
  return best;
}

}  // namespace

Ring simplified(const Ring& ring, double tolerance) {
  if (ring.size() < 3) return {};
  // Two corners that are surely needed: the one farthest from any point, and the one farthest from that.
  Ring turned = ring;
  const auto start = static_cast<std::ptrdiff_t>(farthestFrom(ring, ring[0]));
  std::rotate(turned.begin(), turned.begin() + start, turned.end());
  const std::size_t opposite = farthestFrom(turned, turned[0]);

  std::vector<bool> keep(turned.size(), false);
  keep[0] = keep[opposite] = true;
  keepFarCorners(turned, tolerance, 0, opposite, keep);
  keepFarCorners(turned, tolerance, opposite, turned.size(), keep);

  // Back to the order of the input, whose first kept corner leads.
  Ring result;
  const std::size_t size = ring.size();
  for (std::size_t i = 0; i < size; ++i) {
    if (keep[(i + size - static_cast<std::size_t>(start)) % size]) result.push_back(ring[i]);
  }
  if (result.size() < 3) result.clear();
  return result;
}

Ring convexHull(std::vector<Vec2> points) {
  const auto before = [](const Vec2& a, const Vec2& b) {
    return std::tuple{a.x(), a.y()} < std::tuple{b.x(), b.y()};
  };
  std::sort(points.begin(), points.end(), before);
  points.erase(std::unique(points.begin(), points.end()), points.end());
  if (points.size() < 3) return points;

  // Andrew's monotone chain (1979): lower side from left to right, upper side back.
  Ring hull;
  const auto extend = [&hull](const Vec2& p, std::size_t floor) {
    while (hull.size() > floor + 1 &&
           cross(hull.back() - hull[hull.size() - 2], p - hull[hull.size() - 2]) <= 0) {
      hull.pop_back();
    }
    hull.push_back(p);
  };
  for (const Vec2& p : points) extend(p, 0);
  const std::size_t lower = hull.size() - 1;
  for (auto p = points.rbegin() + 1; p != points.rend(); ++p) extend(*p, lower);
  hull.pop_back();
  return hull;
}

}  // namespace baywright
