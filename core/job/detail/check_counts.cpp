// SPDX-License-Identifier: Apache-2.0
#include "job/detail/validation.h"

namespace baywright::detail {
namespace {

void atMost(ProblemList& problems, std::size_t most, std::size_t count, const char* noun, std::string where) {
  if (count > most)
    problems.add("There are " + std::to_string(count) + " " + noun + ", but at most " + std::to_string(most) +
                     " are handled.",
                 std::move(where));
}

}  // namespace

std::vector<Problem> checkCounts(const Job& job) {
  ProblemList problems(job.units);
  const Room& room = job.room;
  atMost(problems, limits::kMostCorners, room.walls.size(), "walls", "room");
  atMost(problems, limits::kMostCorners, room.openings.size(), "openings", "room");
  atMost(problems, limits::kMostCorners, room.ceiling.size(), "ceiling parts", "room");
  atMost(problems, limits::kMostThings, room.fixtures.size(), "fixtures", "room");
  for (const CeilingPart& part : room.ceiling)
    atMost(problems, limits::kMostCorners, part.region.size(), "corners", "room / ceiling / " + part.name);
  for (const Fixture& fixture : room.fixtures)
    if (const auto* prism = std::get_if<PrismShape>(&fixture.shape))
      atMost(problems, limits::kMostCorners, prism->outline.size(), "corners",
             "room / fixtures / " + fixture.name);
  atMost(problems, limits::kMostThings, job.golfers.size(), "golfers", "golfers");
  atMost(problems, limits::kMostThings, job.bystanders.size(), "bystanders", "bystanders");
  atMost(problems, limits::kMostThings, job.options.size(), "options", "options");
  atMost(problems, limits::kMostThings, job.measurements.size(), "measurements", "measurements");
  atMost(problems, limits::kMostThings, job.planScans.size() + job.roomScans.size(), "scans", "scans");
  atMost(problems, limits::kMostThings, job.originals.size(), "originals", "originals");
  return problems.take();
}

}  // namespace baywright::detail
