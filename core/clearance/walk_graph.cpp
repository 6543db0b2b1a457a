// SPDX-License-Identifier: Apache-2.0
#include "clearance/walk_graph.h"

#include <algorithm>
#include <boost/polygon/voronoi.hpp>
#include <cmath>
#include <limits>
#include <queue>
#include <set>

namespace baywright {
namespace {

/// Voronoi works on integers of this many metres: far below any tape, and a kilometre still fits.
constexpr double kGrid = 1e-5;

using Diagram = boost::polygon::voronoi_diagram<double>;
using IntegerPoint = boost::polygon::point_data<int>;

Segment2 pieceTo(const Vec2& from, const Vec2& corner, double longest) {
  const double length = (corner - from).norm();
  return {from, length > longest ? Vec2(from + longest / length * (corner - from)) : corner};
}

/// Corners where two sides of an exit meet are no gap between them, metres.
constexpr double kSameCorner = 0.06;

double widthBetween(const OutlinePoint& a, const OutlinePoint& b) {
  const double distance = (a.at - b.at).norm();
  const bool acrossExit = a.exit >= 0 && a.exit == b.exit && a.side != b.side && distance > kSameCorner;
  return acrossExit ? std::numeric_limits<double>::infinity() : distance;
}

struct Queued {
  double rank;  ///< greater goes first
  int node;
  bool operator<(const Queued& other) const {
    return rank != other.rank ? rank < other.rank : node > other.node;
  }
};

}  // namespace

void addOutline(std::vector<OutlinePoint>& points, std::span<const Vec2> chain, double spacing) {
  const bool closed = chain.size() > 2 && chain.front() == chain.back();
  const std::size_t corners = chain.size() - (closed ? 1 : 0);
  for (std::size_t i = 0; i < corners; ++i) {
    OutlinePoint corner{chain[i], {chain[i], chain[i]}, {chain[i], chain[i]}};
    if (i > 0 || closed) corner.before = pieceTo(chain[i], chain[i > 0 ? i - 1 : corners - 1], spacing);
    if (i + 1 < chain.size()) corner.after = pieceTo(chain[i], chain[i + 1], spacing);
    points.push_back(corner);
    if (i + 1 == chain.size()) break;
    const Vec2 run = chain[i + 1] - chain[i];
    const int pieces = static_cast<int>(std::ceil(run.norm() / spacing));
    for (int k = 1; k < pieces; ++k) {
      const Vec2 at = chain[i] + static_cast<double>(k) / pieces * run;
      points.push_back({at, pieceTo(at, chain[i], spacing), pieceTo(at, chain[i + 1], spacing)});
    }
  }
}

Gap gapAt(const OutlinePoint& first, const OutlinePoint& second) {
  Gap best{(first.at - second.at).norm(), first.at, second.at};
  for (const auto& [point, outline] : {std::pair(&first, &second), std::pair(&second, &first)}) {
    for (const Segment2& piece : {outline->before, outline->after}) {
      const Vec2 run = piece.b - piece.a;
      if (!(run.squaredNorm() > 0)) continue;
      const double t = std::clamp(run.dot(point->at - piece.a) / run.squaredNorm(), 0.0, 1.0);
      const Vec2 foot = piece.a + t * run;
      const double width = (point->at - foot).norm();
      if (width < best.width) best = {width, point->at, foot};
    }
  }
  return best;
}

WalkGraph::WalkGraph(std::vector<OutlinePoint> points) : points_(std::move(points)) {
  if (points_.empty()) return;
  const Vec2 origin = points_.front().at;
  std::vector<IntegerPoint> sites;
  for (const OutlinePoint& point : points_) {
    const Vec2 p = (point.at - origin) / kGrid;
    sites.emplace_back(static_cast<int>(std::lround(p.x())), static_cast<int>(std::lround(p.y())));
  }
  Diagram diagram;
  boost::polygon::construct_voronoi(sites.begin(), sites.end(), &diagram);
  const auto indexOf = [&](const Diagram::vertex_type* vertex) {
    return static_cast<int>(vertex - diagram.vertices().data());
  };
  nodes_.reserve(diagram.vertices().size());
  for (const Diagram::vertex_type& vertex : diagram.vertices()) {
    Node node{origin + kGrid * Vec2(vertex.x(), vertex.y()), {}, {}};
    const Diagram::edge_type* edge = vertex.incident_edge();
    do {
      const int left = static_cast<int>(edge->cell()->source_index());
      const int right = static_cast<int>(edge->twin()->cell()->source_index());
      node.around.push_back(left);
      if (edge->vertex1()) {
        node.steps.push_back(
            {indexOf(edge->vertex1()),
             widthBetween(points_[static_cast<std::size_t>(left)], points_[static_cast<std::size_t>(right)]),
             left, right});
      }
      edge = edge->rot_next();
    } while (edge != vertex.incident_edge());
    nodes_.push_back(std::move(node));
  }
}

std::optional<int> WalkGraph::nodeOver(const Vec2& place) const {
  for (std::size_t i = 0; i < nodes_.size(); ++i) {
    const std::vector<int>& around = nodes_[i].around;
    bool inside = around.size() >= 3;
    for (std::size_t k = 0; inside && k < around.size(); ++k) {
      const Vec2& from = points_[static_cast<std::size_t>(around[k])].at;
      const Vec2& to = points_[static_cast<std::size_t>(around[(k + 1) % around.size()])].at;
      inside = cross(to - from, place - from) >= 0;
    }
    if (inside) return static_cast<int>(i);
  }
  return std::nullopt;
}

std::vector<int> nodesRound(const WalkGraph& graph, const Vec2& place) {
  std::vector<int> round;
  const auto over = graph.nodeOver(place);
  if (!over) return round;
  for (std::size_t i = 0; i < graph.nodes().size(); ++i) {
    const WalkGraph::Node& node = graph.nodes()[i];
    const double radius = (graph.points()[static_cast<std::size_t>(node.around.front())].at - node.at).norm();
    const bool holds = (place - node.at).norm() <= radius;
    if (holds || static_cast<int>(i) == *over) round.push_back(static_cast<int>(i));
  }
  return round;
}

std::vector<double> widthsFrom(const WalkGraph& graph, const std::vector<int>& starts) {
  std::vector<double> widths(graph.nodes().size(), 0);
  std::priority_queue<Queued> queue;
  for (const int start : starts) {
    widths[static_cast<std::size_t>(start)] = std::numeric_limits<double>::infinity();
    queue.push({widths[static_cast<std::size_t>(start)], start});
  }
  while (!queue.empty()) {
    const Queued next = queue.top();
    queue.pop();
    if (next.rank < widths[static_cast<std::size_t>(next.node)]) continue;
    for (const WalkGraph::Step& step : graph.nodes()[static_cast<std::size_t>(next.node)].steps) {
      const double width = std::min(next.rank, step.width);
      if (width <= widths[static_cast<std::size_t>(step.to)]) continue;
      widths[static_cast<std::size_t>(step.to)] = width;
      queue.push({width, step.to});
    }
  }
  return widths;
}

std::vector<int> shortestWay(const WalkGraph& graph, const WalkLeg& leg, double width) {
  const std::size_t count = graph.nodes().size();
  std::vector<double> lengths(count, std::numeric_limits<double>::infinity());
  std::vector<int> previous(count, -1);
  std::priority_queue<Queued> queue;
  for (const int start : leg.starts) {
    const auto index = static_cast<std::size_t>(start);
    lengths[index] = (graph.nodes()[index].at - leg.place).norm();
    queue.push({-lengths[index], start});
  }
  while (!queue.empty()) {
    const Queued next = queue.top();
    queue.pop();
    if (next.node == leg.end) break;
    const WalkGraph::Node& node = graph.nodes()[static_cast<std::size_t>(next.node)];
    if (-next.rank > lengths[static_cast<std::size_t>(next.node)]) continue;
    for (const WalkGraph::Step& step : node.steps) {
      if (step.width < width) continue;
      const auto to = static_cast<std::size_t>(step.to);
      const double length = -next.rank + (graph.nodes()[to].at - node.at).norm();
      if (length >= lengths[to]) continue;
      lengths[to] = length;
      previous[to] = next.node;
      queue.push({-length, step.to});
    }
  }
  if (lengths[static_cast<std::size_t>(leg.end)] == std::numeric_limits<double>::infinity()) return {};
  std::vector<int> way = {leg.end};
  while (previous[static_cast<std::size_t>(way.back())] >= 0) {
    way.push_back(previous[static_cast<std::size_t>(way.back())]);
  }
  std::reverse(way.begin(), way.end());
  return way;
}

}  // namespace baywright
