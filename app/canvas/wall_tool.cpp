// SPDX-License-Identifier: Apache-2.0
#include "canvas/wall_tool.h"

#include "canvas/overlay.h"
#include "canvas/tool_words.h"
#include "drawing/wall_pick.h"
#include "job/edit_room.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

constexpr double kDragStart = 4;  // pixels

}  // namespace

std::optional<WallTool::Grip> WallTool::gripAt(const ToolHost& host, const Vec2& at) {
  const Room& room = host.document().job().room;
  const double reach = host.reach().reach;
  if (const auto corner = cornerAt(room, at, 1.5 * reach)) return Grip{*corner, true};
  if (const auto spot = wallAt(room, at, reach)) return Grip{spot->wall, false};
  return std::nullopt;
}

void WallTool::press(ToolHost& host, const PointerEvent& event) {
  if (event.button != Qt::LeftButton || isBusy()) return;
  pressed_ = gripAt(host, event.at);
  from_ = event;
  picked_ = {};
  host.refresh();
}

void WallTool::move(ToolHost& host, const PointerEvent& event) {
  if (pressed_ && !isBusy() && (event.pixel - from_.pixel).manhattanLength() >= kDragStart) startDrag(host);
  if (wallMove_) wallMove_->moveTo(host, event);
  if (cornerMove_) cornerMove_->moveTo(host, event);
  if (isBusy() || pressed_) return;
  hovered_ = gripAt(host, event.at);
  host.refresh();
}

void WallTool::startDrag(ToolHost& host) {
  if (pressed_->isCorner)
    cornerMove_.emplace(host, pressed_->wall);
  else
    wallMove_.emplace(host, pressed_->wall, from_.at);
}

void WallTool::release(ToolHost& host, const PointerEvent&) {
  if (isBusy()) return finish(host);
  const auto clicked = pressed_;
  pressed_.reset();
  if (!clicked) return;
  host.document().selection().select(clicked->wall);
  if (clicked->isCorner) return;
  picked_ = clicked->wall;
  host.openEntry(0);
}

void WallTool::doubleClick(ToolHost& host, const PointerEvent& event) {
  const auto grip = gripAt(host, event.at);
  if (!grip || grip->isCorner || isBusy()) return;
  picked_ = {};
  Document& document = host.document();
  document.change(toolWords("Add a corner"), insertWallCorner(document.job(), grip->wall, event.at));
  host.refresh();
}

bool WallTool::key(ToolHost& host, const QKeyEvent& event) {
  if (event.key() != Qt::Key_Delete && event.key() != Qt::Key_Backspace) return false;
  if (isBusy()) return false;
  if (!hovered_ || !hovered_->isCorner) {
    host.say(toolWords("Point at the corner that shall go."));
    return true;
  }
  Document& document = host.document();
  document.change(toolWords("Remove a corner"), removeWallCorner(document.job(), hovered_->wall));
  hovered_.reset();
  host.refresh();
  return true;
}

void WallTool::finish(ToolHost& host) {
  if (wallMove_) wallMove_->commit();
  if (cornerMove_) cornerMove_->commit();
  cancel(host);
}

void WallTool::cancel(ToolHost& host) {
  wallMove_.reset();
  cornerMove_.reset();
  pressed_.reset();
  picked_ = {};
  host.refresh();
}

std::vector<TypedField> WallTool::fields(const ToolHost& host) const {
  if (wallMove_) return wallMove_->fields(host);
  if (cornerMove_) return cornerMove_->fields(host);
  const auto line = wallLine(host.document().job().room, picked_);
  if (!line) return {};
  return {{toolWords("length of wall %1").arg(QString::fromStdString(line->name)), FieldKind::Size,
           line->length, line->start, line->end}};
}

std::optional<Problem> WallTool::take(ToolHost& host, std::size_t field, double value) {
  if (wallMove_) return wallMove_->take(host, field, value);
  if (cornerMove_) return cornerMove_->take(host, field, value);
  Document& document = host.document();
  Result<Job> edited = setWallLength(document.job(), picked_, taped(value));
  if (!edited) return edited.error();
  document.change(stepText("Set the length of %1", document.job(), picked_), std::move(edited));
  return std::nullopt;
}

void WallTool::paint(Overlay& overlay, const ToolHost& host) const {
  if (wallMove_) wallMove_->paint(overlay, host);
  if (cornerMove_) cornerMove_->paint(overlay, host);
  for (const WallLine& line : wallLines(host.document().job().room)) {
    const bool isHovered = hovered_ && hovered_->wall == line.wall;
    if (isHovered && !hovered_->isCorner) overlay.line(line.start, line.end, Overlay::Stroke::Strong);
    overlay.handle(line.start,
                   isHovered && hovered_->isCorner ? Overlay::Handle::Round : Overlay::Handle::Square);
  }
}

QCursor WallTool::cursor(const ToolHost&) const {
  return hovered_ || isBusy() ? Qt::SizeAllCursor : Qt::ArrowCursor;
}

QString WallTool::status(const ToolHost&) const {
  if (isBusy()) return toolWords("Type a length, Tab for the next. Ctrl: no snapping. Esc: give up.");
  return toolWords(
      "Drag a wall or a corner. Click a wall to type its length. Double-click adds a corner, Delete takes "
      "one away.");
}

}  // namespace baywright
