// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QBasicTimer>
#include <QObject>
#include <QPoint>
#include <QPointer>
#include <QWidget>

class QMouseEvent;

namespace baywright {

/// A finger that rests where it came down asks for the menu of that place, as a right click does: every
/// widget under the filtered object that knows a context menu has one by touch. A finger that moves or lifts
/// sooner is a drag or a click.
class LongPress : public QObject {
  Q_OBJECT

 public:
  /// Watches all events of `watched`, usually the application.
  explicit LongPress(QObject& watched);

 protected:
  bool eventFilter(QObject* object, QEvent* event) override;
  void timerEvent(QTimerEvent* event) override;

 private:
  void begin(QWidget& widget, const QMouseEvent& event);
  void askForMenu();

  QBasicTimer timer_;
  QPointer<QWidget> pressed_;
  QPoint at_;
  bool asked_ = false;  ///< the menu was asked for and the finger is still down
};

}  // namespace baywright
