// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

Result<Job> setInfo(Job job, const ProjectInfo& info);
Result<Job> setUnits(Job job, const UnitSystem& units);
Result<Job> setRequirements(Job job, const Requirements& requirements);

Result<Job> addMeasurement(Job job, Measurement measurement);
Result<Job> setMeasurement(Job job, const Measurement& measurement);

}  // namespace baywright
