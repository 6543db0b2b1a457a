// SPDX-License-Identifier: Apache-2.0
#include "survey/line_reveals.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "survey/line_gaps.h"
#include "survey/line_join.h"

namespace baywright::detail {

namespace {

/// What lies on the other side of a face's outline.
class Beyond {
 public:
  Beyond(const GraphFace& face, const LineGraph& graph, const std::vector<GraphFace>& faces)
      : face_(face), graph_(graph), faces_(faces) {}

  /// The face behind a piece of the outline; null outside of everything.
  const GraphFace* behind(const Vec2& a, const Vec2& b) const {
    const Vec2 point = a + 0.37 * (b - a);  // where no edge is likely to end
    for (const int edge : face_.edges) {
      const auto [from, to] = graph_.edges[LineGraph::at(edge)].nodes;
      const Vec2 start = graph_.nodes[LineGraph::at(from)], along = graph_.nodes[LineGraph::at(to)] - start;
      const double share = along.dot(point - start) / along.squaredNorm();
      if (share < 0 || share > 1 || (start + share * along - point).norm() > 2 * kCollinear) continue;
      for (const GraphFace& other : faces_)
        if (&other != &face_ && std::find(other.edges.begin(), other.edges.end(), edge) != other.edges.end())
          return &other;
    }
    return nullptr;
  }

 private:
  const GraphFace& face_;
  const LineGraph& graph_;
  const std::vector<GraphFace>& faces_;
};

bool goesStraightOn(const Vec2& a, const Vec2& b, const Vec2& c) {
  return std::abs(cross((b - a).normalized(), (c - b).normalized())) < 0.05 && (b - a).dot(c - b) > 0;
}

/// Takes one recess out of the ring and gives the way over it.
std::optional<Segment2> closeReveal(Ring& ring, const Beyond& beyond) {
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i < n && n >= 8; ++i) {
    const auto corner = [&](std::size_t k) -> const Vec2& { return ring[(i + k) % n]; };
    const Vec2 &before = corner(0), &p = corner(1), &q = corner(2), &r = corner(3), &s = corner(4),
               &after = corner(5);
    const double depth = (q - p).norm();
    if (depth > kThickestWall || std::abs((s - r).norm() - depth) > 0.01) continue;
    if (cross(p - before, q - p) >= 0 || !goesStraightOn(before, p, s) || !goesStraightOn(p, s, after))
      continue;
    const GraphFace *jamb = beyond.behind(p, q), *back = beyond.behind(q, r), *other = beyond.behind(r, s);
    if (!jamb || !other || !isMasonry(*jamb) || !isMasonry(*other)) continue;
    if (back == jamb || back == other || (back && !isMasonry(*back))) continue;
    const Segment2 over{p, s};
    Ring straight;
    for (std::size_t k = 0; k < n; ++k)
      if (k != (i + 2) % n && k != (i + 3) % n) straight.push_back(ring[k]);
    ring = simplified(straight, kCollinear);
    return over;
  }
  return std::nullopt;
}

}  // namespace

std::vector<Segment2> closeReveals(Ring& ring, const GraphFace& face, const LineGraph& graph,
                                   const std::vector<GraphFace>& faces) {
  const Beyond beyond(face, graph, faces);
  std::vector<Segment2> windows;
  while (const auto over = closeReveal(ring, beyond)) windows.push_back(*over);
  return windows;
}

}  // namespace baywright::detail
