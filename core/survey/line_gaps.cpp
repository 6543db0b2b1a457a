// SPDX-License-Identifier: Apache-2.0
#include "survey/line_gaps.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace baywright::detail {

namespace {

constexpr auto at = [](int index) { return static_cast<std::size_t>(index); };

// Directions count as one within 3 degrees.
constexpr double kSameWay = 0.9986;

// The width of the gap between two ends, where they face each other.
std::optional<double> gapWidth(const WallEnd& from, const WallEnd& to, double tolerance, double widest) {
  if (from.way.dot(to.way) > -kSameWay) return std::nullopt;
  const Vec2 apart = to.place - from.place;
  const double width = from.way.dot(apart);
  if (width <= tolerance || width > widest) return std::nullopt;
  // A wall goes on in line beyond its door, or nearly.
  constexpr double kAside = 0.02;
  const double aside = std::max(std::abs(cross(from.way, apart)), std::abs(cross(to.way, apart)));
  return aside <= tolerance + kAside * width ? std::optional(width) : std::nullopt;
}

bool crosses(const Segment2& first, const Segment2& second) {
  const auto side = [](const Segment2& s, const Vec2& p) { return cross(s.b - s.a, p - s.a); };
  return side(first, second.a) * side(first, second.b) < 0 &&
         side(second, first.a) * side(second, first.b) < 0;
}

// An edge that runs along the way for a while: the gap would reach over a pier.
bool runsAlong(const Segment2& way, const Segment2& edge) {
  constexpr double kAside = 0.01, kShared = 0.02;  // metres
  const double length = (way.b - way.a).norm();
  const Vec2 along = (way.b - way.a) / length;
  if (std::max(std::abs(cross(along, edge.a - way.a)), std::abs(cross(along, edge.b - way.a))) > kAside)
    return false;
  const double a = along.dot(edge.a - way.a), b = along.dot(edge.b - way.a);
  return std::min(std::max(a, b), length) - std::max(std::min(a, b), 0.0) > kShared;
}

bool isFree(const LineGraph& graph, const Segment2& way, int from, int to) {
  return std::none_of(graph.edges.begin(), graph.edges.end(), [&](const GraphEdge& edge) {
    const auto [a, b] = edge.nodes;
    if (edge.removed) return false;
    const Segment2 piece{graph.nodes[at(a)], graph.nodes[at(b)]};
    if (runsAlong(way, piece)) return true;
    if (a == from || a == to || b == from || b == to) return false;
    return crosses(way, piece);
  });
}

/// Rooms that are closed already.
struct ClosedRooms {
  const std::vector<GraphFace>& faces;
  std::vector<int> parts;  // of the graph's nodes

  // The point lies in a room whose outline hangs together with the node. A region that merely lies round
  // both, like a sheet's frame, does not count.
  bool hold(const Vec2& point, int node) const {
    const int index = faceAt(faces, point);
    if (index < 0 || isMasonry(faces[at(index)])) return false;
    return parts[at(faces[at(index)].nodes.front())] == parts[at(node)];
  }
};

}  // namespace

bool isMasonry(const GraphFace& face) {
  return face.thickness() < kThickestWall;
}

std::vector<LineGap> facingGaps(const LineGraph& graph, double tolerance, double widest) {
  const std::vector<WallEnd> ends = wallEnds(graph);
  if (ends.size() > kMostWallEnds) return {};
  const double reach = widest * 1.1;
  std::vector<LineGap> gaps;
  std::vector<std::pair<std::size_t, std::size_t>> which;
  for (std::size_t i = 0; i < ends.size(); ++i)
    for (std::size_t j = i + 1; j < ends.size() && ends[j].place.x() <= ends[i].place.x() + reach; ++j)
      if (const auto width = gapWidth(ends[i], ends[j], tolerance, widest)) {
        gaps.push_back({ends[i].node, ends[j].node, *width});
        which.push_back({i, j});
      }
  std::vector<std::size_t> order(gaps.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return gaps[a].width < gaps[b].width; });
  std::vector<bool> taken(ends.size(), false);
  std::vector<LineGap> result;
  for (const std::size_t i : order) {
    const auto [first, second] = which[i];
    if (taken[first] || taken[second]) continue;
    taken[first] = taken[second] = true;
    result.push_back(gaps[i]);
  }
  return result;
}

int bridge(LineGraph& graph, const std::vector<GraphFace>& faces, const std::vector<LineGap>& gaps,
           double widest) {
  const ClosedRooms rooms{faces, partsOf(graph)};
  int added = 0;
  for (const LineGap& gap : gaps) {
    if (gap.width > widest || joined(graph, gap.from, gap.to)) continue;
    const Segment2 way{graph.nodes[at(gap.from)], graph.nodes[at(gap.to)]};
    const bool wide = gap.width > kWidestDoor;
    if ((wide && rooms.hold(0.5 * (way.a + way.b), gap.from)) || !isFree(graph, way, gap.from, gap.to))
      continue;
    graph.edges.push_back({{gap.from, gap.to}, -1, false});
    ++added;
  }
  return added;
}

