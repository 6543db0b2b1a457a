// SPDX-License-Identifier: Apache-2.0
#include <cmath>

#include "job/detail/editing.h"
#include "job/edit_room.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

/// Below this sine (6 degrees) a corner that slides along its neighbour runs away ten times as fast as the
/// wall that is dragged, so it goes straight instead.
constexpr double kSteepestSlide = 0.1;

/// Where a corner goes when its wall moves by `shift` along `normal` and it may only slide along `neighbour`.
Vec2 slid(const Vec2& corner, const Vec2& normal, double shift, const Vec2& neighbour) {
  const double steepness = neighbour.dot(normal);
  if (std::abs(steepness) < kSteepestSlide) return corner + shift * normal;
  return corner + shift / steepness * neighbour;
}

struct Corners {
  Wall* start = nullptr;     ///< of the wall
  Wall* end = nullptr;       ///< of the wall: start of the next
  Wall* afterEnd = nullptr;  ///< end of the next wall
  WallLine line;
  WallLine before;
  WallLine next;
};

std::optional<Corners> cornersOf(Room& room, Id id) {
  const std::vector<WallLine> lines = wallLines(room);
  const std::size_t count = lines.size();
  for (std::size_t i = 0; i < count; ++i) {
    if (lines[i].wall != id) continue;
    return Corners{&room.walls[i], &room.walls[(i + 1) % count],   &room.walls[(i + 2) % count],
                   lines[i],       lines[(i + count - 1) % count], lines[(i + 1) % count]};
  }
  return std::nullopt;
}

Result<Job> withOpeningsKept(Job job) {
  detail::keepOpeningsInWalls(job.room);
  return validated(std::move(job));
}

}  // namespace

Result<Job> moveWallCorner(Job job, Id id, const Vec2& position) {
  Wall* wall = findById(job.room.walls, id);
  if (!wall) return detail::notThere("wall");
  wall->start = position;
  return withOpeningsKept(std::move(job));
}

Result<Job> moveWall(Job job, Id id, double inward) {
  const auto corners = cornersOf(job.room, id);
  if (!corners) return detail::notThere("wall");
  const Vec2 normal = corners->line.inward;
  corners->start->start = slid(corners->line.start, normal, inward, corners->before.along);
  corners->end->start = slid(corners->line.end, normal, inward, corners->next.along);
  return withOpeningsKept(std::move(job));
}

Result<Job> setWallLength(Job job, Id id, const Dimension& length) {
  const auto corners = cornersOf(job.room, id);
  if (!corners) return detail::notThere("wall");
  const Vec2 along = corners->line.along;
  const Vec2 shift = (length.value - corners->line.length) * along;
  corners->end->start += shift;
  corners->afterEnd->start += shift;
  const double variance = std::pow(instrumentSigma(length.how, length.value), 2) / 2;
  for (Wall* wall : {corners->start, corners->end, corners->afterEnd})
    wall->startCovariance = withVarianceAlong(wall->startCovariance, along, variance);
  return withOpeningsKept(std::move(job));
}

}  // namespace baywright
