// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <string_view>

#include "base/problem.h"
#include "job/catalogue.h"

namespace baywright {

/// Reads one list of kit: an object with any of "frames", "screens", "mats", "monitors", "projectors",
/// "clubs", "fixtures", "openings", each an array of things in the fields of a job without ids; "note" and
/// "made_up" are for people. Refused like a job's fields, and by the same ranges (validate.h).
Result<Catalogue> catalogueFromJson(std::string_view text);

/// All *.json of a folder, by name, in one catalogue.
Result<Catalogue> loadCatalogue(const std::filesystem::path& folder);

}  // namespace baywright
