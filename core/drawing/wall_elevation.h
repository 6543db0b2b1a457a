// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "drawing/view_input.h"

namespace baywright::detail {

/// One wall seen square to it from inside the room: its face between floor and ceiling with the walls beside
/// it cut, its openings, and what stands or hangs within a metre of it; the frame of the bay in outline where
/// it is near. Empty when there is no such wall. Internal to `drawing`; ask viewLinework.
Linework wallElevationOf(const ViewInput& input, Id wall);

}  // namespace baywright::detail
