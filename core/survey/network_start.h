// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/network.h"

namespace baywright {

/// Places from which an adjustment may begin, likeliest first; at most kMostStarts, never none. Corner 0 is
/// the origin and corner 1 lies on the positive x axis. The order of the observations does not matter.
///
/// Two ways are tried. Rooms of right angles: each sequence of left and right turns that closes, up to
/// kMostTurns corners, with lengths that were not read found from those that were. And all rooms: corner by
/// corner along the walls, from wherever two read lengths cross, from an angle, or else from a turn of 90 or
/// 45 degrees, keeping the likeliest few. Each is judged by how far the observations lie from it, with no
/// single one counting for much, so that one blunder does not lead astray; walls that cross and rooms that
/// are wound the wrong way come last.
std::vector<Ring> startingCorners(const SurveyNetwork& network);

inline constexpr std::size_t kMostStarts = 12;
inline constexpr int kMostTurns = 16;

}  // namespace baywright
