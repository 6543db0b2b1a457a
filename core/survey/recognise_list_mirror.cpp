// SPDX-License-Identifier: Apache-2.0
#include "survey/recognise_list_mirror.h"

#include <algorithm>
#include <map>

#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

Vec2 over(const Vec2& p) {
  return {p.x(), -p.y()};
}

/// For each corner the next one by its letter.
std::map<Id, Id> nextCorners(const std::vector<Wall>& walls) {
  std::map<Id, Id> next;
  for (std::size_t i = 0; i < walls.size(); ++i) next[walls[i].id] = walls[(i + 1) % walls.size()].id;
  return next;
}

void mirror(std::vector<Wall>& walls) {
  for (Wall& wall : walls) {
    wall.start = over(wall.start);
    wall.startCovariance.xy = -wall.startCovariance.xy;
  }
  std::reverse(walls.begin() + 1, walls.end());
}

void mirror(CeilingPart& part) {
  part.anchor = over(part.anchor);
  part.slope = over(part.slope);
  for (Vec2& corner : part.region) corner = over(corner);
  std::reverse(part.region.begin(), part.region.end());
}

}  // namespace

RecognisedRoom mirrored(RecognisedRoom made) {
  const std::map<Id, Id> next = nextCorners(made.room.walls);
  for (Opening& opening : made.room.openings) {
    const auto line = wallLine(made.room, opening.wall);
    if (line) opening.offset.value = line->length - opening.offset.value - opening.width.value;
    opening.wall = next.at(opening.wall);
  }
  for (Measurement& reading : made.measurements) {
    if (reading.kind == MeasurementKind::WallLength && !reading.to) reading.to = next.at(reading.from);
    if (reading.kind == MeasurementKind::Offset) reading.from = next.at(reading.from);
    reading.position = over(reading.position);
  }
  mirror(made.room.walls);
  for (CeilingPart& part : made.room.ceiling) mirror(part);
  return made;
}

}  // namespace baywright::detail
