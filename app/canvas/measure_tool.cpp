// SPDX-License-Identifier: Apache-2.0
#include "canvas/measure_tool.h"

#include "canvas/overlay.h"
#include "canvas/tool_host.h"
#include "canvas/tool_words.h"
#include "drawing/live_dimensions.h"
#include "drawing/snap_rules.h"
#include "units/length_text.h"

namespace baywright {
namespace {

constexpr double kDragStart = 4;  // pixels: farther apart, press and release are the two points

}  // namespace

Snapped MeasureTool::snap(const ToolHost& host, const PointerEvent& event) const {
  if (event.isFree() || host.kind() != ViewKind::Plan) return {event.at, {}};
  const Job& job = host.document().job();
  return snapped(planPoints(job), planLines(job), event.at, host.reach().reach);
}

void MeasureTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton) return;
  pressedAt_ = event.pixel;
  const Vec2 at = snap(host, event).by;
  if (!from_ || to_) {
    from_ = at;
    to_.reset();
  } else {
    to_ = at;
  }
  pointer_ = at;
  host.refresh();
}

void MeasureTool::move(ToolHost& host, const PointerEvent& event) {
  Snapped point = snap(host, event);
  pointer_ = point.by;
  marks_ = std::move(point.marks);
  if (from_) {
    const double length = dimensionBetween(*from_, to_.value_or(pointer_), {}).value;
    host.say(QString::fromStdString(formatLength(length, host.document().job().units)));
  }
  host.refresh();
}

void MeasureTool::release(ToolHost& host, const PointerEvent& event) {
  const bool dragged = (event.pixel - pressedAt_).manhattanLength() >= kDragStart;
  if (from_ && !to_ && dragged) to_ = snap(host, event).by;
  host.refresh();
}

bool MeasureTool::key(ToolHost& host, const QKeyEvent& event) {
  if (event.key() != Qt::Key_Escape || !from_) return false;
  cancel(host);
  return true;
}

void MeasureTool::cancel(ToolHost& host) {
  from_.reset();
  to_.reset();
  host.refresh();
}

void MeasureTool::paint(Overlay& overlay, const ToolHost&) const {
  if (!to_) {
    overlay.marks(marks_, pointer_);
    overlay.cross(pointer_);
  }
  if (!from_) return;
  const Vec2 to = to_.value_or(pointer_);
  overlay.cross(*from_);
  overlay.dimension({{}, FieldKind::Length, dimensionBetween(*from_, to, {}).value, *from_, to});
}

QString MeasureTool::status(const ToolHost&) const {
  return from_ && !to_ ? toolWords("Click the second point. Ctrl: no snapping.")
                       : toolWords("Click the first point.");
}

}  // namespace baywright
