// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/line_faces.h"

namespace baywright::detail {

/// A straight way over a gap between two ends of walls that face each other.
struct LineGap {
  int from = 0;  ///< nodes
  int to = 0;
  double width = 0;
};

/// A wall drawn as two lines is no thicker than this; a region as thin on the whole is masonry and no room.
inline constexpr double kThickestWall = 0.5;

/// A house has fewer ends of walls; more of them are hatches or scribbles, and nothing is bridged.
inline constexpr std::size_t kMostWallEnds = 30'000;
inline constexpr std::size_t kMostRays = 4'000;

/// Gaps of at most `widest`, narrowest first, each end in one gap only for each way it faces. An end of a
/// wall is a loose end, or the corner where one face turns round the wall's short end into the other.
std::vector<LineGap> facingGaps(const LineGraph& graph, double tolerance, double widest);

/// A gap up to this between two ends of walls is a door, whatever is closed round it. A wider one may be no
/// more than the space between two nibs.
inline constexpr double kWidestDoor = 1.3;

/// Adds bridges over those gaps that are at most `widest` and cross no line; of those beyond kWidestDoor only
/// such as do not cut a room of `faces` in two. Returns how many were added.
int bridge(LineGraph& graph, const std::vector<GraphFace>& faces, const std::vector<LineGap>& gaps,
           double widest);

/// Adds bridges from loose ends straight on to the wall that they point at, where that is at most `widest`
/// away: doors in the corner of a room.
int bridgeToWalls(LineGraph& graph, const std::vector<GraphFace>& faces, double widest, double tolerance);

/// Removes bridges over mere niches: regions of less than kLargestNiche behind a single bridge.
int removeNiches(LineGraph& graph, const std::vector<GraphFace>& faces);
inline constexpr double kLargestNiche = 2.0;  // square metres

bool isMasonry(const GraphFace& face);

}  // namespace baywright::detail
