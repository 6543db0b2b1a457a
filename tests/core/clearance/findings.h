// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <string_view>

#include "clearance/assess.h"
#include "support/job_builder.h"

namespace baywright::testing {

/// The finding under this key; the test fails where there is none. "<driver>" stands for the first golfer and
/// the first club: "swing_room/<driver>/wall".
inline Finding findingOf(const Job& job, const Assessment& assessment, std::string key) {
  const std::string_view placeholder = "<driver>";
  if (const auto at = key.find(placeholder); at != std::string::npos) {
    const Golfer& golfer = job.golfers.front();
    key.replace(at, placeholder.size(),
                std::to_string(golfer.id.value) + "/" + std::to_string(golfer.clubs.front().id.value));
  }
  if (const Finding* found = assessment.find(key)) return *found;
  std::string all;
  for (const Finding& finding : assessment.findings) all += "\n  " + finding.key;
  ADD_FAILURE() << "No finding " << key << " among" << all;
  return {};
}
inline Finding findingOf(const Job& job, const std::string& key) {
  return findingOf(job, assess(job), key);
}

/// Value of a figure; the test fails where there is none.
inline double figureOf(const Assessment& assessment, const std::string& name) {
  for (const Quantity& figure : assessment.quantities) {
    if (figure.name == name) return figure.value;
  }
  ADD_FAILURE() << "No figure " << name;
  return 0;
}

inline bool contains(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

}  // namespace baywright::testing
