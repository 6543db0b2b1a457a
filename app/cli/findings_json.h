// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "clearance/assessment.h"
#include "job/job.h"

namespace baywright {

/// Whether to look for what would clear each finding (fit/smallest_change.h), up to some seconds a finding.
enum class Changes { None, Smallest };

/// The findings and quantities of an assessment, and the areas of the standing zones, as JSON, see
/// resources/schema/findings-1.schema.json. SI units; the same assessment gives the same bytes.
std::string findingsJson(const Job& job, const Assessment& assessment, Changes changes = Changes::None);

/// What would clear the finding and block nothing else, a sentence each; none where nothing is to be cleared
/// or nothing found.
std::vector<std::string> changeSentences(const Job& job, const Finding& finding);

/// "clear", "tight", "blocked", "unknown": stable names, not translated.
std::string_view verdictName(Verdict verdict);

}  // namespace baywright
