// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/ceiling_models.h"

namespace baywright::detail {

/// The parts of the ceiling that a model stands for, over the pieces of `floor` on either side of where its
/// planes part. One plane is one part without a region; of two levels the higher one is everywhere, with the
/// lower one beneath it. `how` is what the heights are said to be read by.
std::vector<CeilingPart> ceilingPartsOf(const CeilingModel& model, const Ring& floor, Instrument how);

}  // namespace baywright::detail
