// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "job/job.h"

namespace baywright {

/// What can hurt somebody in this bay, one sentence each: only what the active option contains. The last ones
/// say what a plan cannot promise and who decides instead.
struct Caution {
  std::string subject;  ///< "Swinging"
  std::string sentence;
};
std::vector<Caution> cautionsFor(const Job& job);

}  // namespace baywright
