// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/line_graph.h"

namespace baywright::detail {

/// A wall drawn as two lines is no thicker than this; a region as thin on the whole is masonry and no room.
inline constexpr double kThickestWall = 0.5;

/// An end of a wall's face and the way it points: a loose end, or the corner where one face turns round the
/// wall's short end into the other.
struct WallEnd {
  int node = 0;
  Vec2 place = Vec2::Zero();
  Vec2 way{1, 0};
  int other = -1;  ///< node where the wall's other face ends; -1 for a loose end

  bool loose() const { return other < 0; }
};

/// All ends, from left to right.
std::vector<WallEnd> wallEnds(const LineGraph& graph);

/// Where the way straight on from an end first meets an edge.
struct EndHit {
  int edge = -1;  ///< -1: nothing within reach
  double distance = 0;
};
EndHit firstHit(const LineGraph& graph, const WallEnd& end, double reach, double tolerance);

/// True where a wall goes on in line with the end behind what it meets at `distance`: a face that runs the
/// same way from there, or from no farther behind than a wall is thick.
bool goesOnBehind(const LineGraph& graph, const WallEnd& end, double distance, double tolerance);

/// The node of the edge at the point; where there is none the edge is cut.
int nodeAt(LineGraph& graph, int edge, const Vec2& point, double tolerance);

/// True where an edge runs straight from one node to the other.
bool joined(const LineGraph& graph, int from, int to);

}  // namespace baywright::detail
