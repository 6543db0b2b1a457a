// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <vector>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

/// How many files the job keeps as somebody brought them: pictures of plans, 3D scans, drawings and lists.
std::size_t originalCount(const Job& job);

/// Writes them into a folder under their own names, as they came, and answers where each lies. Nothing that
/// is there is written over: a name that is taken gets a number, "garage (2).dxf". Refused with a sentence: a
/// folder that is not there, and what writeFileAtomically() refuses; what was written before stays.
Result<std::vector<std::filesystem::path>> saveOriginals(const Job& job, const std::filesystem::path& folder);

}  // namespace baywright
