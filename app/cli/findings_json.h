// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "clearance/assessment.h"
#include "job/job.h"

namespace baywright {

/// The findings and quantities of an assessment, and the areas of the standing zones, as JSON, see resources/schema/findings-1.schema.json. SI
/// units; the same assessment gives the same bytes.
std::string findingsJson(const Job& job, const Assessment& assessment);

/// "clear", "tight", "blocked", "unknown": stable names, not translated.
std::string_view verdictName(Verdict verdict);

}  // namespace baywright
