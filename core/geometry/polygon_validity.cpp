// SPDX-License-Identifier: Apache-2.0
#include "geometry/polygon_validity.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string>

#include "geometry/detail/ring_edges.h"

namespace baywright {

namespace {

struct NamedEdge {
  int ring = 0;
  int edge = 0;
  bool followedBy(const NamedEdge& other, std::size_t ringSize) const {
    return ring == other.ring &&
           static_cast<std::size_t>(edge + 1) % ringSize == static_cast<std::size_t>(other.edge);
  }
};

std::size_t ringCount(const Polygon& polygon) {
  return polygon.holes.size() + 1;
}

const Ring& ringOf(const Polygon& polygon, std::size_t index) {
  return index == 0 ? polygon.outer : polygon.holes[index - 1];
}

bool boundsApart(const Segment2& a, const Segment2& b) {
  return (a.a.cwiseMax(a.b).array() < b.a.cwiseMin(b.b).array()).any() ||
         (b.a.cwiseMax(b.b).array() < a.a.cwiseMin(a.b).array()).any();
}

bool onSegment(const Segment2& s, const Vec2& p) {
  return cross(s.b - s.a, p - s.a) == 0 && (p - s.a).dot(p - s.b) <= 0;
}

/// The common points of two segments: none, one, or the two ends of an overlap.
std::vector<Vec2> commonPoints(const Segment2& a, const Segment2& b) {
  std::vector<Vec2> points;
  const auto add = [&](const Vec2& p) {
    if (std::find(points.begin(), points.end(), p) == points.end()) points.push_back(p);
  };
  if (onSegment(b, a.a)) add(a.a);
  if (onSegment(b, a.b)) add(a.b);
  if (onSegment(a, b.a)) add(b.a);
  if (onSegment(a, b.b)) add(b.b);
  if (points.empty()) {
    const detail::PlanPair pair = detail::nearestPair(a, b);
    if (pair.distance == 0) points.push_back(pair.onFirst);
  }
  return points;
}

struct EdgeList {
  std::vector<NamedEdge> names;
  std::vector<Segment2> segments;
};

EdgeList edgesOf(const Polygon& polygon) {
  EdgeList list;
  for (std::size_t r = 0; r < ringCount(polygon); ++r) {
    const Ring& ring = ringOf(polygon, r);
    for (std::size_t i = 0; i < ring.size(); ++i) {
      list.names.push_back({static_cast<int>(r), static_cast<int>(i)});
      list.segments.push_back(detail::edgeOf(ring, i));
    }
  }
  return list;
}

}  // namespace

std::vector<EdgeCrossing> selfCrossings(const Polygon& polygon) {
  const EdgeList edges = edgesOf(polygon);
  std::vector<EdgeCrossing> crossings;
  for (std::size_t i = 0; i < edges.names.size(); ++i) {
    const NamedEdge& first = edges.names[i];
    const std::size_t size = ringOf(polygon, static_cast<std::size_t>(first.ring)).size();
    for (std::size_t j = i + 1; j < edges.names.size(); ++j) {
      if (boundsApart(edges.segments[i], edges.segments[j])) continue;
      const NamedEdge& second = edges.names[j];
      const auto points = commonPoints(edges.segments[i], edges.segments[j]);
      // Neighbours share their corner; two edges that are neighbours at both ends fold onto each other.
      const bool neighbours = first.followedBy(second, size) || second.followedBy(first, size);
      if (points.empty() || (neighbours && points.size() == 1)) continue;
      const Vec2 point = points.size() == 1 ? points[0] : Vec2(0.5 * (points[0] + points[1]));
      crossings.push_back({first.ring, first.edge, second.ring, second.edge, point});
    }
  }
  return crossings;
}

namespace {

std::string ringName(int ring) {
  return ring == 0 ? "outline" : "hole " + std::to_string(ring);
}

Result<void> checkRing(const Ring& ring, int index) {
  const std::string where = ringName(index);
  if (ring.size() < 3) return fail("A region needs at least three corners.", where);
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const std::string corner = where + ", corner " + std::to_string(i + 1);
    if (!ring[i].allFinite()) return fail("A coordinate is not a finite number.", corner);
    if (ring[i] == detail::edgeOf(ring, i).b) {
      return fail("Two corners in a row are in the same place.", corner, "Remove one of them.");
    }
  }
  return {};
}

/// Metres to the millimetre, the same in every locale.
std::string metres(double value) {
  std::array<char, 340> text{};  // the largest double has 309 digits before the point
  const auto end = std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, 3);
  return {text.data(), end.ptr};
}

Problem problemOf(const EdgeCrossing& c) {
  const std::string second = "edge " + std::to_string(c.secondEdge + 1) +
                             (c.firstRing == c.secondRing ? "" : " of " + ringName(c.secondRing));
  return {"Edge " + std::to_string(c.firstEdge + 1) + " meets " + second + " at x " + metres(c.point.x()) +
              " m, y " + metres(c.point.y()) + " m.",
          ringName(c.firstRing), "Move a corner so that they no longer cross or touch."};
}

Result<void> checkNesting(const Polygon& polygon) {
  for (std::size_t i = 0; i < polygon.holes.size(); ++i) {
    const std::string where = "hole " + std::to_string(i + 1);
    // Edges do not meet, so any corner decides.
    if (locate(polygon.outer, polygon.holes[i][0]) != Location::Inside) {
      return fail("The hole lies outside the outline.", where);
    }
    for (std::size_t j = 0; j < polygon.holes.size(); ++j) {
      if (i != j && locate(polygon.holes[j], polygon.holes[i][0]) == Location::Inside) {
        return fail("The hole lies inside another hole.", where);
      }
    }
  }
  return {};
}

}  // namespace

Result<void> validated(const Polygon& polygon) {
  for (std::size_t r = 0; r < ringCount(polygon); ++r) {
    if (const auto ok = checkRing(ringOf(polygon, r), static_cast<int>(r)); !ok) return ok;
  }
  const auto crossings = selfCrossings(polygon);
  if (!crossings.empty()) return tl::unexpected(problemOf(crossings.front()));
  if (!(std::abs(signedArea(polygon.outer)) >= kMinimumArea)) {
    return fail("The region has no area.", "outline");
  }
  return checkNesting(polygon);
}

}  // namespace baywright
