// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/problem.h"
#include "drawing/views.h"
#include "job/job.h"

namespace baywright {

/// A distance that is shown while a thing is dragged and that can be typed, metres of the drawing.
struct LiveDimension {
  std::string what;          ///< "to wall B", "above the floor"
  Vec2 from = Vec2::Zero();  ///< on the thing
  Vec2 to = Vec2::Zero();    ///< on what it is measured to
  double value = 0;          ///< metres, never negative
  Vec2 grow{1, 0};           ///< unit vector: the way the thing moves when the value grows
};

/// On the plan: from the thing to the walls that it faces, each measured square to the wall from the nearest
/// point of the thing's footprint, the nearest wall first and at most one in each direction. For an opening:
/// to the ends of its wall. In elevations: above the floor and below the ceiling, and for the lens how far it
/// is from the screen or from the bay's middle. Where a wall is looked at: to its ends as well. Empty for what is
/// not dragged.
std::vector<LiveDimension> liveDimensions(const DrawnView& view, const Job& job, Id thing);

/// The same from a point on the plan to the walls that it faces.
std::vector<LiveDimension> wallDistances(const Room& room, const Vec2& point);

/// The job with the thing moved so that this dimension has that value.
Result<Job> withDimension(const DrawnView& view, Job job, Id thing, const LiveDimension& dimension,
                          double value);

/// A point moved so that this dimension, measured from it, has that value.
Vec2 pointWith(const LiveDimension& dimension, const Vec2& point, double value);

/// A dimension between two points that nothing follows.
LiveDimension dimensionBetween(const Vec2& from, const Vec2& to, std::string what);

}  // namespace baywright
