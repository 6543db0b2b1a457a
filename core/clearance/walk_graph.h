// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "geometry/polygon.h"

namespace baywright {

/// A point on an outline, with the piece of outline next to it on either side.
struct OutlinePoint {
  Vec2 at = Vec2::Zero();
  Segment2 before;
  Segment2 after;
  int exit = -1;  ///< the exit whose jambs it belongs to, if any
  int side = 0;   ///< and which of its sides
};

/// Points along a chain of corners, at the corners and no more than `spacing` apart between them. A chain
/// that ends where it began is closed.
void addOutline(std::vector<OutlinePoint>& points, std::span<const Vec2> chain, double spacing);

/// Gap between the outlines at two points, with the points between which it is measured: between the two, or
/// from one of them square to the outline at the other, whichever is less. Exact at a corner, where narrow
/// places are, and between parallels.
struct Gap {
  double width = 0;
  Vec2 a = Vec2::Zero();
  Vec2 b = Vec2::Zero();
};
Gap gapAt(const OutlinePoint& first, const OutlinePoint& second);

/// The Voronoi diagram of outline points as a graph: its vertices are places to stand, its edges lead between
/// two points. An edge is as wide as the smallest free disc with its middle on it. Between different sides of
/// one exit the width counts as infinite: how wide a door is, is asked apart.
class WalkGraph {
 public:
  explicit WalkGraph(std::vector<OutlinePoint> points);

  struct Step {
    int to = 0;
    double width = 0;
    int left = 0;  ///< the two points that it passes between
    int right = 0;
  };
  /// Vertices with their steps; `at` is the vertex.
  struct Node {
    Vec2 at = Vec2::Zero();
    std::vector<Step> steps;
    std::vector<int> around;  ///< the points round it, counter-clockwise: a convex polygon
  };

  const std::vector<OutlinePoint>& points() const { return points_; }
  const std::vector<Node>& nodes() const { return nodes_; }
  /// The node whose polygon holds the place; nothing outside all points.
  std::optional<int> nodeOver(const Vec2& place) const;

 private:
  std::vector<OutlinePoint> points_;
  std::vector<Node> nodes_;
};

/// Where somebody sets out: any free disc over the place, so all nodes whose disc holds it, and the parts of
/// steps whose discs do.
struct WalkStart {
  Vec2 place = Vec2::Zero();
  std::vector<int> nodes;  ///< none outside all points
};
WalkStart startAt(const WalkGraph& graph, const Vec2& place);

/// Where a step is narrowest: the smallest free disc with its middle on it. Where the step begins in discs
/// over the start, only what lies beyond them counts.
struct Narrowing {
  double width = 0;  ///< infinite over the start and between different sides of one exit
  Vec2 middle = Vec2::Zero();
  bool isGate = false;  ///< right between the step's two points: their distance
};
Narrowing narrowingOf(const WalkGraph& graph, const WalkStart& start, int from, const WalkGraph::Step& step);

/// For each node the width of the widest way to it, infinite over the start itself, 0 where none leads.
std::vector<double> widthsFrom(const WalkGraph& graph, const WalkStart& start);

/// The shortest chain of nodes by steps of at least `width` to `end`; empty when there is none.
std::vector<int> shortestWay(const WalkGraph& graph, const WalkStart& start, int end, double width);

}  // namespace baywright
