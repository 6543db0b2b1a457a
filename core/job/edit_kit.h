// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

// What the active option is made of. Each part keeps the id of the one it replaces, so that selection and
// findings go on naming it; a part without a name keeps the old name.

Result<Job> setFrame(Job job, const Frame& frame);
Result<Job> setScreen(Job job, const Screen& screen);
Result<Job> setMat(Job job, const Mat& mat);
/// Also brings the monitor back where the option did without one.
Result<Job> setMonitor(Job job, const LaunchMonitor& monitor);
/// Also brings the projector back. Its zoom is moved into the new projector's range.
Result<Job> setProjector(Job job, const Projector& projector);
/// All parts, with hasMonitor and hasProjector.
Result<Job> setKit(Job job, const Kit& kit);

}  // namespace baywright
