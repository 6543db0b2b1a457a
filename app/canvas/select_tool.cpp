// SPDX-License-Identifier: Apache-2.0
#include "canvas/select_tool.h"

#include <algorithm>

#include "canvas/overlay.h"
#include "canvas/tool_words.h"
#include "drawing/view_move.h"
#include "job/edit_thing.h"
#include "survey/plan_scan_fit.h"

namespace baywright {
namespace {

constexpr double kDragStart = 4;        // pixels: a hand that clicks is not still
constexpr double kHandleAhead_mm = 14;  // from the pivot, on the screen
constexpr int kNudgeKeys = 1000;        // merge keys of nudges, one a thing

bool isNear(QPointF a, QPointF b) {
  return (a - b).manhattanLength() < kDragStart;
}

/// Everything under a point, the best first; plans lie below all.
std::vector<Id> thingsAt(const ToolHost& host, const Vec2& at) {
  std::vector<Id> things;
  for (const Hit& hit : hitsAt(host.linework(), at, host.reach())) things.push_back(hit.id);
  if (host.kind() != ViewKind::Plan) return things;
  const auto& scans = host.document().job().planScans;
  for (auto scan = scans.rbegin(); scan != scans.rend(); ++scan) {
    const auto pixels = host.pixelsOf(*scan);
    if (scan->visible && !scan->locked && pixels && coversPoint(*scan, *pixels, at))
      things.push_back(scan->id);
  }
  return things;
}

bool isScan(const Job& job, Id id) {
  return std::any_of(job.planScans.begin(), job.planScans.end(),
                     [&](const PlanScan& scan) { return scan.id == id; });
}

/// The handle that turns what is selected.
struct TurnHandle {
  Id thing;
  Turnable turnable;
  Vec2 at;
};

std::optional<TurnHandle> turnHandle(const ToolHost& host) {
  if (host.kind() != ViewKind::Plan) return std::nullopt;
  const Id selected = host.document().selection().selected();
  const auto turnable = turnableOf(host.document().job(), selected);
  if (!turnable) return std::nullopt;
  return TurnHandle{selected, *turnable, pointAhead(*turnable, kHandleAhead_mm * host.reach().unitsPerMm)};
}

bool isOn(const ToolHost& host, const TurnHandle& handle, const Vec2& at) {
  return (handle.at - at).norm() <= 1.5 * host.reach().reach;
}

QPointF arrow(int key) {
  switch (key) {
    case Qt::Key_Left:
      return {-1, 0};
    case Qt::Key_Right:
      return {1, 0};
    case Qt::Key_Up:
      return {0, 1};
    case Qt::Key_Down:
      return {0, -1};
    default:
      return {};
  }
}

double nudgeStep(Qt::KeyboardModifiers modifiers) {
  if (modifiers.testFlag(Qt::ShiftModifier)) return 0.1;
  return modifiers.testFlag(Qt::AltModifier) ? 0.001 : 0.01;
}

}  // namespace

void SelectTool::press(ToolHost& host, const PointerEvent& event) {
  if (isBusy()) return finish(host);
  if (event.button != Qt::LeftButton) return;
  pressed_ = event;
  last_ = event.pixel;
  const auto handle = turnHandle(host);
  if (handle && isOn(host, *handle, event.at)) return startTurning(host, event.at);
  under_ = thingsAt(host, event.at);
  press_ = Press::Waiting;
}

void SelectTool::move(ToolHost& host, const PointerEvent& event) {
  pointer_ = event.at;
  if (press_ == Press::Waiting && !isNear(event.pixel, pressed_.pixel)) startDrag(host);
  if (turning_) {
    turning_->moveTo(host, event);
  } else if (moving_) {
    moving_->moveTo(host, event);
  } else if (press_ == Press::Panning) {
    host.panBy(event.pixel - last_);
    last_ = event.pixel;
  } else if (press_ == Press::None) {
    hover(host, event);
  }
}

void SelectTool::startDrag(ToolHost& host) {
  press_ = Press::Panning;
  if (under_.empty()) return;
  Selection& selection = host.document().selection();
  const Job& job = host.document().job();
  // A plan fills the view: it is dragged only on purpose, and never in place of what stands on it.
  const bool onSelected = std::find(under_.begin(), under_.end(), selection.selected()) != under_.end() &&
                          !(isScan(job, selection.selected()) && !isScan(job, under_.front()));
  const Id thing = onSelected ? selection.selected() : under_.front();
  if (!canMoveIn(host.view(), job, thing) || (isScan(job, thing) && !onSelected)) return;
  press_ = Press::None;
  selection.select(thing);
  moving_.emplace(host, thing, pressed_.at);
}

void SelectTool::hover(ToolHost& host, const PointerEvent& event) {
  const auto hits = hitsAt(host.linework(), event.at, host.reach());
  host.document().selection().hover(hits.empty() ? Id{} : hits.front().id);
}

void SelectTool::release(ToolHost& host, const PointerEvent&) {
  if (isBusy()) return finish(host);
  if (press_ == Press::Waiting) click(host);
  press_ = Press::None;
}

void SelectTool::click(ToolHost& host) {
  Selection& selection = host.document().selection();
  if (under_.empty()) {
    selection.select({});
    lastClick_.reset();
    return;
  }
  std::size_t next = 0;
  const auto current = std::find(under_.begin(), under_.end(), selection.selected());
  if (lastClick_ && isNear(*lastClick_, pressed_.pixel) && current != under_.end())
    next = (static_cast<std::size_t>(current - under_.begin()) + 1) % under_.size();
  lastClick_ = pressed_.pixel;
  selection.select(under_[next]);
}

void SelectTool::doubleClick(ToolHost& host, const PointerEvent& event) {
  if (isBusy()) return;
  const auto under = thingsAt(host, event.at);
  const Id selected = host.document().selection().selected();
  // The two clicks of a double click must not go round what lies there.
  if (std::find(under.begin(), under.end(), selected) != under.end() && !fields(host).empty())
    host.openEntry(0);
}

void SelectTool::startTurning(ToolHost& host, const Vec2& from) {
  const auto handle = turnHandle(host);
  if (!handle) {
    host.say(toolWords("What is selected has no direction to turn."));
    return;
  }
  press_ = Press::None;
  turning_.emplace(host, handle->thing, handle->turnable, from);
  host.refresh();
}

bool SelectTool::key(ToolHost& host, const QKeyEvent& event) {
  const Id selected = host.document().selection().selected();
  if (event.key() == Qt::Key_Escape && selected && !isBusy()) {
    host.document().selection().select({});
    return true;
  }
  if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) {
    if (isBusy())
      finish(host);
    else if (!fields(host).empty())
      host.openEntry(0);
    return true;
  }
  if (!selected || isBusy()) return false;
  if (event.key() == Qt::Key_R && event.modifiers() == Qt::NoModifier) {
    startTurning(host, pointer_);
    return true;
  }
  if (event.key() == Qt::Key_Delete || event.key() == Qt::Key_Backspace) {
    remove(host);
    return true;
  }
  return nudge(host, event);
}

