// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "survey/line_ends.h"
#include "survey/line_faces.h"

namespace baywright::detail {

/// A straight way over a gap between two ends of walls that face each other.
struct LineGap {
  int from = 0;  ///< nodes
  int to = 0;
  double width = 0;
};

/// A house has fewer ends of walls; more of them are hatches or scribbles, and nothing is bridged.
inline constexpr std::size_t kMostWallEnds = 30'000;
inline constexpr std::size_t kMostRays = 4'000;

/// Gaps of at most `widest`, narrowest first, each end in one gap only for each way it faces.
std::vector<LineGap> facingGaps(const LineGraph& graph, double tolerance, double widest);

/// A gap up to this between two ends of walls is a door, whatever is closed round it. A wider one may be no
/// more than the space between two nibs.
inline constexpr double kWidestDoor = 1.3;

/// Adds bridges over those gaps that are at most `widest` and cross no line; of those beyond kWidestDoor only
/// such as do not cut a room of `faces` in two. Returns how many were added.
int bridge(LineGraph& graph, const std::vector<GraphFace>& faces, const std::vector<LineGap>& gaps,
           double widest);

/// Adds bridges from ends of walls straight on to what they point at, at most `widest` away. From a loose
/// end: up to kWidestDoor, a door in the corner of a room. From any end: where the wall goes on in line
/// behind what it meets, as where a partition stands at the jamb of a window, or where its other face is
/// bridged. None of them cuts a room of `faces` in two, but doors in line with a wall and those of `doors`,
/// from hinge to where the leaf shuts. Returns how many were added.
int bridgeToWalls(LineGraph& graph, const std::vector<GraphFace>& faces, std::span<const Segment2> doors,
                  double widest, double tolerance);

/// Removes bridges over mere niches: regions of less than kLargestNiche behind a single bridge.
int removeNiches(LineGraph& graph, const std::vector<GraphFace>& faces);
inline constexpr double kLargestNiche = 2.0;  // square metres

bool isMasonry(const GraphFace& face);

}  // namespace baywright::detail
