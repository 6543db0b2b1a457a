// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "geometry/vec.h"
#include "job/job.h"

namespace baywright {

/// How high a thing stands or hangs, metres above the floor.
struct ThingHeights {
  double bottom = 0;
  double top = 0;
  Vec2 at = Vec2::Zero();  ///< where on the plan its middle is
  bool canRise = false;    ///< a drag may move it up and down
};

/// Of kit, fixtures, openings, bystanders and ceiling parts (bottom and top are then the plane's height
/// there). Nothing for what has no height: golfers, walls, scans.
std::optional<ThingHeights> heightsOf(const Job& job, Id thing);

}  // namespace baywright