bool SelectTool::nudge(ToolHost& host, const QKeyEvent& event) {
  const QPointF way = arrow(event.key());
  if (way.isNull()) return false;
  Document& document = host.document();
  const Id selected = document.selection().selected();
  if (!canMoveIn(host.view(), document.job(), selected)) {
    host.say(stepText("%1 is not moved here.", document.job(), selected));
    return true;
  }
  const Vec2 by = nudgeStep(event.modifiers()) * Vec2(way.x(), way.y());
  document.change(stepText("Nudge %1", document.job(), selected),
                  moveInView(host.view(), document.job(), selected, by),
                  kNudgeKeys + static_cast<int>(selected.value));
  return true;
}

void SelectTool::remove(ToolHost& host) {
  Document& document = host.document();
  const Id selected = document.selection().selected();
  if (!document.change(stepText("Remove %1", document.job(), selected),
                       removeThing(document.job(), selected)))
    return;
  if (!findThing(document.job(), selected)) document.selection().select({});
}

void SelectTool::finish(ToolHost& host) {
  if (moving_) moving_->commit();
  if (turning_) turning_->commit();
  moving_.reset();
  turning_.reset();
  press_ = Press::None;
  host.refresh();
}

void SelectTool::cancel(ToolHost& host) {
  moving_.reset();
  turning_.reset();
  press_ = Press::None;
  host.refresh();
}

std::vector<TypedField> SelectTool::fields(const ToolHost& host) const {
  if (turning_) return turning_->fields(host);
  if (moving_) return moving_->fields(host);
  const Document& document = host.document();
  const Id selected = host.document().selection().selected();
  if (!selected || !canMoveIn(host.view(), document.job(), selected)) return {};
  return dimensionFields(host.view(), document.job(), selected);
}

std::optional<Problem> SelectTool::take(ToolHost& host, std::size_t field, double value) {
  if (turning_) return turning_->take(host, value);
  if (!moving_) moving_.emplace(host, host.document().selection().selected(), pointer_);
  return moving_->take(host, field, value);
}

void SelectTool::accept(ToolHost& host) {
  finish(host);
}

void SelectTool::paint(Overlay& overlay, const ToolHost& host) const {
  if (turning_) return turning_->paint(overlay, host);
  if (moving_) return moving_->paint(overlay, host);
  if (const auto handle = turnHandle(host)) {
    overlay.line(handle->turnable.pivot, handle->at, Overlay::Stroke::Draft);
    overlay.handle(handle->at, Overlay::Handle::Round);
  }
}

QCursor SelectTool::cursor(const ToolHost& host) const {
  if (press_ == Press::Panning) return Qt::ClosedHandCursor;
  const Document& document = host.document();
  const Id hovered = host.document().selection().hovered();
  const auto handle = turnHandle(host);
  if (turning_ || (handle && isOn(host, *handle, pointer_))) return Qt::PointingHandCursor;
  if (moving_ || (hovered && canMoveIn(host.view(), document.job(), hovered))) return Qt::SizeAllCursor;
  return Qt::ArrowCursor;
}

QString SelectTool::status(const ToolHost& host) const {
  if (turning_) return toolWords("Turn it, or type an angle. Ctrl: no snapping. Esc: give up.");
  if (moving_) return toolWords("Type a distance, Tab for the next. Ctrl: no snapping. Esc: give up.");
  if (host.document().selection().selected())
    return toolWords("Drag, arrow keys or Enter to move it, R to turn it, Delete to remove it.");
  return toolWords("Click to select, drag to move. Drag the empty drawing to pan.");
}

}  // namespace baywright
