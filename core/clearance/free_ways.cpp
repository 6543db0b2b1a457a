// SPDX-License-Identifier: Apache-2.0
#include "clearance/free_ways.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <tuple>

#include "clearance/walk_graph.h"

namespace baywright {
namespace {

/// How far beyond the wall's face somebody is out, metres; the gap is drawn on as a corridor that far.
constexpr double kOutside = 0.6;
/// The sill and the outline that it interrupts are one line to within this, metres.
constexpr double kOnLine = 0.02;
/// A point of the outline this near to the end of a sill is that end, metres.
constexpr double kJamb = 1e-6;
/// Points are laid a little closer than the spacing that counts, so that rounding opens no way between them.
constexpr double kPointSpacing = 0.95 * kWalkSpacing;

using Chain = std::vector<Vec2>;

/// Adds a straight piece, to the last chain where it goes on from there.
void addPiece(std::vector<Chain>& chains, const Vec2& from, const Vec2& to) {
  if (chains.empty() || chains.back().back() != from) chains.push_back({from});
  chains.back().push_back(to);
}

/// The floor's outline cut open at the sills.
std::vector<Chain> openOutline(const WalkInput& input) {
  std::vector<Chain> chains;
  for (std::size_t i = 0; i < input.floor.size(); ++i) {
    const Vec2& from = input.floor[i];
    const Vec2& to = input.floor[(i + 1) % input.floor.size()];
    const Vec2 along = (to - from).normalized();
    std::vector<std::pair<double, double>> gaps;
    for (const WayOut& exit : input.exits) {
      const bool onEdge = std::abs(cross(along, exit.sill.a - from)) < kOnLine &&
                          std::abs(cross(along, exit.sill.b - from)) < kOnLine &&
                          exit.inward.dot(leftOf(along)) > 0.5;
      const double a = along.dot(exit.sill.a - from);
      const double b = along.dot(exit.sill.b - from);
      if (onEdge && std::max(a, b) > 0 && std::min(a, b) < (to - from).norm())
        gaps.emplace_back(std::min(a, b), std::max(a, b));
    }
    std::sort(gaps.begin(), gaps.end());
    double reached = 0;
    for (const auto& [start, end] : gaps) {
      if (start > reached) addPiece(chains, from + reached * along, from + start * along);
      reached = std::max(reached, end);
    }
    if (reached < (to - from).norm()) addPiece(chains, from + reached * along, to);
  }
  if (chains.size() > 1 && chains.back().back() == chains.front().front()) {
    chains.back().insert(chains.back().end(), chains.front().begin() + 1, chains.front().end());
    chains.erase(chains.begin());
  }
  return chains;
}

/// Jambs drawn on outward to a wall that closes them off, so that no way leads round outside; marks the
/// jambs' own points.
void addCorridor(std::vector<OutlinePoint>& points, const WayOut& exit, int index) {
  const auto mark = [&](OutlinePoint& point, int side) {
    point.exit = index;
    point.side = side;
  };
  for (OutlinePoint& point : points) {
    if ((point.at - exit.sill.a).norm() < kJamb) mark(point, 0);
    if ((point.at - exit.sill.b).norm() < kJamb) mark(point, 1);
  }
  const Vec2 out = -kOutside * exit.inward;
  const std::array<Vec2, 4> corners = {exit.sill.a, exit.sill.a + out, exit.sill.b + out, exit.sill.b};
  for (const auto& [from, to, side] : {std::tuple(0, 1, 0), std::tuple(3, 2, 1), std::tuple(1, 2, 2)}) {
    const std::size_t before = points.size();
    const std::array chain = {corners[static_cast<std::size_t>(from)], corners[static_cast<std::size_t>(to)]};
    addOutline(points, chain, kPointSpacing);
    for (std::size_t i = before; i < points.size(); ++i) mark(points[i], side);
  }
}

std::vector<OutlinePoint> outlinePoints(const WalkInput& input) {
  std::vector<OutlinePoint> points;
  for (const Chain& chain : openOutline(input)) addOutline(points, chain, kPointSpacing);
  for (Ring ring : input.obstacles) {
    if (ring.empty()) continue;
    ring.push_back(ring.front());
    addOutline(points, ring, kPointSpacing);
  }
  for (std::size_t i = 0; i < input.exits.size(); ++i)
    addCorridor(points, input.exits[i], static_cast<int>(i));
  return points;
}

/// The two points between which a step is narrowest.
Gap gapOf(const WalkGraph& graph, const Narrowing& narrow, const WalkGraph::Step& step) {
  const OutlinePoint& left = graph.points()[static_cast<std::size_t>(step.left)];
  const OutlinePoint& right = graph.points()[static_cast<std::size_t>(step.right)];
  if (narrow.isGate) return gapAt(left, right);
  const Vec2 half = 0.5 * narrow.width * (right.at - left.at).normalized();
  return {narrow.width, narrow.middle - half, narrow.middle + half};
}

/// The narrowest gap along a chain of nodes.
Gap narrowestGap(const WalkGraph& graph, const std::vector<int>& way, const WalkStart& start) {
  Gap best{std::numeric_limits<double>::infinity(), start.place, start.place};
  for (std::size_t i = 0; i + 1 < way.size(); ++i) {
    const WalkGraph::Node& node = graph.nodes()[static_cast<std::size_t>(way[i])];
    const auto step = std::find_if(node.steps.begin(), node.steps.end(),
                                   [&](const WalkGraph::Step& s) { return s.to == way[i + 1]; });
    const Narrowing narrow = narrowingOf(graph, start, way[i], *step);
    if (!std::isfinite(narrow.width)) continue;
    const Gap gap = gapOf(graph, narrow, *step);
    if (gap.width < best.width) best = gap;
  }
  return best;
}

WidestWay wayTo(const WalkGraph& graph, const WalkStart& start, const std::vector<double>& widths,
                const WayOut& exit) {
  WidestWay way;
  const Vec2 middle = 0.5 * (exit.sill.a + exit.sill.b);
  const auto end = graph.nodeOver(middle - kOutside / 2 * exit.inward);
  const double width = end ? widths[static_cast<std::size_t>(*end)] : 0;
  if (width <= kWalkSpacing) return way;
  const std::vector<int> nodes = shortestWay(graph, start, *end, width);
  const Gap gap = narrowestGap(graph, nodes, start);
  way.clearWidth = std::isfinite(gap.width) ? gap.width : (exit.sill.b - exit.sill.a).norm();
  way.narrowA = gap.a;
  way.narrowB = gap.b;
  way.path.push_back(start.place);
  for (const int node : nodes) {
    const Vec2& at = graph.nodes()[static_cast<std::size_t>(node)].at;
    if (exit.inward.dot(at - middle) < 0) break;  // out
    way.path.push_back(at);
  }
  way.path.push_back(middle);
  return way;
}

}  // namespace

std::vector<WidestWay> widestWays(const WalkInput& input) {
  std::vector<WidestWay> ways(input.exits.size());
  if (input.floor.size() < 3 || input.exits.empty()) return ways;
  const WalkGraph graph(outlinePoints(input));
  for (std::size_t k = 0; k < input.from.size(); ++k) {
    const WalkStart start = startAt(graph, input.from[k]);
    const std::vector<double> widths = widthsFrom(graph, start);
    for (std::size_t i = 0; i < ways.size(); ++i) {
      WidestWay way = wayTo(graph, start, widths, input.exits[i]);
      if (k == 0 || way.clearWidth < ways[i].clearWidth) ways[i] = std::move(way);
    }
  }
  return ways;
}

}  // namespace baywright
