// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "clearance/assessment.h"

namespace baywright {

/// The finding that an edit in progress makes worst: of those that are not clear now and whose verdict or
/// margin is worse than before, the one with the worst verdict, then with the most margin lost in units of
/// its uncertainty, then the first. Null when nothing got worse. Points into `now`.
const Finding* worsening(const Assessment& before, const Assessment& now);

}  // namespace baywright
