// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "job/detail/validation.h"
#include "job/find.h"
#include "job/room_geometry.h"

namespace baywright::detail {
namespace {

std::string whereOf(const Opening& opening) {
  return "room / openings / " + opening.name;
}

void checkSizes(ProblemList& problems, const Opening& opening) {
  const std::string where = whereOf(opening);
  problems.length("width", opening.width, limits::kOpeningSize, where);
  problems.length("height", opening.height, limits::kOpeningSize, where);
  problems.length("sill", opening.sill, limits::kSill, where);
  if (opening.kind == OpeningKind::HingedDoor) {
    problems.length("thickness of the leaf", opening.leafThickness, limits::kPanel, where);
    problems.angle("opening angle", opening.openAngle, limits::kOpenAngle, where);
  }
  if (opening.kind == OpeningKind::SectionalDoor) {
    problems.length("headroom of the tracks", opening.trackHeadroom, limits::kTrackHeadroom, where);
    problems.length("depth of the tracks", opening.trackDepth, limits::kTrackDepth, where);
    problems.length("thickness of the panels", opening.panelThickness, limits::kPanel, where);
  }
}

void checkWithinWall(ProblemList& problems, const Opening& opening, const WallLine& wall) {
  const double end = opening.offset.value + opening.width.value;
  if (opening.width.value > wall.length + limits::kOpeningSlack)
    problems.add("The opening is " + problems.text(opening.width.value) + " wide, but wall " + wall.name +
                     " is only " + problems.text(wall.length) + " long.",
                 whereOf(opening), "Make it narrower, or put it in another wall.");
  else if (opening.offset.value < -limits::kOpeningSlack || end > wall.length + limits::kOpeningSlack)
    problems.add("The opening reaches from " + problems.text(opening.offset.value) + " to " +
                     problems.text(end) + " along wall " + wall.name + ", which is " +
                     problems.text(wall.length) + " long.",
                 whereOf(opening), "Move it back within the wall.");
}

bool overlap(double lowA, double highA, double lowB, double highB) {
  return std::min(highA, highB) - std::max(lowA, lowB) > limits::kOpeningSlack;
}

bool overlap(const Opening& a, const Opening& b) {
  return a.wall == b.wall &&
         overlap(a.offset.value, a.offset.value + a.width.value, b.offset.value,
                 b.offset.value + b.width.value) &&
         overlap(a.sill.value, a.sill.value + a.height.value, b.sill.value, b.sill.value + b.height.value);
}

}  // namespace

std::vector<Problem> checkOpenings(const Job& job) {
  const std::vector<Opening>& openings = job.room.openings;
  const std::vector<WallLine> walls = wallLines(job.room);
  ProblemList problems(job.units);
  for (std::size_t i = 0; i < openings.size(); ++i) {
    const Opening& opening = openings[i];
    checkSizes(problems, opening);
    const auto wall =
        std::find_if(walls.begin(), walls.end(), [&](const WallLine& w) { return w.wall == opening.wall; });
    if (wall == walls.end())
      problems.add("The opening names a wall that is not there.", whereOf(opening));
    else
      checkWithinWall(problems, opening, *wall);
    for (std::size_t j = 0; j < i; ++j)
      if (overlap(openings[j], opening))
        problems.add("The opening overlaps " + openings[j].name + " in the same wall.", whereOf(opening),
                     "Move one of them along the wall.");
  }
  return problems.take();
}

}  // namespace baywright::detail
