// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "drawing/view_input.h"

namespace baywright::detail {

/// The screen seen face on by the golfer, in its own (s, t): the picture as the projector throws it and where
/// its corners must be moved to, what the golfers and fixed things shade, the light on it in tints and at the
/// nine points, and where the shots arrive. Internal to `drawing`; ask viewLinework.
Linework screenViewOf(const ViewInput& input);

}  // namespace baywright::detail
