// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/polygon.h"
#include "job/job.h"

namespace baywright {

/// A line of a thing that likes to fall on another's: the middle of a frame, of a door, of the room.
struct MiddleLine {
  Vec2 through = Vec2::Zero();
  Vec2 along{1, 0};  ///< unit vector
  std::string what;  ///< "the bay's middle line"
};

/// A thing on the plan as a drag sees it, world metres.
struct PlanFootprint {
  Ring
      ring;  ///< its corners; one or two points for what has no area (a strike point, an opening in its wall)
  std::vector<MiddleLine> middles;
  /// What must stay free round it on each side; zero but for a frame.
  struct Gap {
    Vec2 toward{1, 0};  ///< unit vector
    double distance = 0;
    std::string what;  ///< "50 mm beside the frame"
  };
  std::vector<Gap> gaps;
};

/// The footprint of whatever a drag on the plan moves: the bay by its frame, kit, a golfer by the strike
/// point, fixtures, bystanders, openings, ceiling parts with a region, a ceiling height by its place. Nothing
/// for walls, plans, scans and other measurements, and for an id that names nothing.
std::optional<PlanFootprint> planFootprint(const Job& job, Id thing);

}  // namespace baywright
