// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "drawing/snap.h"
#include "drawing/views.h"
#include "job/job.h"

namespace baywright {

/// What attracts a thing that is dragged in a view, as rules for the move from where the job has it now,
/// metres of the drawing. On the plan: standing against a wall or a fixture, with and without the room that a
/// frame needs there; in line with a fixture's side; its middle line on the room's, a door's or the bay's. In
/// an elevation the same as far as it can be seen there, standing on the floor, and hanging under the
/// ceiling. A wall falls in line with the walls that run as it does. Empty for what is not dragged.
std::vector<SnapRule> moveRules(const DrawnView& view, const Job& job, Id thing);

/// What attracts the corner where this wall starts: right angles with the walls beyond its two neighbours,
/// and places level and upright with the corners beside it.
std::vector<SnapRule> cornerRules(const Room& room, Id wall);

/// What attracts a point that is put on the plan: corners of the room and of fixtures.
std::vector<SnapPoint> planPoints(const Job& job);
/// Faces of walls, sides of fixtures, middle lines of the room.
std::vector<SnapRule> planLines(const Job& job);

}  // namespace baywright
