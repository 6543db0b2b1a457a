// SPDX-License-Identifier: Apache-2.0
#include "survey/line_ends.h"

#include <algorithm>
#include <cmath>

namespace baywright::detail {

namespace {

constexpr auto at = [](int index) { return static_cast<std::size_t>(index); };

// Directions go on straight within 45 degrees, and count as one within 3.
constexpr double kGoesOn = 0.7071;
constexpr double kSameWay = 0.9986;

Vec2 wayOut(const LineGraph& graph, int edge, int node) {
  const GraphEdge& e = graph.edges[at(edge)];
  return (graph.nodes[at(e.other(node))] - graph.nodes[at(node)]).normalized();
}

// The corner, no farther from `node` than a wall is thick, from which a face runs back; -1 where there is
// none.
int turnsBackAt(const LineGraph& graph, const std::vector<std::vector<int>>& incidence, int node,
                const Vec2& way) {
  for (const int cap : incidence[at(node)]) {
    const int corner = graph.edges[at(cap)].other(node);
    if ((graph.nodes[at(corner)] - graph.nodes[at(node)]).norm() > kThickestWall) continue;
    if (std::abs(wayOut(graph, cap, node).dot(way)) > kGoesOn) continue;
    for (const int back : incidence[at(corner)])
      if (back != cap && wayOut(graph, back, corner).dot(way) < -kGoesOn) return corner;
  }
  return -1;
}

}  // namespace

std::vector<WallEnd> wallEnds(const LineGraph& graph) {
  const auto incidence = graph.incidence();
  std::vector<WallEnd> ends;
  for (std::size_t n = 0; n < incidence.size(); ++n) {
    const int node = static_cast<int>(n);
    for (const int edge : incidence[n]) {
      const Vec2 way = -wayOut(graph, edge, node);
      const bool goesOn = std::any_of(incidence[n].begin(), incidence[n].end(),
                                      [&](int e) { return wayOut(graph, e, node).dot(way) > kGoesOn; });
      if (goesOn) continue;
      const int other = turnsBackAt(graph, incidence, node, way);
      if (other >= 0 || incidence[n].size() == 1) ends.push_back({node, graph.nodes[n], way, other});
    }
  }
  std::stable_sort(ends.begin(), ends.end(),
                   [](const WallEnd& a, const WallEnd& b) { return a.place.x() < b.place.x(); });
  return ends;
}

EndHit firstHit(const LineGraph& graph, const WallEnd& end, double reach, double tolerance) {
  EndHit best{-1, reach};
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

bool goesOnBehind(const LineGraph& graph, const WallEnd& end, double distance, double tolerance) {
  return std::any_of(graph.edges.begin(), graph.edges.end(), [&](const GraphEdge& edge) {
    if (edge.removed || edge.isBridge()) return false;
    const Vec2 along = graph.along(edge).normalized();
    if (std::abs(along.dot(end.way)) < kSameWay) return false;
    const int first = along.dot(end.way) > 0 ? edge.nodes[0] : edge.nodes[1];
    const Vec2 apart = graph.nodes[at(first)] - end.place;
    const double behind = apart.dot(end.way) - distance;
    return behind > -2 * tolerance && behind < kThickestWall &&
           std::abs(cross(end.way, apart)) <= 2 * tolerance;
  });
}

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

bool joined(const LineGraph& graph, int from, int to) {
  return std::any_of(graph.edges.begin(), graph.edges.end(), [&](const GraphEdge& edge) {
    return !edge.removed && std::minmax(edge.nodes[0], edge.nodes[1]) == std::minmax(from, to);
  });
}

}  // namespace baywright::detail
