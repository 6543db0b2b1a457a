// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/problem.h"
#include "base/progress.h"
#include "fit/change.h"

namespace baywright {

/// What would help: for one finding of a job that is blocked or tight, the smallest single changes that make
/// it clear, at most one of a kind, the smallest move first (a change that turns, buys or cuts something
/// comes after those that move something).
///
/// Each is found by trying larger and larger amounts (change_family.h) and then by bisection, and offered
/// only when assess() of the changed job has the finding clear, or not at all any more, and blocks nothing
/// that was not blocked before. Amounts are rounded up to what a person can set. Deterministic. An empty
/// list: none of the changes tried helps by itself, or `progress` asked to stop. Refused: a key that names no
/// finding of this job, or one that needs no help.
Result<std::vector<Change>> smallestChanges(const Job& job, const std::string& findingKey,
                                            const Progress& progress);

}  // namespace baywright
