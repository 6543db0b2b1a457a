// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>
#include <vector>

#include "base/problem.h"
#include "geometry/vec.h"
#include "job/job.h"

namespace baywright {

/// A line on the plan, world metres, on which the next corner of an outline is likely to lie.
struct TraceLine {
  Vec2 through = Vec2::Zero();
  Vec2 along{1, 0};  ///< unit vector
  std::string what;  ///< "square to the first side": for the note beside the pointer
};

/// Lines for the next corner of an outline that is being traced: those through the last corner come first.
/// They run level and upright while there is no side yet; then in line with, square to and at 45 degrees to
/// the sides there are. Through each earlier corner run lines that are in line with or square to the sides,
/// so that a corner where two lines meet closes the outline with a right angle. A corner put on such a line
/// is exact up to rounding. Sides that run within kSameDirection of an earlier one, or square to it, add
/// nothing.
std::vector<TraceLine> traceLines(std::span<const Vec2> corners);

/// Nobody builds a corner of 89.5 degrees on purpose: such a side is a click that missed. Radians.
inline constexpr double kSameDirection = 0.009;

/// The next corner, `length` metres from the last one toward the pointer. Refused: a pointer on the last
/// corner, which points nowhere.
Result<Vec2> cornerAtLength(const Vec2& last, const Vec2& pointer, double length);

/// How well what is drawn by hand is known: as read off a drawing where a scaled plan lies under it, else as
/// guessed.
Instrument drawnInstrument(const Job& job);

}  // namespace baywright
