// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFrame>
#include <QTimer>

class QLabel;

namespace baywright {

/// A sentence across the top of the window that does not stop the work: it goes after a while or when it is
/// closed.
class MessageStrip : public QFrame {
  Q_OBJECT

 public:
  explicit MessageStrip(QWidget* parent = nullptr);

  QString text() const;

 public Q_SLOTS:
  void say(const QString& sentence);

 private:
  QLabel* label_;
  QTimer timer_;
};

}  // namespace baywright
