// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "job/job.h"

namespace baywright {

/// One figure that must still be read on site.
struct MeasuringTask {
  std::string what;          ///< "wall C", "diagonal A-C", "height of Front door"
  std::string why;           ///< a few words: "not measured", "guessed", "corner C is weak"
  std::vector<Id> subjects;  ///< walls (corners) or the thing
  std::optional<Vec2> from;  ///< where to draw it on the plan, world metres
  std::optional<Vec2> to;    ///< the other end, for lengths
};

/// What is still to be measured, in the order in which a fitter walks: walls, diagonals, ceiling, openings,
/// fixtures. A wall is wanted when nobody read it and it is not known well (kGuessedWall). Then, as if the
/// walls had been read, the diagonals that advice.h asks for, at most kMostDiagonals of them. Then whatever
/// is not known or guessed. Empty for a room without walls.
std::vector<MeasuringTask> measuringTasks(const Job& job);

inline constexpr int kMostDiagonals = 3;

}  // namespace baywright
