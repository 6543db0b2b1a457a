// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "survey/scan_lines.h"

namespace baywright {

/// How walls lean, all together: radians toward x and y that a level scan's z is off what its walls call
/// plumb. Each wall says how far it leans across itself (its patches' distances against their heights); least
/// squares with Huber's weights over all. Nothing where walls do not face two directions.
std::optional<Vec2> commonLean(const LevelScan& scan, const std::vector<ScanLine>& lines);

/// A floor that falls more than this against plumb walls is a falling floor: garages drain to their door, but
/// their walls are plumb (common practice, no source). Below it walls and floor agree, and the floor, seen
/// over more of the room, says what is level.
inline constexpr double kFallingFloor = 0.0070;  ///< radians, 0.4 degrees

/// The floor fitted anew, to all its points by reweighted least squares, each square of the plan with the
/// same say; turned and shifted so that this plane is z = 0.
LevelScan settledOnFloor(LevelScan scan, const Progress& progress = {});

/// Turned so that the walls are plumb, its floor's middle at z = 0.
LevelScan plumbed(LevelScan scan, const Vec2& lean);

}  // namespace baywright
