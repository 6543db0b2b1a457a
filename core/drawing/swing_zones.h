// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>

#include "drawing/board.h"
#include "drawing/view_input.h"

namespace baywright::detail {

/// True for golfers that the options single out; all when they name none.
bool singledOut(const ViewOptions& options, Id golfer);

/// True for the zone that stands for its golfer: the one with the worst verdict, the first in the bag among
/// equals. Zones without a swing do not count.
bool isWorstOfGolfer(const std::vector<SwingZone>& zones, const SwingZone& zone);

/// All swings as one view sees them: the bound dashed, the required clearance as a thin outline, the expected
/// envelope as a soft area hatched by its verdict. Each golfer shows the club with the worst verdict, the
/// first in the bag among equals, and of the others the outline only. Golfers that the options do not single
/// out are outlines too. `place` takes rings of the swing frame to the view. Internal to `drawing`.
void drawSwings(Board& board, const ViewInput& input, SwingSight sight,
                const std::function<std::vector<Ring>(const std::vector<Ring>&, const SwingZone&)>& place);

}  // namespace baywright::detail
