// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/progress.h"
#include "job/job.h"

namespace baywright {

/// One change that clears a finding, already tried: the job after it was assessed.
struct SmallestChange {
  std::string kind;      ///< stable name: "move_bay", "turn_bay", "frame_height", "strike_point", "projector", "club"
  std::string sentence;  ///< "Move the bay 70 mm to the left."
  Job job;               ///< after the change
};

/// For a blocked or tight finding the smallest change of each kind that makes it clear and blocks nothing that was not blocked
/// before, the least effort first. Empty when none of them helps, when there is no finding with this key, or when it was
/// stopped. Deterministic. Takes some hundred assessments: give it a Progress and a thread.
std::vector<SmallestChange> smallestChanges(const Job& job, std::string_view findingKey, const Progress& progress);

}  // namespace baywright
