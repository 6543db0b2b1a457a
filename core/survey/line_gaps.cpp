// SPDX-License-Identifier: Apache-2.0
#include "survey/line_gaps.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace baywright::detail {

namespace {

constexpr auto at = [](int index) { return static_cast<std::size_t>(index); };

// Directions count as one within 3 degrees, and as going on straight within 45.
constexpr double kSameWay = 0.9986;
constexpr double kGoesOn = 0.7071;

/// An end of a wall's face and the way it points.
struct WallEnd {
  int node = 0;
  Vec2 place = Vec2::Zero();
  Vec2 way{1, 0};
  bool loose = false;
};

Vec2 wayOut(const LineGraph& graph, int edge, int node) {
  const GraphEdge& e = graph.edges[at(edge)];
  return (graph.nodes[at(e.other(node))] - graph.nodes[at(node)]).normalized();
}

// From `node` an edge no longer than a wall is thick leads to a corner where a face runs back.
bool turnsBack(const LineGraph& graph, const std::vector<std::vector<int>>& incidence, int node,
               const Vec2& way) {
  for (const int cap : incidence[at(node)]) {
    const int corner = graph.edges[at(cap)].other(node);
    if ((graph.nodes[at(corner)] - graph.nodes[at(node)]).norm() > kThickestWall) continue;
    if (std::abs(wayOut(graph, cap, node).dot(way)) > kGoesOn) continue;
    for (const int back : incidence[at(corner)])
      if (back != cap && wayOut(graph, back, corner).dot(way) < -kGoesOn) return true;
  }
  return false;
}

std::vector<WallEnd> wallEnds(const LineGraph& graph) {
  const auto incidence = graph.incidence();
  std::vector<WallEnd> ends;
  for (std::size_t n = 0; n < incidence.size(); ++n) {
    const int node = static_cast<int>(n);
    for (const int edge : incidence[n]) {
      const Vec2 way = -wayOut(graph, edge, node);
      const bool goesOn = std::any_of(incidence[n].begin(), incidence[n].end(),
                                      [&](int e) { return wayOut(graph, e, node).dot(way) > kGoesOn; });
      const bool loose = incidence[n].size() == 1;
      if (!goesOn && (loose || turnsBack(graph, incidence, node, way)))
        ends.push_back({node, graph.nodes[n], way, loose});
    }
  }
  std::stable_sort(ends.begin(), ends.end(),
                   [](const WallEnd& a, const WallEnd& b) { return a.place.x() < b.place.x(); });
  return ends;
}

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

bool isFree(const LineGraph& graph, const Segment2& way, int from, int to) {
  return std::none_of(graph.edges.begin(), graph.edges.end(), [&](const GraphEdge& edge) {
    const auto [a, b] = edge.nodes;
    if (edge.removed || a == from || a == to || b == from || b == to) return false;
    return crosses(way, {graph.nodes[at(a)], graph.nodes[at(b)]});
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

bool joined(const LineGraph& graph, int from, int to) {
  return std::any_of(graph.edges.begin(), graph.edges.end(), [&](const GraphEdge& edge) {
    return !edge.removed && std::minmax(edge.nodes[0], edge.nodes[1]) == std::minmax(from, to);
  });
}

/// Where a ray from a node first meets an edge.
struct Hit {
  int edge = -1;
  double distance = 0;
};

Hit firstHit(const LineGraph& graph, const WallEnd& end, double widest, double tolerance) {
  Hit best{-1, widest};
  for (std::size_t e = 0; e < graph.edges.size(); ++e) {
    const GraphEdge& edge = graph.edges[e];
    if (edge.removed || edge.nodes[0] == end.node || edge.nodes[1] == end.node) continue;
    const Vec2 a = graph.nodes[at(edge.nodes[0])] - end.place;
    const Vec2 b = graph.nodes[at(edge.nodes[1])] - end.place;
    const double sideA = cross(end.way, a), sideB = cross(end.way, b);
    if (std::min(sideA, sideB) > tolerance || std::max(sideA, sideB) < -tolerance || sideA == sideB) continue;
    const double share = std::clamp(sideA / (sideA - sideB), 0.0, 1.0);
    const double distance = end.way.dot(a + share * (b - a));
    if (distance > tolerance && distance < best.distance) best = {static_cast<int>(e), distance};
  }
  return best;
}

// The node of the edge at the point, cutting the edge where it has none there.
int nodeAt(LineGraph& graph, int edge, const Vec2& point, double tolerance) {
  for (const int node : graph.edges[at(edge)].nodes)
    if ((graph.nodes[at(node)] - point).norm() <= tolerance) return node;
  const int node = static_cast<int>(graph.nodes.size());
  graph.nodes.push_back(point);
  const GraphEdge whole = graph.edges[at(edge)];
  graph.edges[at(edge)].nodes[1] = node;
  graph.edges.push_back({{node, whole.nodes[1]}, whole.line, false});
  return node;
}

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

int bridgeToWalls(LineGraph& graph, const std::vector<GraphFace>& faces, double widest, double tolerance) {
  const ClosedRooms rooms{faces, partsOf(graph)};
  int added = 0;
  std::vector<WallEnd> ends = wallEnds(graph);
  std::erase_if(ends, [](const WallEnd& end) { return !end.loose; });
  if (ends.size() > kMostRays) return 0;
  for (const WallEnd& end : ends) {
    const Hit hit = firstHit(graph, end, widest, tolerance);
    if (hit.edge < 0) continue;
    if (rooms.hold(end.place + 0.5 * hit.distance * end.way, end.node)) continue;
    const int node = nodeAt(graph, hit.edge, end.place + hit.distance * end.way, tolerance);
    if (node == end.node || joined(graph, end.node, node)) continue;
    graph.edges.push_back({{end.node, node}, -1, false});
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
