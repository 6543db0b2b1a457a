// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "base/problem.h"
#include "job/job.h"

namespace baywright {

/// The job as text: JSON in the fields and order of job/fields.h, SI units, two spaces a level. The same job
/// gives the same bytes, and every double reads back to the same bits. resources/schema/bayjob-1.schema.json
/// says what is allowed where.
///
/// Scans and originals are named, not held: "file" is the base name of the original, "mesh" and "points" say whether there
/// is such a member. job_archive.h keeps the bytes beside.
std::string jobToJson(const Job& job);

/// The job of a text, valid by validate(); its scans are empty until their bytes are put in.
///
/// A field that is absent keeps the default of its struct, a thing without id gets a new one, and without
/// "activeOption" the first option is active: short texts can be written by hand. Members of the top level
/// that this version does not know are kept in Job::unknownFields; deeper ones are refused, for they are
/// slips of the pen.
///
/// Refused with a sentence whose `where` is the path ("golfers / 2 / stature", elements counted from 0): text
/// that is not JSON, a later version, names given twice, more than kMostJsonBytes or kDeepestJson levels,
/// wrong types, numbers too large for their field, and whatever validate() finds.
Result<Job> jobFromJson(std::string_view text);

inline constexpr std::size_t kMostJsonBytes = 16 << 20;
inline constexpr int kDeepestJson = 32;

}  // namespace baywright
