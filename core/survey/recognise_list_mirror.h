// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "survey/recognised_room.h"

namespace baywright::detail {

/// The mirror image over the x axis of a room that was made as if its letters ran counter-clockwise. Corners
/// keep names, ids and covariances; as walls run counter-clockwise again, the wall from corner k to k + 1 is
/// now the one that starts at corner k + 1, and openings, readings and ceiling follow.
RecognisedRoom mirrored(RecognisedRoom room);

}  // namespace baywright::detail
