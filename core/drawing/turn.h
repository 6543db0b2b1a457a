// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

/// A thing that has a direction on the plan.
struct Turnable {
  Vec2 pivot = Vec2::Zero();  ///< about which rotate() turns it, world metres
  double heading = 0;         ///< radians from world x; of d for a bay, of the lens for a projector
};

/// Nothing for what rotate() refuses.
std::optional<Turnable> turnableOf(const Job& job, Id thing);

/// A point that lies this far from the pivot along the heading: where a handle is shown.
Vec2 pointAhead(const Turnable& turnable, double distance);

/// The heading after a drag about the pivot from one point to another; the turnable's own where one of them
/// is the pivot.
double headingAfterDrag(const Turnable& turnable, const Vec2& from, const Vec2& to);

/// A heading that was near something worth having.
struct SnappedHeading {
  double heading = 0;
  std::string what;  ///< "square to wall B", "45°"; empty: nothing attracted it
};
/// Parallel or square to the nearest such wall, else a multiple of 15 degrees of the world, each within
/// kTurnReach.
SnappedHeading snappedHeading(const Job& job, double heading);
inline constexpr double kTurnReach = 0.052;  // radians, 3 degrees

/// Turned by rotate() so that its heading is this one.
Result<Job> turnedTo(Job job, Id thing, double heading);

}  // namespace baywright
