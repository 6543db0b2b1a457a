// SPDX-License-Identifier: Apache-2.0
#include "job/edit_options.h"

#include "job/detail/editing.h"

namespace baywright {
namespace {

/// The option with new ids; its own id is the last one given out.
Option renumbered(Job& job, Option option) {
  for (Id* id : {&option.kit.frame.id, &option.kit.screen.id, &option.kit.mat.id, &option.kit.monitor.id,
                 &option.kit.projector.id, &option.id})
    *id = job.takeId();
  return option;
}

std::string nameOr(const std::string& name, const Job& job) {
  return name.empty() ? "Option " + std::to_string(job.options.size() + 1) : name;
}

}  // namespace

Result<Job> duplicateOption(Job job, Id id, const std::string& name) {
  const Option* original = findById(job.options, id);
  if (!original) return detail::notThere("option");
  const auto place = original - job.options.data() + 1;
  Option copy = renumbered(job, *original);
  copy.name = nameOr(name, job);
  job.activeOption = copy.id;
  job.options.insert(job.options.begin() + place, std::move(copy));
  return validated(std::move(job));
}

Result<Job> addOption(Job job, const Option& option) {
  Option added = renumbered(job, option);
  added.name = nameOr(option.name, job);
  job.activeOption = added.id;
  job.options.push_back(std::move(added));
  return validated(std::move(job));
}

Result<Job> activateOption(Job job, Id id) {
  if (!findById(job.options, id)) return detail::notThere("option");
  job.activeOption = id;
  return validated(std::move(job));
}

Result<Job> renameOption(Job job, Id id, const std::string& name) {
  Option* option = findById(job.options, id);
  if (!option) return detail::notThere("option");
  option->name = name;
  return validated(std::move(job));
}

Result<Job> removeOption(Job job, Id id) {
  const Option* option = findById(job.options, id);
  if (!option) return detail::notThere("option");
  if (job.options.size() == 1)
    return fail("The last option cannot be removed.", option->name, "Add another one first.");
  const auto place = static_cast<std::size_t>(option - job.options.data());
  job.options.erase(job.options.begin() + static_cast<std::ptrdiff_t>(place));
  if (job.activeOption == id) job.activeOption = job.options[std::min(place, job.options.size() - 1)].id;
  return validated(std::move(job));
}

}  // namespace baywright
