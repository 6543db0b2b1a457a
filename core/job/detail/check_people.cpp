// SPDX-License-Identifier: Apache-2.0
#include "job/detail/validation.h"
#include "job/find.h"

namespace baywright::detail {
namespace {

void checkReach(ProblemList& problems, const Golfer& golfer, const std::string& where) {
  if (!golfer.reach) return;
  if (!findById(golfer.clubs, golfer.reach->club))
    problems.add("The measured reach names a club that the golfer does not have.", where);
  if (golfer.reach->highest)
    problems.length("measured highest point", *golfer.reach->highest, limits::kReach, where);
  if (golfer.reach->behind) problems.length("measured reach", *golfer.reach->behind, limits::kReach, where);
}

}  // namespace

std::vector<Problem> checkPeople(const Job& job) {
  ProblemList problems(job.units);
  for (const Golfer& golfer : job.golfers) {
    const std::string where = "golfers / " + golfer.name;
    problems.length("stature", golfer.stature, limits::kStature, where);
    for (const Club& club : golfer.clubs) {
      const std::string whereClub = where + " / " + club.name;
      problems.length("club's length", club.length, limits::kClubLength, whereClub);
      problems.angle("lie", club.lie, limits::kClubLie, whereClub);
    }
    checkReach(problems, golfer, where);
  }
  for (const Bystander& bystander : job.bystanders) {
    const std::string where = "bystanders / " + bystander.name;
    problems.point("place", bystander.position, where);
    problems.length("radius", bystander.radius, limits::kBystanderRadius, where);
    problems.length("height", bystander.height, limits::kBystanderHeight, where);
  }
  return problems.take();
}

}  // namespace baywright::detail
