// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "clearance/assessment.h"
#include "job/job.h"

namespace baywright {

/// What the active option of a job means: pure, the same bits for the same job on every machine and in every
/// thread. The job must have passed validate(). Whatever was not measured gives findings with the verdict
/// `unknown` that ask for it. Never `clear` where a swing touches anything. Use an Assessor for job after
/// job.
Assessment assess(const Job& job);

}  // namespace baywright
