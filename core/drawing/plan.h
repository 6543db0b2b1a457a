// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "drawing/view_input.h"

namespace baywright::detail {

/// The plan: a cut 1.2 m above the floor seen from above, world x right and y up. Walls that it cuts are
/// thick and filled, what is below is thin, what is above is dashed. Internal to `drawing`; ask viewLinework.
Linework planOf(const ViewInput& input);

}  // namespace baywright::detail
