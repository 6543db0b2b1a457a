// SPDX-License-Identifier: Apache-2.0
#include "job/edit_people.h"

#include "job/detail/editing.h"

namespace baywright {
namespace {

Club* findClub(Job& job, Id id) {
  for (Golfer& golfer : job.golfers)
    if (Club* club = findById(golfer.clubs, id)) return club;
  return nullptr;
}

}  // namespace

Result<Job> addGolfer(Job job, Golfer golfer) {
  for (Club& club : golfer.clubs) {
    const Id old = std::exchange(club.id, job.takeId());
    if (golfer.reach && golfer.reach->club == old) golfer.reach->club = club.id;
  }
  return detail::appended(std::move(job), &Job::golfers, std::move(golfer));
}

Result<Job> setGolfer(Job job, Golfer golfer) {
  for (Club& club : golfer.clubs)
    if (!club.id) club.id = job.takeId();
  if (golfer.reach && !findById(golfer.clubs, golfer.reach->club)) golfer.reach.reset();
  return detail::replaced(std::move(job), &Job::golfers, golfer, "golfer");
}

Result<Job> addClub(Job job, Id id, Club club) {
  Golfer* golfer = findById(job.golfers, id);
  if (!golfer) return detail::notThere("golfer");
  club.id = job.takeId();
  golfer->clubs.push_back(std::move(club));
  return validated(std::move(job));
}

Result<Job> setClub(Job job, const Club& club) {
  Club* old = findClub(job, club.id);
  if (!old) return detail::notThere("club");
  *old = club;
  return validated(std::move(job));
}

Result<Job> addBystander(Job job, Bystander bystander) {
  return detail::appended(std::move(job), &Job::bystanders, std::move(bystander));
}

Result<Job> setBystander(Job job, const Bystander& bystander) {
  return detail::replaced(std::move(job), &Job::bystanders, bystander, "bystander");
}

Result<Job> moveBystander(Job job, Id id, const Vec2& by) {
  Bystander* bystander = findById(job.bystanders, id);
  if (!bystander) return detail::notThere("bystander");
  bystander->position += by;
  return validated(std::move(job));
}

}  // namespace baywright
