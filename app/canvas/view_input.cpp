// SPDX-License-Identifier: Apache-2.0
#include <QContextMenuEvent>
#include <QGestureEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPinchGesture>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "canvas/view.h"

namespace baywright {
namespace {

constexpr double kZoomStep = 1.25;   // a key; a notch of the wheel is as much
constexpr double kWheelNotch = 120;  // of QWheelEvent::angleDelta

}  // namespace

// --- pointer

PointerEvent View::pointerFrom(const QMouseEvent& event) const {
  return {map_.drawingFrom(event.position()), event.position(), event.button(), event.modifiers()};
}

void View::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  if (event->button() == Qt::MiddleButton || (spaceHeld_ && event->button() == Qt::LeftButton)) {
    panFrom_ = event->position();
    setCursor(Qt::ClosedHandCursor);
    return;
  }
  if (event->button() != Qt::LeftButton) return;
  tool_->press(*this, pointerFrom(*event));
  tellTool();
}

void View::mouseMoveEvent(QMouseEvent* event) {
  const PointerEvent pointer = pointerFrom(*event);
  Q_EMIT pointerAt({pointer.at.x(), pointer.at.y()});
  if (panFrom_) {
    panBy(event->position() - *panFrom_);
    panFrom_ = event->position();
    return;
  }
  tool_->move(*this, pointer);
  tellTool();
}

void View::mouseReleaseEvent(QMouseEvent* event) {
  if (panFrom_) {
    panFrom_.reset();
    tellTool();
    return;
  }
  if (event->button() != Qt::LeftButton) return;
  // The button may go up while a figure is typed: then Enter ends the gesture.
  if (!entry_->isHidden() && tool_->isBusy()) return;
  tool_->release(*this, pointerFrom(*event));
  tellTool();
}

void View::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || spaceHeld_) return;
  tool_->doubleClick(*this, pointerFrom(*event));
  tellTool();
}

void View::leaveEvent(QEvent*) {
  document_.selection().hover({});
  Q_EMIT pointerLeft();
}

void View::contextMenuEvent(QContextMenuEvent* event) {
  if (tool_->isBusy()) return;
  const auto hits = hitsAt(linework(), map_.drawingFrom(event->pos()), reach());
  // Where several lie over each other, the one that was chosen by clicks before.
  const Id selected = document_.selection().selected();
  const bool hasSelected =
      std::any_of(hits.begin(), hits.end(), [&](const auto& hit) { return hit.id == selected; });
  const Id thing = hasSelected ? selected : hits.empty() ? Id{} : hits.front().id;
  if (thing) document_.selection().select(thing);
  Q_EMIT contextMenuWanted(thing, event->globalPos());
}

void View::wheelEvent(QWheelEvent* event) {
  event->accept();
  // Only touchpads tell pixels and phases: two fingers pan, as everywhere.
  const bool isTouchpad = !event->pixelDelta().isNull() && event->phase() != Qt::NoScrollPhase;
  if (isTouchpad && !event->modifiers().testFlag(Qt::ControlModifier)) {
    panBy(event->pixelDelta());
    return;
  }
  zoomAt(event->position(), std::pow(kZoomStep, event->angleDelta().y() / kWheelNotch));
}

bool View::nativeGesture(const QNativeGestureEvent& event) {
  if (event.gestureType() != Qt::ZoomNativeGesture) return false;
  zoomAt(event.position(), 1 + event.value());
  return true;
}

bool View::gesture(QGestureEvent& event) {
  auto* pinch = static_cast<QPinchGesture*>(event.gesture(Qt::PinchGesture));
  if (!pinch) return false;
  // The first finger may have begun something before the second came.
  if (pinch->state() == Qt::GestureStarted) giveUp();
  event.accept(pinch);
  // Qt 6.4 tells each movement of two fingers twice.
  const bool isToldAgain = pinch->state() == Qt::GestureUpdated &&
                           pinch->scaleFactor() == pinch->lastScaleFactor() &&
                           pinch->centerPoint() == pinch->lastCenterPoint();
  if (isToldAgain || pinch->state() == Qt::GestureFinished) return true;
  const QPointF centre = mapFromGlobal(pinch->centerPoint());
  panBy(centre - mapFromGlobal(pinch->lastCenterPoint()));
  zoomAt(centre, pinch->scaleFactor());
  return true;
}

