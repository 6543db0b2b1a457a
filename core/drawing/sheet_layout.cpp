// SPDX-License-Identifier: Apache-2.0
#include "drawing/sheet_layout.h"

#include <algorithm>

#include "drawing/page_furniture.h"

namespace baywright::detail {
namespace {

constexpr double kPad = 4;  // between a border and text
// Left of the title block there must be this much for a drawing to stand beside a column of text.
constexpr double kNarrowestDrawing = 150;
// A sign-off box that is narrower goes above the title block.
constexpr double kNarrowestSignOff = 80;

PageBox box(double left, double bottom, double right, double top) {
  return {Vec2(left, bottom), Vec2(right, top)};
}

// Columns of one width, spread from border to border; those that stand clear of the title block reach down to
// the border.
std::vector<PageBox> columns(const PageBox& frame, double blockTop, double width) {
  const double room = frame.sizes().x() - 2 * kPad;
  const int count = std::max(1, static_cast<int>((room + kPad) / (width + kPad)));
  const double blockLeft = frame.max().x() - kTitleBlockWidth;
  std::vector<PageBox> result;
  for (int i = 0; i < count; ++i) {
    const double step = count > 1 ? (room - width) / (count - 1) : 0;
    const double left = frame.min().x() + kPad + i * step;
    const double bottom = left + width <= blockLeft ? frame.min().y() : blockTop;
    result.push_back(box(left, bottom + kPad, left + width, frame.max().y() - kPad));
  }
  return result;
}

PageBox shrunk(const PageBox& area, double by) {
  return {area.min() + Vec2(by, by), area.max() - Vec2(by, by)};
}

// Less the strips along the upper and left border where the rulers lie.
PageBox withoutRulers(const PageBox& area) {
  return shrunk({area.min() + Vec2(kRulerWidth - kPad, 0), area.max() - Vec2(0, kRulerWidth - kPad)}, kPad);
}

}  // namespace

SheetLayout layoutOf(PaperSize paper, Orientation orientation) {
  SheetLayout layout;
  layout.page = pageBox(paper, orientation);
  layout.frame = frameBox(paper, orientation);
  const Vec2 low = layout.frame.min();
  const Vec2 high = layout.frame.max();
  const double blockLeft = high.x() - kTitleBlockWidth;
  const double blockTop = low.y() + kTitleBlockHeight;
  const double beside = blockLeft - low.x();

  if (beside >= kNarrowestDrawing) {
    layout.signOff = box(blockLeft, blockTop, high.x(), blockTop + kSignOffHeight);
    layout.column = shrunk(box(blockLeft, layout.signOff.max().y(), high.x(), high.y()), kPad);
    layout.rulers = box(low.x(), low.y(), blockLeft, high.y());
    layout.textWidth = layout.column->sizes().x();
  } else {
    const bool isBeside = beside >= kNarrowestSignOff;
    layout.signOff = isBeside ? box(low.x(), low.y(), blockLeft, blockTop)
                              : box(blockLeft, blockTop, high.x(), blockTop + kSignOffHeight);
    layout.rulers = box(low.x(), layout.signOff.max().y(), high.x(), high.y());
    layout.textWidth = layout.frame.sizes().x() - 2 * kPad;
  }
  layout.drawing = withoutRulers(layout.rulers);
  const PageBox later = box(low.x(), blockTop, high.x(), high.y());
  layout.laterDrawing = withoutRulers(later);
  layout.laterText = columns(layout.frame, blockTop, layout.textWidth);
  return layout;
}

namespace {

// Sizes of boxes one under the other, or side by side; and where each goes from the upper left corner of the
// whole.
struct Stack {
  Vec2 size = Vec2::Zero();
  std::vector<Vec2> corners;  // lower left
};

Stack rowOf(const std::vector<Vec2>& sizes, double gap) {
  Stack row;
  for (const Vec2& size : sizes) {
    if (!row.corners.empty()) row.size.x() += gap;
    row.corners.push_back({row.size.x(), 0});
    row.size = {row.size.x() + size.x(), std::max(row.size.y(), size.y())};
  }
  return row;
}

Stack columnOf(const std::vector<Vec2>& sizes, double gap) {
  Stack column;
  for (const Vec2& size : sizes) column.size.x() = std::max(column.size.x(), size.x());
  for (const Vec2& size : sizes) {
    if (!column.corners.empty()) column.size.y() += gap;
    column.size.y() += size.y();
    column.corners.push_back({(column.size.x() - size.x()) / 2, -column.size.y()});
  }
  for (Vec2& corner : column.corners) corner.y() += column.size.y();
  return column;
}

// The first box, and the rest as one stack under it or beside it.
Stack joined(const Vec2& first, const Stack& rest, double gap, const auto& how) {
  Stack outer = how(std::vector<Vec2>{first, rest.size}, gap);
  const Vec2 shift = outer.corners[1];
  outer.corners.resize(1);
  for (const Vec2& corner : rest.corners) outer.corners.push_back(corner + shift);
  return outer;
}

}  // namespace

std::optional<std::vector<Vec2>> arranged(const std::vector<Vec2>& sizes, const PageBox& area, double gap) {
  if (sizes.empty()) return std::vector<Vec2>{};
  const std::vector<Vec2> rest(sizes.begin() + 1, sizes.end());
  std::vector<Stack> candidates;
  if (rest.empty()) {
    candidates = {rowOf(sizes, gap)};
  } else {
    candidates = {joined(sizes.front(), rowOf(rest, gap), gap, columnOf),
                  joined(sizes.front(), columnOf(rest, gap), gap, rowOf), columnOf(sizes, gap),
                  rowOf(sizes, gap)};
  }
  for (Stack& stack : candidates) {
    const Vec2 spare = area.sizes() - stack.size;
    if (spare.x() < 0 || spare.y() < 0) continue;
    for (Vec2& corner : stack.corners) corner += area.min() + spare / 2;
    return std::move(stack.corners);
  }
  return std::nullopt;
}

}  // namespace baywright::detail
