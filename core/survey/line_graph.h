// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <span>
#include <vector>

#include "base/problem.h"
#include "geometry/shapes.h"

namespace baywright::detail {

/// A straight piece between two places where lines end, meet or cross.
struct GraphEdge {
  std::array<int, 2> nodes{};
  int line = -1;         ///< the line it is a piece of; -1 for a bridge over a gap
  bool removed = false;  ///< not part of any outline

  bool isBridge() const { return line < 0; }
  int other(int node) const { return nodes[0] == node ? nodes[1] : nodes[0]; }
};

/// Lines on the plan cut at each other.
struct LineGraph {
  std::vector<Vec2> nodes;
  std::vector<GraphEdge> edges;

  Vec2 along(const GraphEdge& edge) const { return nodes[at(edge.nodes[1])] - nodes[at(edge.nodes[0])]; }
  /// For each node the edges that are left there, in their order.
  std::vector<std::vector<int>> incidence() const;
  static std::size_t at(int index) { return static_cast<std::size_t>(index); }
};

inline constexpr std::size_t kMostJoinedLines = 30'000;
inline constexpr std::size_t kMostCrossings = 500'000;

/// Cuts lines where they cross, where one ends within `tolerance` of another, and where they overlap; joins
/// ends that lie within `tolerance`. A corner then moves to where its lines meet, if that is within twice the
/// tolerance. Pieces that go straight on from each other are one edge. Lines shorter than the tolerance
/// vanish. Refused: more than kMostJoinedLines lines or
/// kMostCrossings crossings.
Result<LineGraph> graphOf(std::span<const Segment2> lines, double tolerance);

/// Removes edges that lead nowhere, until none is left.
void pruneLooseEnds(LineGraph& graph);

}  // namespace baywright::detail