// --- keys

bool View::event(QEvent* event) {
  switch (event->type()) {
    case QEvent::NativeGesture:
      if (nativeGesture(*static_cast<QNativeGestureEvent*>(event))) return true;
      break;
    case QEvent::Gesture:
      if (gesture(*static_cast<QGestureEvent*>(event))) return true;
      break;
    case QEvent::ShortcutOverride:
      if (keepsFromShortcuts(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
      }
      break;
    default:
      break;
  }
  return QWidget::event(event);
}

bool View::keepsFromShortcuts(const QKeyEvent& event) const {
  // While something is begun no shortcut may pull the job away from under it.
  if (tool_->isBusy()) return true;
  const bool isFunctionKey = event.key() >= Qt::Key_F1 && event.key() <= Qt::Key_F35;
  const bool isArrow = event.key() >= Qt::Key_Left && event.key() <= Qt::Key_Down;
  if (isArrow) return !event.modifiers().testFlag(Qt::ControlModifier);
  return event.modifiers() == Qt::NoModifier && !isFunctionKey;
}

bool View::focusNextPrevChild(bool next) {
  if (tool_->isBusy() && !tool_->fields(*this).empty()) return false;
  return QWidget::focusNextPrevChild(next);
}

bool View::typesAField(const QKeyEvent& event) const {
  if (tool_->fields(*this).empty()) return false;
  if (event.key() == Qt::Key_Tab) return tool_->isBusy();
  if (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier)) return false;
  const QString text = event.text();
  return text.size() == 1 &&
         (text[0].isDigit() || text[0] == QLatin1Char('.') || text[0] == QLatin1Char(','));
}

bool View::navigates(const QKeyEvent& event) {
  const bool control = event.modifiers().testFlag(Qt::ControlModifier);
  if (event.key() == Qt::Key_0 && control) {
    fit();
    return true;
  }
  const bool nearer = event.key() == Qt::Key_Plus || event.key() == Qt::Key_Equal;
  if (!nearer && event.key() != Qt::Key_Minus) return false;
  zoomAt(rect().center(), nearer ? kZoomStep : 1 / kZoomStep);
  return true;
}

bool View::choosesATool(const QKeyEvent& event) {
  if (tool_->isBusy() || event.modifiers() != Qt::NoModifier) return false;
  const QKeySequence pressed(event.keyCombination());
  for (const ToolRow& row : tools()) {
    if (pressed != QKeySequence(QString::fromLatin1(row.shortcut)) || !row.worksIn(kind())) continue;
    toolBox_.choose(row.kind);
    return true;
  }
  return false;
}

void View::keyPressEvent(QKeyEvent* event) {
  event->accept();
  if (event->key() == Qt::Key_Space) {
    spaceHeld_ = true;
  } else if (event->key() == Qt::Key_Escape && tool_->isBusy()) {
    giveUp();
  } else if (event->matches(QKeySequence::Undo) && tool_->isBusy()) {
    giveUp();
  } else if (typesAField(*event)) {
    openEntry(0, event->key() == Qt::Key_Tab ? QString() : event->text());
  } else if (!tool_->key(*this, *event) && !navigates(*event) && !choosesATool(*event)) {
    const bool leavesTool = event->key() == Qt::Key_Escape && toolBox_.current() != ToolKind::Select;
    if (leavesTool)
      done();
    else
      event->ignore();
  }
  tellTool();
}

void View::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    spaceHeld_ = false;
    tellTool();
  }
  QWidget::keyReleaseEvent(event);
}

void View::focusOutEvent(QFocusEvent* event) {
  spaceHeld_ = false;
  QWidget::focusOutEvent(event);
}

}  // namespace baywright
