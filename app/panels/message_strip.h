// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFrame>
#include <QTimer>

class QLabel;

namespace baywright {

/// A sentence at the top of a widget that does not stop the work: it lies over what is there, so that nothing
/// moves under the pointer, and goes after a while or when it is closed.
class MessageStrip : public QFrame {
  Q_OBJECT

 public:
  /// Of the widget that it lies over.
  explicit MessageStrip(QWidget* under);

  QString text() const;

 public Q_SLOTS:
  void say(const QString& sentence);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void place();

  QLabel* label_;
  QTimer timer_;
};

}  // namespace baywright
