// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

/// The opening names its wall.
Result<Job> addOpening(Job job, Opening opening);
Result<Job> setOpening(Job job, const Opening& opening);
/// `along` in metres from the wall's start toward its end. Stops at the wall's ends; sliding over another
/// opening is refused.
Result<Job> moveOpening(Job job, Id opening, double along);

}  // namespace baywright
