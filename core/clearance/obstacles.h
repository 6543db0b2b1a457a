// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "clearance/obstacle.h"
#include "job/job.h"

namespace baywright {

using Obstacles = std::vector<RoomObstacle>;

/// Everything solid in the job, in the order walls, ceiling, fixtures, doors, bystanders, kit.
Obstacles obstaclesOf(const Job& job);

/// What stays where it is when the bay moves.
Obstacles roomObstacles(const Job& job);

/// What the option brings, where it puts it.
Obstacles kitObstacles(const Job& job);

// Parts of roomObstacles.

/// How far masonry is taken to reach behind a wall's face, so that what swings through a wall is found deep
/// in it; less where more of the room lies behind.
inline constexpr double kWallDepth = 2.0;
/// How far walls reach above the highest ceiling, and ceilings above their underside.
inline constexpr double kAboveCeiling = 2.0;
/// Highest top of what nobody measured.
inline constexpr double kUnmeasuredTop = 10.0;

/// One solid a wall, split round passages and round sectional doors that stay open; windows are solids of
/// their own. Where a passage's or door's place in the wall was not measured the wall is taken to be whole.
Obstacles wallObstacles(const Job& job);
/// Convex prisms above each part's plane; sides that border on more ceiling are shared. Floor that no part
/// covers has a ceiling that was not measured.
Obstacles ceilingObstacles(const Job& job);
Obstacles fixtureObstacles(const Job& job);
/// Tracks of sectional doors, and the open door itself where it may stay open.
Obstacles doorObstacles(const Job& job);
Obstacles bystanderObstacles(const Job& job);

}  // namespace baywright
