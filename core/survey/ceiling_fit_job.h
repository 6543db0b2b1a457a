// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "job/job.h"
#include "survey/ceiling_fit.h"

namespace baywright {

/// The heights that count, in the order of the list. One taken at a corner stands where the room has that
/// corner, so adjust the walls first; one whose corner is gone stands where it was read.
std::vector<CeilingReading> ceilingReadings(const Room& room, std::span<const Measurement> readings);

/// fitCeiling over the room's outline.
CeilingFit fitCeiling(const Room& room, std::span<const Measurement> readings, const UnitSystem& units);

/// The job with the ceiling that was fitted in place of the one it has. Refused: what validate() refuses.
Result<Job> takeCeiling(Job job, const CeilingFit& fit);

}  // namespace baywright
