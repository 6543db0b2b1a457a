// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "drawing/paper.h"

namespace baywright::detail {

/// Where things go on the pages of a sheet, millimetres. Wide pages have a column of text over the title
/// block, the others carry their text on the pages that follow. Internal to `drawing`.
struct SheetLayout {
  PageBox page;
  PageBox frame;    ///< the border line
  PageBox drawing;  ///< of the first page: for the views
  PageBox rulers;   ///< whose upper left corner the rulers start from; as wide as their text may be
  PageBox signOff;
  std::optional<PageBox> column;  ///< of the first page: for text
  PageBox laterDrawing;           ///< of a further page that holds views
  std::vector<PageBox>
      laterText;  ///< of a further page that holds text; as wide as the column where there is one
  double textWidth = 0;
};
SheetLayout layoutOf(PaperSize paper, Orientation orientation);

/// Lower left corners for boxes of these sizes in the area, in the order given, kept apart by `gap` and
/// centred; as if the first were the plan and the rest its elevations: below it, beside it, in one column or
/// one row. Nullopt when no such arrangement fits.
std::optional<std::vector<Vec2>> arranged(const std::vector<Vec2>& sizes, const PageBox& area, double gap);

}  // namespace baywright::detail
