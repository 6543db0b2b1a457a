// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "base/problem.h"
#include "job/find.h"
#include "job/job.h"
#include "job/thing_lookup.h"
#include "job/validate.h"

/// What the verbs share. Internal to `job`.
namespace baywright::detail {

/// "The wall is not in this job any more."
inline tl::unexpected<Problem> notThere(const std::string& noun) {
  return fail("The " + noun + " is not in this job any more.");
}

/// "Frame cannot be removed."
inline tl::unexpected<Problem> cannot(const Thing& thing, const std::string& done, const std::string& next) {
  return fail(thing.name + " cannot be " + done + ".", {}, next);
}

/// Changes the active option and validates.
template <class Change>
Result<Job> withActiveOption(Job job, Change change) {
  if (job.options.empty()) return fail("The job has no option.", "options", "Add a set of kit.");
  change(job.option());
  return validated(std::move(job));
}

/// Gives the thing a new id, puts it last and validates. `list` belongs to `job`.
template <class T>
Result<Job> appended(Job job, std::vector<T> Job::*list, T thing) {
  thing.id = job.takeId();
  (job.*list).push_back(std::move(thing));
  return validated(std::move(job));
}
template <class T>
Result<Job> appended(Job job, std::vector<T> Room::*list, T thing) {
  thing.id = job.takeId();
  (job.room.*list).push_back(std::move(thing));
  return validated(std::move(job));
}

/// Puts the thing in place of the one with its id and validates.
template <class T>
Result<Job> replaced(Job job, std::vector<T> Job::*list, const T& thing, const std::string& noun) {
  T* old = findById(job.*list, thing.id);
  if (!old) return notThere(noun);
  *old = thing;
  return validated(std::move(job));
}
template <class T>
Result<Job> replaced(Job job, std::vector<T> Room::*list, const T& thing, const std::string& noun) {
  T* old = findById(job.room.*list, thing.id);
  if (!old) return notThere(noun);
  *old = thing;
  return validated(std::move(job));
}

/// Slides each opening of the room back as far as its wall became too short for it.
void keepOpeningsInWalls(Room& room);

}  // namespace baywright::detail
