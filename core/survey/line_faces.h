// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/polygon.h"
#include "survey/line_graph.h"

namespace baywright::detail {

/// A region that edges of a graph enclose.
struct GraphFace {
  std::vector<int> nodes;  ///< its outline, counter-clockwise, no node twice
  std::vector<int> edges;  ///< edge i runs from node i to the next
  Ring ring;
  double area = 0;         ///< of the outline
  double netArea = 0;      ///< less what lies in it apart from the outline: columns, inner faces of walls
  double perimeter = 0;    ///< of the outline and of what lies in it
  int part = 0;            ///< which connected piece of the graph its outline belongs to
  std::vector<int> parts;  ///< connected pieces that lie directly in it

  /// Mean distance between the sides of a long thin region: a wall's thickness.
  double thickness() const { return perimeter > 0 ? 2 * netArea / perimeter : 0; }
};

/// A smaller one is a rounding error, square metres.
inline constexpr double kMinimumFace = 1e-8;

/// Every region that is enclosed, in the order of the graph's edges. Edges with the same region on both sides
/// are removed from the graph first.
std::vector<GraphFace> facesOf(LineGraph& graph);

/// For each node a number that is the same for all nodes that hang together.
std::vector<int> partsOf(const LineGraph& graph);

/// Index of the smallest face whose outline has the point inside; -1 when none has.
int faceAt(const std::vector<GraphFace>& faces, const Vec2& point);

}  // namespace baywright::detail
