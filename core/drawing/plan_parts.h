// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "drawing/board.h"
#include "drawing/view_input.h"

namespace baywright::detail {

/// The parts of the plan, each in a file of its own. Internal to `drawing`; plan.cpp puts them together.

// plan_room.cpp
void drawFloorAndWalls(Board& board, const ViewInput& input);
void drawCeiling(Board& board, const ViewInput& input);
void drawFixtures(Board& board, const ViewInput& input);
void drawFixtureNames(Board& board, const ViewInput& input);

// plan_openings.cpp
void drawOpenings(Board& board, const ViewInput& input);

// plan_bay.cpp
void drawBay(Board& board, const ViewInput& input);
void drawPeople(Board& board, const ViewInput& input);

// plan_zones.cpp
void drawBeam(Board& board, const ViewInput& input);
void drawBallZones(Board& board, const ViewInput& input);
/// What the zones of the ball are.
void drawBallNames(Board& board, const ViewInput& input);
void drawDoorSweeps(Board& board, const ViewInput& input);
void drawWays(Board& board, const ViewInput& input);
void drawStanding(Board& board, const ViewInput& input);

// plan_corners.cpp
void drawCorners(Board& board, const ViewInput& input);

// plan_readings.cpp
/// Ceiling heights where they were taken.
void drawHeights(Board& board, const ViewInput& input);

// plan_dimensions.cpp
void drawWallLengths(Board& board, const ViewInput& input);
void drawBayDimensions(Board& board, const ViewInput& input);

}  // namespace baywright::detail
