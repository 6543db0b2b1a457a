// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QTest>
#include <QTimer>
#include <deque>
#include <functional>

namespace baywright::testing {

/// Stands in for a person before modal dialogs: each step waits for the dialog of that name and acts in it.
/// A dialog that nobody expects is given up, so that a test fails rather than hangs.
class DialogDriver {
 public:
  using Act = std::function<void(QDialog&)>;

  DialogDriver() {
    QObject::connect(&timer_, &QTimer::timeout, [this] { look(); });
    timer_.start(10);
  }
  ~DialogDriver() { EXPECT_TRUE(steps_.empty()) << steps_.front().first << " was never asked"; }

  void expect(const char* dialog, Act act) { steps_.emplace_back(dialog, std::move(act)); }

  static void click(QDialog& dialog, const char* button) {
    auto* found = dialog.findChild<QAbstractButton*>(QString::fromLatin1(button));
    ASSERT_TRUE(found) << button;
    EXPECT_TRUE(found->isEnabled()) << button;
    QTest::mouseClick(found, Qt::LeftButton);
  }
  static Act clicking(const char* button) {
    return [button](QDialog& dialog) { click(dialog, button); };
  }
  static void giveUp(QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Escape); }

 private:
  void look() {
    auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
    if (!dialog || dialog->objectName() == QLatin1String("workAside")) return;
    if (steps_.empty() || dialog->objectName() != QString::fromLatin1(steps_.front().first)) {
      ADD_FAILURE() << "nobody expected " << dialog->objectName().toStdString();
      dialog->reject();
      return;
    }
    const Act act = steps_.front().second;
    steps_.pop_front();
    act(*dialog);
  }

  QTimer timer_;
  std::deque<std::pair<const char*, Act>> steps_;
};

}  // namespace baywright::testing
