// SPDX-License-Identifier: Apache-2.0
#include "job/edit_scans.h"

#include "job/detail/editing.h"

namespace baywright {

Result<Job> addPlanScan(Job job, PlanScan scan) {
  return detail::appended(std::move(job), &Job::planScans, std::move(scan));
}

Result<Job> setPlanScan(Job job, const PlanScan& scan) {
  return detail::replaced(std::move(job), &Job::planScans, scan, "plan");
}

Result<Job> addRoomScan(Job job, RoomScan scan) {
  return detail::appended(std::move(job), &Job::roomScans, std::move(scan));
}

Result<Job> setRoomScan(Job job, const RoomScan& scan) {
  return detail::replaced(std::move(job), &Job::roomScans, scan, "scan");
}

Result<Job> addOriginal(Job job, Original original) {
  return detail::appended(std::move(job), &Job::originals, std::move(original));
}

Result<Job> setOriginal(Job job, const Original& original) {
  return detail::replaced(std::move(job), &Job::originals, original, "original");
}

}  // namespace baywright
