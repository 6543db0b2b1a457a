// SPDX-License-Identifier: Apache-2.0
#include "optics/detail/convex.h"

#include <algorithm>
#include <limits>
#include <utility>
#include <vector>

namespace baywright::detail {
namespace {

struct Span1 {
  double low = std::numeric_limits<double>::infinity();
  double high = -std::numeric_limits<double>::infinity();

  void take(double x) {
    low = std::min(low, x);
    high = std::max(high, x);
  }
};

/// A ring while a level line rises through it: the edges that the line cuts now, one on either side.
class Riser {
 public:
  explicit Riser(const Ring& ring) : ring_(&ring) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      if (ring[i].y() < ring[left_].y()) left_ = i;
      top_ = std::max(top_, ring[i].y());
    }
    right_ = left_;
    bottom_ = ring[left_].y();
  }

  double bottom() const { return bottom_; }
  double top() const { return top_; }

  /// Where the line at `y` is inside; bottom < y < top, and y never falls from call to call.
  std::pair<double, double> cutAt(double y) {
    while (corner(next(right_)).y() <= y) right_ = next(right_);
    while (corner(previous(left_)).y() <= y) left_ = previous(left_);
    const double a = across(corner(left_), corner(previous(left_)), y);
    const double b = across(corner(right_), corner(next(right_)), y);
    return {std::min(a, b), std::max(a, b)};
  }

 private:
  const Vec2& corner(std::size_t i) const { return (*ring_)[i]; }
  std::size_t next(std::size_t i) const { return i + 1 < ring_->size() ? i + 1 : 0; }
  std::size_t previous(std::size_t i) const { return i > 0 ? i - 1 : ring_->size() - 1; }
  static double across(const Vec2& a, const Vec2& b, double y) {
    return a.x() + (b.x() - a.x()) * ((y - a.y()) / (b.y() - a.y()));
  }

  const Ring* ring_;
  std::size_t left_ = 0;   ///< the cut edge on the left runs from here to the corner before
  std::size_t right_ = 0;  ///< the cut edge on the right runs from here to the corner after
  double bottom_ = 0;
  double top_ = -std::numeric_limits<double>::infinity();
};

struct Extent {
  Span1 across;
  Span1 up;

  void take(const Vec2& p) {
    across.take(p.x());
    up.take(p.y());
  }
};

bool overlap(const Span1& a, const Span1& b) {
  return a.low < b.high && b.low < a.high;
}

bool overlap(const Extent& a, const Extent& b) {
  return overlap(a.across, b.across) && overlap(a.up, b.up);
}

struct Edge {
  Vec2 start;
  Vec2 along;
  Extent extent;
};

struct RingEdges {
  std::vector<Edge> edges;
  Extent extent;

  explicit RingEdges(const Ring& ring) {
    edges.reserve(ring.size());
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Vec2& next = ring[i + 1 < ring.size() ? i + 1 : 0];
      Edge edge{ring[i], next - ring[i], {}};
      edge.extent.take(ring[i]);
      edge.extent.take(next);
      extent.take(ring[i]);
      edges.push_back(edge);
    }
  }
};

/// A crossing at an end of either edge needs no level of its own: every corner has one.
void addCrossing(const Edge& first, const Edge& second, std::vector<double>& levels) {
  const double turn = cross(first.along, second.along);
  if (turn == 0) return;
  const Vec2 between = second.start - first.start;
  const double u = cross(between, second.along) / turn;
  const double v = cross(between, first.along) / turn;
  if (u > 0 && u < 1 && v > 0 && v < 1) levels.push_back(first.start.y() + u * first.along.y());
}

/// Heights of all corners and crossings, rising.
std::vector<double> levelsOf(std::span<const Ring> rings) {
  std::vector<double> levels;
  std::vector<RingEdges> all;
  all.reserve(rings.size());
  for (const Ring& ring : rings) {
    all.emplace_back(ring);
    for (const Vec2& p : ring) levels.push_back(p.y());
  }
  for (std::size_t i = 0; i < all.size(); ++i)
    for (std::size_t j = i + 1; j < all.size(); ++j) {
      if (!overlap(all[i].extent, all[j].extent)) continue;
      for (const Edge& a : all[i].edges) {
        if (!overlap(a.extent, all[j].extent)) continue;
        for (const Edge& b : all[j].edges)
          if (overlap(a.extent.up, b.extent.up)) addCrossing(a, b, levels);
      }
    }
  std::sort(levels.begin(), levels.end());
  return levels;
}

/// Total length of a union of intervals; sorts them.
double coveredLength(std::vector<std::pair<double, double>>& intervals) {
  std::sort(intervals.begin(), intervals.end());
  double total = 0;
  double end = -std::numeric_limits<double>::infinity();
  for (const auto& [low, high] : intervals) {
    if (high <= end) continue;
    total += high - std::max(low, end);
    end = high;
  }
  return total;
}

}  // namespace

Ring clipped(const Ring& subject, const Ring& window) {
  Ring inside = subject;
  Ring next;
  for (std::size_t i = 0; i < window.size() && inside.size() > 2; ++i) {
    const Vec2& origin = window[i];
    const Vec2 along = window[i + 1 < window.size() ? i + 1 : 0] - origin;
    next.clear();
    Vec2 previous = inside.back();
    double previousSide = cross(along, previous - origin);
    for (const Vec2& p : inside) {
      const double side = cross(along, p - origin);
      if ((side >= 0) != (previousSide >= 0))
        next.push_back(previous + (p - previous) * (previousSide / (previousSide - side)));
      if (side >= 0) next.push_back(p);
      previous = p;
      previousSide = side;
    }
    inside.swap(next);
  }
  if (inside.size() < 3 || !(signedArea(inside) > 0)) return {};
  return inside;
}

double unionArea(std::span<const Ring> rings) {
  if (rings.empty()) return 0;
  if (rings.size() == 1) return signedArea(rings.front());

  const std::vector<double> levels = levelsOf(rings);
  std::vector<Riser> waiting;
  for (const Ring& ring : rings)
    if (ring.size() > 2) waiting.emplace_back(ring);
  std::stable_sort(waiting.begin(), waiting.end(),
                   [](const Riser& a, const Riser& b) { return a.bottom() > b.bottom(); });
  std::vector<Riser> active;
  std::vector<std::pair<double, double>> intervals;
  double total = 0;
  for (std::size_t k = 0; k + 1 < levels.size(); ++k) {
    const double thickness = levels[k + 1] - levels[k];
    const double middle = levels[k] + 0.5 * thickness;
    if (!(middle > levels[k] && middle < levels[k + 1])) continue;
    for (; !waiting.empty() && waiting.back().bottom() < middle; waiting.pop_back())
      active.push_back(waiting.back());
    std::erase_if(active, [&](const Riser& ring) { return ring.top() <= middle; });
    intervals.clear();
    for (Riser& ring : active) intervals.push_back(ring.cutAt(middle));
    total += thickness * coveredLength(intervals);
  }
  return total;
}

double secondMoment(const Ring& ring, const Vec2& centre) {
  double total = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Vec2 a = ring[i] - centre;
    const Vec2 b = ring[i + 1 < ring.size() ? i + 1 : 0] - centre;
    total += cross(a, b) * (a.squaredNorm() + a.dot(b) + b.squaredNorm());
  }
  return total / 12;
}

}  // namespace baywright::detail
