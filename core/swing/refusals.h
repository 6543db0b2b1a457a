// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/problem.h"
#include "job/golfer.h"

namespace baywright {

/// Why there is no swing, in whole sentences; nothing when there is no reason. Lengths are told in metres:
/// the job's unit is not known here.
std::optional<Problem> refusedStature(const Golfer& golfer);
std::optional<Problem> refusedClub(const Golfer& golfer, const Club& club);
Problem tapedWithUnknownClub(const Golfer& golfer);
Problem tapedOutOfReach(const Golfer& golfer, const Club& club);

}  // namespace baywright
