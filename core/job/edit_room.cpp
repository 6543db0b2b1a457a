// SPDX-License-Identifier: Apache-2.0
#include "job/edit_room.h"

#include <algorithm>

#include "geometry/polygon.h"
#include "job/bay_start.h"
#include "job/detail/editing.h"
#include "job/detail/outline_edit.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

Result<Job> withOpeningsKept(Job job) {
  detail::keepOpeningsInWalls(job.room);
  return validated(std::move(job));
}

bool allFinite(const std::vector<Vec2>& corners) {
  return std::all_of(corners.begin(), corners.end(), [](const Vec2& corner) { return corner.allFinite(); });
}

}  // namespace

Result<Job> setRoomOutline(Job job, std::vector<Vec2> corners, Instrument how) {
  if (!allFinite(corners)) return fail("One of the corners is not a finite number.", "room / floor");
  if (signedArea(corners) < 0) std::reverse(corners.begin(), corners.end());
  const bool isFirst = job.room.walls.empty();
  job.room.walls = detail::wallsOver(corners, how, job);
  detail::dropOrphans(job);
  for (Option& option : job.options) {
    if (isFirst && option.placement.bay == BayPose{})
      option.placement.bay = startingPose(job.room, option.kit.frame);
  }
  if (!corners.empty() && job.room.ceiling.empty()) {
    CeilingPart part;
    part.id = job.takeId();
    part.name = "Ceiling";
    part.height = notMeasured(part.height.value);
    job.room.ceiling.push_back(part);
  }
  return withOpeningsKept(std::move(job));
}

Result<Job> setWall(Job job, const Wall& wall) {
  Wall* old = findById(job.room.walls, wall.id);
  if (!old) return detail::notThere("wall");
  *old = wall;
  return withOpeningsKept(std::move(job));
}

Result<Job> renameRoom(Job job, const std::string& name) {
  job.room.name = name;
  return validated(std::move(job));
}

Result<Job> insertWallCorner(Job job, Id id, const Vec2& position) {
  const auto line = wallLine(job.room, id);
  if (!line) return detail::notThere("wall");
  const double along = std::clamp((position - line->start).dot(line->along), 0.0, line->length);

  Wall second = *findById(job.room.walls, id);
  second.id = job.takeId();
  second.name = detail::freeWallName(job.room.walls);
  second.start = line->at(along);
  for (Opening& opening : job.room.openings) {
    if (opening.wall != id || opening.offset.value + opening.width.value <= along) continue;
    if (opening.offset.value < along)
      return fail("The corner would lie in " + opening.name + ".", "room / wall " + line->name,
                  "Choose a point beside it.");
    opening.wall = second.id;
    opening.offset.value -= along;
  }
  const auto place = findById(job.room.walls, id) - job.room.walls.data() + 1;
  job.room.walls.insert(job.room.walls.begin() + place, second);
  return validated(std::move(job));
}

Result<Job> removeWallCorner(Job job, Id id) {
  const auto removed = std::erase_if(job.room.walls, [&](const Wall& wall) { return wall.id == id; });
  if (removed == 0) return detail::notThere("wall");
  detail::dropOrphans(job);
  return withOpeningsKept(std::move(job));
}

Result<Job> addCeilingPart(Job job, CeilingPart part) {
  return detail::appended(std::move(job), &Room::ceiling, std::move(part));
}

Result<Job> setCeilingPart(Job job, const CeilingPart& part) {
  return detail::replaced(std::move(job), &Room::ceiling, part, "ceiling part");
}

}  // namespace baywright
