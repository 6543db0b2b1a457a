// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "units/unit_system.h"

namespace baywright {

/// The smallest round length of the job's unit that is at least `atLeast` metres, for grids and scale bars:
/// 1, 2, 5 times a power of ten metres, or 1, 2, 6 inches, 1, 2, 5 times a power of ten feet; metres. From a
/// millimetre or an inch up; `atLeast` must be finite.
double roundLength(const UnitSystem& units, double atLeast);

}  // namespace baywright
