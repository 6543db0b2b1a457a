// SPDX-License-Identifier: Apache-2.0
#include "job/detail/validation.h"

namespace baywright::detail {
namespace {

void checkShape(ProblemList& problems, const BoxShape& box, const std::string& where) {
  problems.point("middle", box.centre, where);
  problems.length("width", box.width, limits::kFixtureSize, where);
  problems.length("depth", box.depth, limits::kFixtureSize, where);
  problems.angle("heading", box.heading, limits::kHeading, where);
}

void checkShape(ProblemList& problems, const PrismShape& prism, const std::string& where) {
  problems.polygon("outline", prism.outline, where);
}

void checkShape(ProblemList& problems, const CylinderShape& cylinder, const std::string& where) {
  problems.point("middle", cylinder.centre, where);
  problems.length("radius", cylinder.radius, limits::kFixtureSize, where);
}

}  // namespace

std::vector<Problem> checkFixtures(const Job& job) {
  ProblemList problems(job.units);
  for (const Fixture& fixture : job.room.fixtures) {
    const std::string where = "room / fixtures / " + fixture.name;
    std::visit([&](const auto& shape) { checkShape(problems, shape, where); }, fixture.shape);
    problems.length("underside", fixture.bottom, limits::kFixtureLevel, where);
    problems.length("top", fixture.top, limits::kFixtureLevel, where);
    if (!(fixture.top.value > fixture.bottom.value))
      problems.add("The top, " + problems.text(fixture.top.value) + ", is not above the underside, " +
                       problems.text(fixture.bottom.value) + ".",
                   where);
  }
  return problems.take();
}

}  // namespace baywright::detail
