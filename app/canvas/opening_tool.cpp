// SPDX-License-Identifier: Apache-2.0
#include "canvas/opening_tool.h"

#include "canvas/overlay.h"
#include "canvas/tool_host.h"
#include "canvas/tool_words.h"
#include "drawing/live_dimensions.h"
#include "drawing/wall_pick.h"
#include "job/edit_openings.h"
#include "job/edit_thing.h"
#include "job/room_geometry.h"
#include "survey/plan_trace.h"

namespace baywright {
namespace {

/// The wall's middle attracts an opening's.
std::vector<SnapRule> middleOf(const WallLine& wall) {
  const Vec2 middle = wall.at(wall.length / 2);
  return {onLine(middle, wall.inward, {{middle, middle}, "the middle of wall " + wall.name})};
}

}  // namespace

void OpeningTool::move(ToolHost& host, const PointerEvent& event) {
  pointer_ = event.at;
  ghost_.reset();
  marks_.clear();
  const Job& job = host.document().job();
  const double reach = 3 * host.reach().reach;  // a wall is easier to hit than a corner
  const auto spot = wallAt(job.room, event.at, reach);
  if (spot) {
    Vec2 at = event.at;
    if (!event.isFree()) {
      const Snapped point = snapped(middleOf(*wallLine(job.room, spot->wall)), event.at, host.reach().reach);
      at = point.by;
      marks_ = point.marks;
    }
    const auto snappedSpot = wallAt(job.room, at, reach).value_or(*spot);
    ghost_ = openingAt(job.room, host.settings().opening, snappedSpot, drawnInstrument(job));
  }
  host.refresh();
}

void OpeningTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton) return;
  move(host, event);
  if (!ghost_) {
    host.say(toolWords("Click on a wall."));
    return;
  }
  Document& document = host.document();
  if (!document.change(toolWords("Add an opening"), addOpening(document.job(), *ghost_))) return;
  document.selection().select(newestId(document.job()));
  host.done();
  host.openEntry(0);
}

void OpeningTool::paint(Overlay& overlay, const ToolHost& host) const {
  if (!ghost_) return;
  const Room& room = host.document().job().room;
  const Segment2 span = spanOf(room, *ghost_);
  overlay.line(span.a, span.b, Overlay::Stroke::Strong);
  overlay.handle(span.a, Overlay::Handle::Square);
  overlay.handle(span.b, Overlay::Handle::Square);
  const auto wall = wallLine(room, ghost_->wall);
  if (!wall) return;
  for (const LiveDimension& side :
       {dimensionBetween(span.a, wall->start, ""), dimensionBetween(span.b, wall->end, "")})
    overlay.dimension({{}, FieldKind::Length, side.value, side.from, side.to});
  overlay.marks(marks_, pointer_);
}

QString OpeningTool::status(const ToolHost& host) const {
  return toolWords("%1: click where it shall be in a wall. Ctrl: no snapping.")
      .arg(QString::fromStdString(host.settings().opening.name));
}

}  // namespace baywright
