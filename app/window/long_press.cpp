// SPDX-License-Identifier: Apache-2.0
#include "window/long_press.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QInputDevice>
#include <QMouseEvent>
#include <QStyleHints>
#include <QTouchEvent>

namespace baywright {
namespace {

/// Qt makes mouse events of what a finger does where a widget does not take touches itself; they tell where
/// from.
bool isByFinger(const QMouseEvent& event) {
  return event.deviceType() == QInputDevice::DeviceType::TouchScreen;
}

}  // namespace

LongPress::LongPress(QObject& watched) : QObject(&watched) {
  watched.installEventFilter(this);
}

void LongPress::begin(QWidget& widget, const QMouseEvent& event) {
  pressed_ = &widget;
  at_ = event.globalPosition().toPoint();
  timer_.start(QGuiApplication::styleHints()->mousePressAndHoldInterval(), this);
}

bool LongPress::eventFilter(QObject* object, QEvent* event) {
  switch (event->type()) {
    case QEvent::MouseButtonPress: {
      const auto& mouse = *static_cast<QMouseEvent*>(event);
      auto* widget = qobject_cast<QWidget*>(object);
      asked_ = false;  // the finger has been lifted, whether or not anybody was told
      if (widget && isByFinger(mouse) && mouse.button() == Qt::LeftButton) begin(*widget, mouse);
      break;
    }
    case QEvent::MouseMove: {
      const QPoint moved = static_cast<QMouseEvent*>(event)->globalPosition().toPoint() - at_;
      if (moved.manhattanLength() >= QApplication::startDragDistance()) timer_.stop();
      break;
    }
    case QEvent::TouchUpdate:
      // Two fingers pan and pinch.
      if (static_cast<QTouchEvent*>(event)->pointCount() > 1) timer_.stop();
      break;
    case QEvent::MouseButtonRelease:
      timer_.stop();
      // Lifting the finger must not choose what the menu opened with beneath it.
      if (asked_ && qobject_cast<QWidget*>(object)) {
        asked_ = false;
        return true;
      }
      break;
    default:
      break;
  }
  return QObject::eventFilter(object, event);
}

void LongPress::timerEvent(QTimerEvent* event) {
  if (event->timerId() != timer_.timerId()) return QObject::timerEvent(event);
  timer_.stop();
  askForMenu();
}

void LongPress::askForMenu() {
  if (!pressed_) return;
  // The press has begun a click or a drag: it ends here, where it began.
  const QPointF local = pressed_->mapFromGlobal(at_);
  QMouseEvent release(QEvent::MouseButtonRelease, local, at_, Qt::LeftButton, Qt::NoButton, Qt::NoModifier);
  QApplication::sendEvent(pressed_, &release);
  if (!pressed_) return;
  asked_ = true;
  QContextMenuEvent menu(QContextMenuEvent::Mouse, local.toPoint(), at_);
  QApplication::sendEvent(pressed_, &menu);
}

}  // namespace baywright
