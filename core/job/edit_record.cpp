// SPDX-License-Identifier: Apache-2.0
#include "job/edit_record.h"

#include "job/detail/editing.h"

namespace baywright {

Result<Job> setInfo(Job job, const ProjectInfo& info) {
  job.info = info;
  return validated(std::move(job));
}

Result<Job> setUnits(Job job, const UnitSystem& units) {
  job.units = units;
  return validated(std::move(job));
}

Result<Job> setRequirements(Job job, const Requirements& requirements) {
  job.requirements = requirements;
  return validated(std::move(job));
}

Result<Job> addMeasurement(Job job, Measurement measurement) {
  return detail::appended(std::move(job), &Job::measurements, std::move(measurement));
}

Result<Job> setMeasurement(Job job, const Measurement& measurement) {
  return detail::replaced(std::move(job), &Job::measurements, measurement, "measurement");
}

}  // namespace baywright
