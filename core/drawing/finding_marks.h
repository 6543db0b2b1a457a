// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <vector>

#include "drawing/board.h"
#include "drawing/view_input.h"

namespace baywright::detail {

/// At most this many findings speak up in a view; the rest is in the list.
inline constexpr std::size_t kMostShown = 3;

/// The findings whose points a view shows: the one the options name, else the worst that are not clear. Only
/// such as have points.
std::vector<const Finding*> shownFindings(const Assessment& assessment, const ViewOptions& options);

/// A dimension between the two points with the margin as its text; where the two fall together in this view,
/// the verdict's symbol and the margin beside it. Internal to `drawing`.
void drawTightest(Board& board, const ViewInput& input,
                  const std::function<Vec2(const Vec3&)>& viewFromWorld);

}  // namespace baywright::detail