namespace {

/// A door that was drawn with its leaf, shut from an end of a wall to what it points at.
bool isDoor(std::span<const Segment2> doors, const WallEnd& end, double width) {
  constexpr double kMeets = 0.10;  // metres; the leaf is thick and set back in its frame
  return std::any_of(doors.begin(), doors.end(), [&](const Segment2& door) {
    const double a = end.way.dot(door.a - end.place), b = end.way.dot(door.b - end.place);
    const double aside =
        std::max(std::abs(cross(end.way, door.a - end.place)), std::abs(cross(end.way, door.b - end.place)));
    return std::abs(std::min(a, b)) <= kMeets && std::abs(std::max(a, b) - width) <= kMeets &&
           aside <= kThickestWall + kMeets;
  });
}

/// An end, and what is known of the way straight on from it.
struct Ray {
  WallEnd end;
  EndHit hit;
  bool inLine = false;  ///< a wall goes on in line behind what it meets
};

std::vector<Ray> raysOf(const LineGraph& graph, double widest, double tolerance) {
  std::vector<Ray> rays;
  const std::vector<WallEnd> ends = wallEnds(graph);
  if (ends.size() > kMostRays) return rays;
  for (const WallEnd& end : ends) {
    const EndHit hit = firstHit(graph, end, widest, tolerance);
    if (hit.edge >= 0) rays.push_back({end, hit, goesOnBehind(graph, end, hit.distance, tolerance)});
  }
  return rays;
}

/// The wall's other face is bridged at least as far, but for a wall's thickness: what lies between the two
/// ways is the opening itself.
bool isOtherFaceBridged(const LineGraph& graph, const Ray& ray) {
  return std::any_of(graph.edges.begin(), graph.edges.end(), [&](const GraphEdge& edge) {
    if (edge.removed || !edge.isBridge()) return false;
    const auto [a, b] = edge.nodes;
    if (a != ray.end.other && b != ray.end.other) return false;
    const Vec2 way = graph.nodes[at(edge.other(ray.end.other))] - graph.nodes[at(ray.end.other)];
    return way.normalized().dot(ray.end.way) > kSameWay && way.norm() > ray.hit.distance - kThickestWall;
  });
}

/// Behind what the wall's other face points at as near, a wall goes on in line.
bool isOtherFaceInLine(const std::vector<Ray>& rays, const Ray& ray) {
  return std::any_of(rays.begin(), rays.end(), [&](const Ray& other) {
    return other.end.node == ray.end.other && other.inLine && other.end.way.dot(ray.end.way) > kSameWay &&
           std::abs(other.hit.distance - ray.hit.distance) < kThickestWall;
  });
}

}  // namespace

int bridgeToWalls(LineGraph& graph, const std::vector<GraphFace>& faces, std::span<const Segment2> doors,
                  double widest, double tolerance) {
  const ClosedRooms rooms{faces, partsOf(graph)};
  const std::vector<Ray> rays = raysOf(graph, widest, tolerance);
  std::vector<Ray> taken;
  for (const Ray& ray : rays) {
    const bool two = !ray.end.loose();
    const bool goesOn = ray.inLine || (two && isOtherFaceInLine(rays, ray));
    const bool narrow = ray.hit.distance <= kWidestDoor;
    const Vec2 middle = ray.end.place + 0.5 * ray.hit.distance * ray.end.way;
    const bool within =
        rooms.hold(middle, ray.end.node) || rooms.hold(middle, graph.edges[at(ray.hit.edge)].nodes[0]);
    const bool free = !within && (two ? goesOn : narrow);
    if (free || (goesOn && narrow) || (two && isOtherFaceBridged(graph, ray)) ||
        isDoor(doors, ray.end, ray.hit.distance))
      taken.push_back(ray);
  }
  int added = 0;
  for (const Ray& ray : taken) {
    // Edges may have been cut since.
    const EndHit hit = firstHit(graph, ray.end, widest, tolerance);
    if (hit.edge < 0) continue;
    const int node = nodeAt(graph, hit.edge, ray.end.place + hit.distance * ray.end.way, tolerance);
    if (node == ray.end.node || joined(graph, ray.end.node, node)) continue;
    graph.edges.push_back({{ray.end.node, node}, -1, false});
    ++added;
  }
  return added;
}

int removeNiches(LineGraph& graph, const std::vector<GraphFace>& faces) {
  std::map<int, int> sides;  // how many regions a bridge bounds
  for (const GraphFace& face : faces)
    for (const int edge : face.edges)
      if (graph.edges[at(edge)].isBridge()) ++sides[edge];
  int removed = 0;
  for (const GraphFace& face : faces) {
    int only = -1, bridges = 0;
    for (const int edge : face.edges)
      if (graph.edges[at(edge)].isBridge()) {
        only = edge;
        ++bridges;
      }
    if (bridges != 1 || face.area >= kLargestNiche || sides[only] != 2 || graph.edges[at(only)].removed)
      continue;
    graph.edges[at(only)].removed = true;
    ++removed;
  }
  return removed;
}

}  // namespace baywright::detail
