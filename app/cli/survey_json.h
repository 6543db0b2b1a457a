// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "cli/survey_file.h"
#include "job/job.h"

namespace baywright {

/// What was recognised and taken into a job as JSON, see resources/schema/survey-1.schema.json. SI units,
/// world coordinates; the same input gives the same bytes. `fileName` is the file's base name.
std::string surveyJson(const std::string& fileName, const SurveyRead& read, const Job& job);

}  // namespace baywright
