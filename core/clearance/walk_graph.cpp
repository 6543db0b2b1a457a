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

/// A foot may lie past the end of its piece by this share of it: at a corner, rounding puts it on either
/// side.
constexpr double kFootSlack = 1e-3;

/// Corners where two sides of an exit meet are no gap between them, metres.
constexpr double kSameCorner = 0.06;

bool leadsAcrossExit(const OutlinePoint& a, const OutlinePoint& b) {
  return a.exit >= 0 && a.exit == b.exit && a.side != b.side && (a.at - b.at).norm() > kSameCorner;
}

/// Of the discs that touch both points, with their middles from `here` to `there`, the smallest.
Narrowing narrowest(const Vec2& here, const Vec2& there, const OutlinePoint& a, const OutlinePoint& b) {
  if (leadsAcrossExit(a, b)) return {std::numeric_limits<double>::infinity(), here, false};
  const Vec2 gate = 0.5 * (a.at + b.at);
  const Vec2 run = there - here;
  if ((gate - here).dot(run) > 0 && (gate - there).dot(run) < 0) return {(a.at - b.at).norm(), gate, true};
  const double first = (here - a.at).norm();
  const double last = (there - a.at).norm();
  return first <= last ? Narrowing{2 * first, here, false} : Narrowing{2 * last, there, false};
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
      const double t = run.dot(point->at - piece.a) / run.squaredNorm();
      if (!(t > -kFootSlack && t < 1 + kFootSlack)) continue;
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
  const auto placeOf = [&](const Diagram::vertex_type& vertex) {
    return Vec2(origin + kGrid * Vec2(vertex.x(), vertex.y()));
  };
  nodes_.reserve(diagram.vertices().size());
  for (const Diagram::vertex_type& vertex : diagram.vertices()) {
    Node node{placeOf(vertex), {}, {}};
    const Diagram::edge_type* edge = vertex.incident_edge();
    do {
      const int left = static_cast<int>(edge->cell()->source_index());
      const int right = static_cast<int>(edge->twin()->cell()->source_index());
      node.around.push_back(left);
      if (edge->vertex1()) {
        const Narrowing narrow =
            narrowest(node.at, placeOf(*edge->vertex1()), points_[static_cast<std::size_t>(left)],
                      points_[static_cast<std::size_t>(right)]);
        node.steps.push_back({indexOf(edge->vertex1()), narrow.width, left, right});
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

WalkStart startAt(const WalkGraph& graph, const Vec2& place) {
  WalkStart start{place, {}};
  if (!graph.nodeOver(place)) return start;
  for (std::size_t i = 0; i < graph.nodes().size(); ++i) {
    const WalkGraph::Node& node = graph.nodes()[i];
    const double radius = (graph.points()[static_cast<std::size_t>(node.around.front())].at - node.at).norm();
    if ((place - node.at).norm() <= radius) start.nodes.push_back(static_cast<int>(i));
  }
  return start;
}

Narrowing narrowingOf(const WalkGraph& graph, const WalkStart& start, int from, const WalkGraph::Step& step) {
  const auto holds = [&](int node) {
    return std::binary_search(start.nodes.begin(), start.nodes.end(), node);
  };
  const Vec2& here = graph.nodes()[static_cast<std::size_t>(from)].at;
  const Vec2& there = graph.nodes()[static_cast<std::size_t>(step.to)].at;
  const OutlinePoint& left = graph.points()[static_cast<std::size_t>(step.left)];
  const OutlinePoint& right = graph.points()[static_cast<std::size_t>(step.right)];
  if (!holds(from)) return narrowest(here, there, left, right);
  if (holds(step.to)) return {std::numeric_limits<double>::infinity(), here, false};
  // Discs along the step hold the place up to where the place is as far away as the two points are.
  const auto excess = [&](const Vec2& at) {
    return (start.place - at).squaredNorm() - (left.at - at).squaredNorm();
  };
  const double before = excess(here);
  const double after = excess(there);
  const double share = after > before ? std::clamp(-before / (after - before), 0.0, 1.0) : 0.0;
  return narrowest(here + share * (there - here), there, left, right);
}

std::vector<double> widthsFrom(const WalkGraph& graph, const WalkStart& begin) {
  std::vector<double> widths(graph.nodes().size(), 0);
  std::priority_queue<Queued> queue;
  for (const int start : begin.nodes) {
    widths[static_cast<std::size_t>(start)] = std::numeric_limits<double>::infinity();
    queue.push({widths[static_cast<std::size_t>(start)], start});
  }
  while (!queue.empty()) {
    const Queued next = queue.top();
    queue.pop();
    if (next.rank < widths[static_cast<std::size_t>(next.node)]) continue;
    for (const WalkGraph::Step& step : graph.nodes()[static_cast<std::size_t>(next.node)].steps) {
      const double width = std::min(next.rank, narrowingOf(graph, begin, next.node, step).width);
      if (width <= widths[static_cast<std::size_t>(step.to)]) continue;
      widths[static_cast<std::size_t>(step.to)] = width;
      queue.push({width, step.to});
    }
  }
  return widths;
}

std::vector<int> shortestWay(const WalkGraph& graph, const WalkStart& begin, int end, double width) {
  const std::size_t count = graph.nodes().size();
  std::vector<double> lengths(count, std::numeric_limits<double>::infinity());
  std::vector<int> previous(count, -1);
  std::priority_queue<Queued> queue;
  for (const int start : begin.nodes) {
    const auto index = static_cast<std::size_t>(start);
    lengths[index] = (graph.nodes()[index].at - begin.place).norm();
    queue.push({-lengths[index], start});
  }
  while (!queue.empty()) {
    const Queued next = queue.top();
    queue.pop();
    if (next.node == end) break;
    const WalkGraph::Node& node = graph.nodes()[static_cast<std::size_t>(next.node)];
    if (-next.rank > lengths[static_cast<std::size_t>(next.node)]) continue;
    for (const WalkGraph::Step& step : node.steps) {
      if (narrowingOf(graph, begin, next.node, step).width < width) continue;
      const auto to = static_cast<std::size_t>(step.to);
      const double length = -next.rank + (graph.nodes()[to].at - node.at).norm();
      if (length >= lengths[to]) continue;
      lengths[to] = length;
      previous[to] = next.node;
      queue.push({-length, step.to});
    }
  }
  if (lengths[static_cast<std::size_t>(end)] == std::numeric_limits<double>::infinity()) return {};
  std::vector<int> way = {end};
  while (previous[static_cast<std::size_t>(way.back())] >= 0) {
    way.push_back(previous[static_cast<std::size_t>(way.back())]);
  }
  std::reverse(way.begin(), way.end());
  return way;
}

}  // namespace baywright
