// SPDX-License-Identifier: Apache-2.0
#include "clearance/free_ways.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "clearance/walk_graph.h"

namespace baywright {
namespace {

/// How far beyond the wall's face somebody is out, metres; the gap is drawn on as a corridor that far.
constexpr double kOutside = 0.6;
/// Places on the sill that count as having reached it, as shares of its length.
constexpr std::array kSillPlaces = {0.5, 0.3, 0.7, 0.15, 0.85};
/// Standing at the sill, just inside the wall's face; far above rounding, far below any gap that counts.
constexpr double kInside = 0.02;

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
      const bool onEdge = std::abs(cross(along, exit.sill.a - from)) < kInside &&
                          std::abs(cross(along, exit.sill.b - from)) < kInside &&
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
  return chains;
}

std::vector<OutlinePoint> outlinePoints(const WalkInput& input) {
  std::vector<OutlinePoint> points;
  for (const Chain& chain : openOutline(input)) addOutline(points, chain, kWalkSpacing);
  for (Ring ring : input.obstacles) {
    if (ring.empty()) continue;
    ring.push_back(ring.front());
    addOutline(points, ring, kWalkSpacing);
  }
  for (const WayOut& exit : input.exits) {
    const Vec2 out = -kOutside * exit.inward;
    addOutline(points, std::array{exit.sill.a, Vec2(exit.sill.a + out), Vec2(exit.sill.b + out), exit.sill.b},
               kWalkSpacing);
  }
  return points;
}

/// The narrowest gap along a chain of nodes.
Gap narrowest(const WalkGraph& graph, const std::vector<int>& way, const Vec2& from) {
  Gap best{std::numeric_limits<double>::infinity(), from, from};
  for (std::size_t i = 0; i + 1 < way.size(); ++i) {
    const WalkGraph::Node& node = graph.nodes()[static_cast<std::size_t>(way[i])];
    const auto step = std::find_if(node.steps.begin(), node.steps.end(),
                                   [&](const WalkGraph::Step& s) { return s.to == way[i + 1]; });
    const Gap gap = gapAt(graph.points()[static_cast<std::size_t>(step->left)],
                          graph.points()[static_cast<std::size_t>(step->right)]);
    if (gap.width < best.width) best = gap;
  }
  return best;
}

struct Reached {
  double width = 0;
  int node = 0;
};
Reached widestOf(const WalkGraph& graph, const std::vector<double>& widths, std::span<const Vec2> places) {
  Reached best;
  for (const Vec2& place : places) {
    const auto node = graph.nodeOver(place);
    if (node && widths[static_cast<std::size_t>(*node)] > best.width)
      best = {widths[static_cast<std::size_t>(*node)], *node};
  }
  return best;
}

WidestWay wayTo(const WalkInput& input, const WalkGraph& graph, int start, const std::vector<double>& widths,
                const WayOut& exit) {
  const Vec2 sill = exit.sill.b - exit.sill.a;
  std::vector<Vec2> places;
  for (const double share : kSillPlaces) places.push_back(exit.sill.a + share * sill + kInside * exit.inward);
  const Reached inside = widestOf(graph, widths, places);
  WidestWay way;
  if (inside.width <= kWalkSpacing) return way;
  const std::vector<int> nodes = shortestWay(graph, start, inside.node, inside.width);
  const Gap gap = narrowest(graph, nodes, input.from);
  way.clearWidth = std::isfinite(gap.width) ? gap.width : sill.norm();
  way.narrowA = gap.a;
  way.narrowB = gap.b;
  way.path.push_back(input.from);
  for (std::size_t i = 1; i + 1 < nodes.size(); ++i)
    way.path.push_back(graph.nodes()[static_cast<std::size_t>(nodes[i])].at);
  way.path.push_back(0.5 * (exit.sill.a + exit.sill.b));

  const Vec2 beyond = 0.5 * (exit.sill.a + exit.sill.b) - (kOutside / 2) * exit.inward;
  const Reached outside = widestOf(graph, widths, {&beyond, 1});
  if (outside.width > kWalkSpacing) {
    way.throughWidth =
        narrowest(graph, shortestWay(graph, start, outside.node, outside.width), input.from).width;
  }
  return way;
}

}  // namespace

std::vector<WidestWay> widestWays(const WalkInput& input) {
  std::vector<WidestWay> ways(input.exits.size());
  if (input.floor.size() < 3 || input.exits.empty()) return ways;
  const WalkGraph graph(outlinePoints(input));
  const auto start = graph.nodeOver(input.from);
  if (!start) return ways;
  const std::vector<double> widths = widthsFrom(graph, *start);
  for (std::size_t i = 0; i < ways.size(); ++i) ways[i] = wayTo(input, graph, *start, widths, input.exits[i]);
  return ways;
}

}  // namespace baywright
