// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "clearance/finding.h"
#include "job/job.h"

namespace baywright {

/// How much of the floor each golfer and club could use: the area of the standing zone (headroom_field.h) for
/// shots that fly as the bay looks, m2, as swing.<golfer>.<club>.standing_area, by name; zero where the ball
/// may lie nowhere. Apart from assess() because it takes some ten milliseconds a swing. Left out: golfers who
/// have no swing, and rooms without walls.
std::vector<Quantity> standingAreas(const Job& job);

/// Metres between the nodes at which the zone's edge is found, in rooms of up to 150 m2; more in larger ones,
/// a metre at most. Between them the edge is straight: a round corner loses less than a tenth of the square
/// of it.
inline constexpr double kStandingCell = 0.05;

}  // namespace baywright
