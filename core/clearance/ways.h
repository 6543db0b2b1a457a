// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>
#include <vector>

#include "clearance/assessment.h"
#include "clearance/free_ways.h"
#include "job/job.h"

namespace baywright {

/// What a person has to walk round: all that stands between ankle and head height, the
/// frame's fabric included; not the mat, and not people, who can step aside.
WalkInput walkInput(const Job& job, std::span<const RoomObstacle> obstacles);

/// One way for each measured opening that is an exit, in the job's order. The start is the right-hander's
/// strike point; it is the left-hander's where only left-handers swing.
std::vector<Way> waysOf(const Job& job, std::span<const RoomObstacle> obstacles);

/// What a way passes at a point of its narrowest place, as a sentence says it: kit or a fixture before the
/// wall behind it. Empty where nothing stands there.
std::string sideName(std::span<const RoomObstacle> obstacles, const Vec2& at);

/// The floor that doors need to open; those that open out of the room need none.
std::vector<DoorSweep> doorSweeps(const Job& job);

}  // namespace baywright
