// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/problem.h"
#include "base/progress.h"
#include "clearance/contour.h"
#include "geometry/triangle_tree.h"
#include "job/job.h"

namespace baywright {

/// Where on the floor could this golfer swing this club, shooting in this direction?
struct HeadroomQuestion {
  Id golfer;
  Id club;
  double heading = 0;  ///< of the shot, radians counter-clockwise from world x
  double cell = 0.05;  ///< metres between nodes, 0.01 to 1
};

/// The standing zone. `margin` holds at each node what the expected swing leaves over its clearance when the
/// ball lies there, or how far the ball itself is inside the floor's edge, whichever is less.
struct HeadroomField {
  GridField margin;
  std::vector<Ring> zone;  ///< zeroContours: where the ball may lie
};

/// Against everything that stays in the room, under any ceiling: walls, fixtures, tracks and doors that stay
/// open; not the kit, which would move along, and not people. What was not measured counts as large as it can
/// be.
///
/// A margin changes by no more than the ball moves. So nodes are worked out exactly on a coarse grid and then
/// only where the zero line may pass; near it (kExactBand cells either way) all are exact. Elsewhere `margin`
/// is a bound: never above the true margin. Search::Everything works out each node by looking at every pair.
///
/// Empty when `progress` asked to stop. Refused with a sentence: golfers and clubs that are not in the job, a
/// golfer who has no swing, a room without walls, cells out of range or more than kMostNodes.
Result<std::optional<HeadroomField>> headroomField(const Job& job, const HeadroomQuestion& question,
                                                   const Progress& progress, Search search = Search::Tree);
inline constexpr double kExactBand = 1.5;
inline constexpr long kMostNodes = 1'000'000;

}  // namespace baywright
