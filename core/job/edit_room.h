// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

// The floor's outline and the ceiling; world metres. A corner is named by the wall that starts there.
// Whatever moves a corner keeps each opening's offset from its wall's start, and slides it back only as far
// as the wall became too short; a wall shorter than its openings is refused.

/// The whole outline, in either sense of rotation; `how` it was found gives the corners' uncertainty. Where
/// the room has an outline already, walls keep their id, name and openings: in their order when the number of
/// corners is the same, else where a wall still starts at the same corner. Openings of walls that are gone go
/// too. New walls are named "A", "B", ... by the first names that are free. A room without a ceiling gets a
/// flat one whose height is not measured, and a bay that nobody has placed yet goes where startingPose puts
/// it. No corners at all: back to a room that is not surveyed.
Result<Job> setRoomOutline(Job job, std::vector<Vec2> corners, Instrument how);

/// The corner where this wall starts. Its uncertainty stays as it was.
Result<Job> moveWallCorner(Job job, Id wall, const Vec2& position);

/// Moves the wall along its inward normal, positive into the room. Its corners slide along the neighbouring
/// walls, so that no angle changes; along a neighbour that runs almost the same way the corner goes straight.
Result<Job> moveWall(Job job, Id wall, double inward);

/// Gives the wall this length: the next wall moves along as a whole, so that right angles stay. The
/// instrument's accuracy becomes the corners' accuracy along this wall.
Result<Job> setWallLength(Job job, Id wall, const Dimension& length);

/// Splits the wall in two at the point of it that is nearest to `position`; the new wall runs from there. An
/// opening across that point is refused, openings beyond it move to the new wall.
Result<Job> insertWallCorner(Job job, Id wall, const Vec2& position);
/// Takes away the corner where this wall starts; the wall before reaches on to the next corner. The wall's
/// openings go with it.
Result<Job> removeWallCorner(Job job, Id wall);

/// Name, thickness, corner and covariance of the wall with the same id.
Result<Job> setWall(Job job, const Wall& wall);
Result<Job> renameRoom(Job job, const std::string& name);

Result<Job> addCeilingPart(Job job, CeilingPart part);
Result<Job> setCeilingPart(Job job, const CeilingPart& part);

}  // namespace baywright
