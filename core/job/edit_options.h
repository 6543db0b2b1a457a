// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

/// A copy of the option with new ids, put after it and made active. An empty name becomes "Option N".
Result<Job> duplicateOption(Job job, Id option, const std::string& name);
/// Another kit and placement, put last and made active.
Result<Job> addOption(Job job, const Option& option);
Result<Job> activateOption(Job job, Id option);
Result<Job> renameOption(Job job, Id option, const std::string& name);
/// The last one stays. When the active one goes, the one that takes its place in the list becomes active.
Result<Job> removeOption(Job job, Id option);

}  // namespace baywright
