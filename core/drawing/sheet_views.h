// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "drawing/sheets.h"

namespace baywright::detail {

/// A view to scale with its caption under it, in millimetres from the lower left corner of its box.
struct SheetView {
  DrawnView view = ViewKind::Plan;
  Linework marks;
  Vec2 size = Vec2::Zero();
  Placing boxFromDrawing;  ///< metres of the view to millimetres in the box
};
SheetView sheetView(const SheetInput& input, const DrawnView& view, double denominator, ViewDrawer& drawer);

/// The job's visible scans under a plan whose box stands at `corner` of the page; none under other views, and
/// none that has no scale yet.
std::vector<PlacedImage> underlaysOf(const Job& job, const SheetView& view, const Vec2& corner);

}  // namespace baywright::detail
