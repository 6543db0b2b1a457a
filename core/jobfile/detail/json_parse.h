// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json.hpp>
#include <string_view>

#include "base/problem.h"

/// Text to JSON, with the limits of job_json.h. Internal to `jobfile`.
namespace baywright::detail {

/// Refused with a sentence: text that is not JSON (with line and column), names given twice in one object,
/// too long, too deep, numbers beyond a double.
Result<nlohmann::json> parseJson(std::string_view text);

}  // namespace baywright::detail
