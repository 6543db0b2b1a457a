// SPDX-License-Identifier: Apache-2.0
#include "job/job_change.h"

namespace baywright {
namespace {

const Option* activeOption(const Job& job) {
  return job.options.empty() ? nullptr : &job.option();
}

/// Everything about the options but the kit and placement of the active one.
bool otherOptionsDiffer(const Job& before, const Job& after) {
  if (before.activeOption != after.activeOption || before.options.size() != after.options.size()) return true;
  for (std::size_t i = 0; i < before.options.size(); ++i) {
    const Option& was = before.options[i];
    const Option& is = after.options[i];
    if (was.id != is.id || was.name != is.name) return true;
    if (&is != activeOption(after) && was != is) return true;
  }
  return false;
}

}  // namespace

JobChange jobChange(const Job& before, const Job& after) {
  JobChange change;
  change.info = before.info != after.info;
  change.units = before.units != after.units;
  change.room = before.room != after.room;
  change.people = before.golfers != after.golfers || before.bystanders != after.bystanders;
  change.requirements = before.requirements != after.requirements;
  change.measurements = before.measurements != after.measurements;
  change.scans = before.planScans != after.planScans || before.roomScans != after.roomScans;
  change.originals = before.originals != after.originals;
  change.options = otherOptionsDiffer(before, after);
  const Option* was = activeOption(before);
  const Option* is = activeOption(after);
  if (was && is) {
    change.kit = was->kit != is->kit;
    change.placement = was->placement != is->placement;
  } else {
    change.kit = change.placement = was != is;
  }
  return change;
}

}  // namespace baywright
