// SPDX-License-Identifier: Apache-2.0
#include "drawing/wall_pick.h"

#include <algorithm>

#include "job/room_geometry.h"

namespace baywright {

std::optional<WallSpot> wallAt(const Room& room, const Vec2& point, double reach) {
  std::optional<WallSpot> best;
  const auto lines = wallLines(room);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const WallLine& line = lines[i];
    const double along = std::clamp((point - line.start).dot(line.along), 0.0, line.length);
    double distance = (line.at(along) - point).norm();
    // The masonry belongs to the wall as well.
    const double depth = -(point - line.start).dot(line.inward);
    if (depth > 0) distance = std::max(0.0, distance - room.walls[i].thickness);
    if (distance > reach || (best && distance >= best->distance)) continue;
    best = WallSpot{line.wall, along, distance};
  }
  return best;
}

std::optional<Id> cornerAt(const Room& room, const Vec2& point, double reach) {
  std::optional<Id> best;
  double least = reach;
  for (const Wall& wall : room.walls) {
    const double distance = (wall.start - point).norm();
    if (distance > least || (best && distance >= least)) continue;
    best = wall.id;
    least = distance;
  }
  return best;
}

Opening openingAt(const Room& room, Opening opening, const WallSpot& spot, Instrument how) {
  opening.wall = spot.wall;
  const auto line = wallLine(room, spot.wall);
  if (!line) return opening;
  opening.width.value = std::min(opening.width.value, line->length);
  opening.offset.value =
      std::clamp(spot.along - opening.width.value / 2, 0.0, line->length - opening.width.value);
  opening.offset.how = how;
  opening.offset.known = true;
  return opening;
}

Segment2 spanOf(const Room& room, const Opening& opening) {
  const auto line = wallLine(room, opening.wall);
  if (!line) return {};
  return {line->at(opening.offset.value), line->at(opening.offset.value + opening.width.value)};
}

}  // namespace baywright
