// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

Result<Job> addPlanScan(Job job, PlanScan scan);
/// Homography, opacity, lock and the rest of the scan with the same id.
Result<Job> setPlanScan(Job job, const PlanScan& scan);

Result<Job> addRoomScan(Job job, RoomScan scan);
Result<Job> setRoomScan(Job job, const RoomScan& scan);

Result<Job> addOriginal(Job job, Original original);
Result<Job> setOriginal(Job job, const Original& original);

}  // namespace baywright
