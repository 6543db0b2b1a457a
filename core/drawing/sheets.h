// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "base/problem.h"
#include "clearance/assessment.h"
#include "drawing/sheet.h"
#include "job/job.h"

namespace baywright {

/// What one kind of sheet is made from.
struct SheetInput {
  const Job& job;
  const Assessment& assessment;
  const SheetRequest& request;
};

/// A kind of sheet: one file that makes it, one row in the table.
struct SheetKind {
  std::string_view name;   ///< for files and the command line: "plan"
  std::string_view title;  ///< for people: "Plan for sign-off"
  Result<std::vector<SheetPage>> (*make)(const SheetInput& input);
};

std::span<const SheetKind> sheetKinds();

/// All pages of one sheet. Pure: the same job, assessment and request give the same pages. Refused with a
/// sentence: a name that is not in the table, a room without walls, a scale at which the drawing does not
/// fit, naming the smallest paper and the largest scale that would do.
Result<std::vector<SheetPage>> makeSheet(std::string_view name, const Job& job, const Assessment& assessment,
                                         const SheetRequest& request);

}  // namespace baywright
