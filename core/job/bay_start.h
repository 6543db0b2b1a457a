// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/frames.h"
#include "job/kit.h"
#include "job/room.h"

namespace baywright {

/// Where a bay is put in a room that it has never stood in, for the fitter to move on: screen before the
/// middle of a wall, with kStartBehind behind the frame. Of the walls that are wider than the frame (of all,
/// where none is) it is the one with the most floor in front of its middle; of equals the first. The world's
/// origin for a room without walls.
BayPose startingPose(const Room& room, const Frame& frame);

inline constexpr double kStartBehind = 0.40;  // metres, screen travel and hands: common practice, no source

}  // namespace baywright
