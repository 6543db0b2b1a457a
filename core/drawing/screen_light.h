// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "drawing/board.h"
#include "drawing/view_input.h"

namespace baywright::detail {

// The light on the screen, for its face-on view; there must be a picture. Internal to `drawing`.

/// The lit part in bands (optics/light_bands.h), the brighter the deeper its tint.
void drawLightTints(Board& board, const ViewInput& input);

/// Thirds of the target, each with the light on its middle.
void drawNinePoints(Board& board, const ViewInput& input);

/// Lines of equal light between the bands, with their figures where there is room.
void drawLightContours(Board& board, const ViewInput& input);

/// Below the screen: mean, uniformity, contrast and coverage in words, and the tint of each band.
void drawLightLegend(Board& board, const ViewInput& input);

}  // namespace baywright::detail
