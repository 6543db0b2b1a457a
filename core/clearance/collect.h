// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "clearance/assessment.h"
#include "clearance/check.h"
#include "clearance/snapshot.h"

namespace baywright {

/// Sorts findings and figures, and gives swings, doors and ways the worst verdict of their findings.
Assessment collect(Snapshot snapshot, std::vector<CheckResult> results);

/// True where `a` is shown before `b`: blocked, tight, unknown, clear; within a verdict by the margin in
/// units of its uncertainty; then by key.
bool isShownBefore(const Finding& a, const Finding& b);

}  // namespace baywright
