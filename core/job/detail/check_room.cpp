// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <limits>

#include "geometry/polygon_validity.h"
#include "job/detail/validation.h"
#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

void checkWall(ProblemList& problems, const Room& room, std::size_t index) {
  const Wall& wall = room.walls[index];
  const Vec2& end = room.walls[(index + 1) % room.walls.size()].start;
  const std::string where = "room / wall " + wall.name;
  problems.point("corner", wall.start, where);
  const double length = (end - wall.start).norm();
  if (!limits::kWallLength.contains(length))
    problems.add("The wall is " + problems.text(length) + " long, but must be between " +
                     problems.text(limits::kWallLength.low) + " and " +
                     problems.text(limits::kWallLength.high) + ".",
                 where, "Move a corner, or remove it.");
  problems.length("thickness", wall.thickness, limits::kWallThickness, where);
  const PlanCovariance& c = wall.startCovariance;
  const double most = limits::kCornerSigma * limits::kCornerSigma;
  if (!(c.xx >= 0 && c.yy >= 0 && c.xx <= most && c.yy <= most && c.xy * c.xy <= c.xx * c.yy * (1 + 1e-9)))
    problems.add("The corner's covariance is none: variances must not be negative nor above " +
                     problems.text(limits::kCornerSigma) + " squared, nor the correlation above one.",
                 where + " / startCovariance");
}

void checkCrossings(ProblemList& problems, const Room& room) {
  const auto name = [&](int edge) { return "Wall " + room.walls[static_cast<std::size_t>(edge)].name; };
  for (const EdgeCrossing& crossing : selfCrossings({outline(room), {}}))
    problems.add(name(crossing.firstEdge) + " meets wall " +
                     room.walls[static_cast<std::size_t>(crossing.secondEdge)].name + " at x " +
                     problems.text(crossing.point.x()) + ", y " + problems.text(crossing.point.y()) + ".",
                 "room / floor", "Move a corner so that the outline does not cross or touch itself.");
}

void checkHeights(ProblemList& problems, const Room& room, const CeilingPart& part,
                  const std::string& where) {
  double lowest = std::numeric_limits<double>::infinity();
  double highest = -lowest;
  for (const Vec2& corner : ceilingRegion(room, part)) {
    lowest = std::min(lowest, part.heightAt(corner));
    highest = std::max(highest, part.heightAt(corner));
  }
  if (highest < limits::kCeilingHeight.low)
    problems.add("The ceiling is nowhere higher than " + problems.text(highest) + ", but must reach " +
                     problems.text(limits::kCeilingHeight.low) + ".",
                 where);
  if (highest > limits::kCeilingHeight.high)
    problems.add("The ceiling reaches " + problems.text(highest) + ", but must stay below " +
                     problems.text(limits::kCeilingHeight.high) + ".",
                 where);
  if (lowest <= 0)
    problems.add("The ceiling meets the floor: its lowest corner is at " + problems.text(lowest) + ".", where,
                 "Lower its slope, or end the part before.");
}

}  // namespace

std::vector<Problem> checkFloor(const Job& job) {
  const Room& room = job.room;
  ProblemList problems(job.units);
  if (room.walls.empty()) return {};
  if (room.walls.size() < 3) {
    problems.add("The floor has " + std::to_string(room.walls.size()) + " corners, but needs three.",
                 "room / floor", "Add corners, or remove all to start again.");
    return problems.take();
  }
  for (std::size_t i = 0; i < room.walls.size(); ++i) checkWall(problems, room, i);
  auto found = problems.take();
  if (!found.empty()) return found;

  checkCrossings(problems, room);
  found = problems.take();
  if (!found.empty()) return found;

  const double area = signedArea(outline(room));
  if (area < 0)
    problems.add("The floor's corners run clockwise.", "room / floor", "List them the other way round.");
  else if (area < kMinimumArea)
    problems.add("The floor has no area.", "room / floor");
  return problems.take();
}

std::vector<Problem> checkCeiling(const Job& job) {
  const Room& room = job.room;
  ProblemList problems(job.units);
  if (!room.walls.empty() && room.ceiling.empty())
    problems.add("The room has no ceiling.", "room / ceiling", "Add a ceiling, its height measured or not.");
  for (const CeilingPart& part : room.ceiling) {
    const std::string where = "room / ceiling / " + part.name;
    problems.point("anchor", part.anchor, where);
    problems.number("slope along x", part.slope.x(), limits::kSlope, where);
    problems.number("slope along y", part.slope.y(), limits::kSlope, where);
    if (!part.region.empty()) problems.polygon("region", part.region, where);
    if (ceilingRegion(room, part).empty())  // a ceiling before the floor: only its own figure to judge
      problems.length("height", part.height, limits::kCeilingHeight, where);
    else
      checkHeights(problems, room, part, where);
  }
  return problems.take();
}

}  // namespace baywright::detail
