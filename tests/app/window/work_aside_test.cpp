// SPDX-License-Identifier: Apache-2.0
#include "window/work_aside.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QProgressDialog>
#include <QPushButton>
#include <QTest>
#include <QTimer>

namespace baywright {
namespace {

TEST(WorkAside, HandsBackWhatTheWorkMade) {
  const auto made = workAside<int>(nullptr, QStringLiteral("Counting…"), [](const Progress&) { return 7; });
  ASSERT_TRUE(made && *made);
  EXPECT_EQ(**made, 7);
}

TEST(WorkAside, KeepsTheWindowAliveAndStopsWhenAsked) {
  int ticks = 0;
  QTimer ticking;
  QObject::connect(&ticking, &QTimer::timeout, [&ticks] {
    auto* dialog = qobject_cast<QProgressDialog*>(QApplication::activeModalWidget());
    if (dialog && ++ticks == 10) QTest::mouseClick(dialog->findChild<QPushButton*>(), Qt::LeftButton);
  });
  ticking.start(5);
  const auto made = workAside<int>(nullptr, QStringLiteral("Counting…"), [](const Progress& progress) {
    while (!progress.stop()) {
      progress.at(0.5);
      QThread::msleep(1);
    }
    return Result<int>(fail("stopped"));
  });
  EXPECT_FALSE(made);
  EXPECT_GE(ticks, 10);
}

TEST(WorkAside, SaysSoWhenMemoryRunsOut) {
  const auto made = workAside<int>(nullptr, QStringLiteral("Counting…"),
                                   [](const Progress&) -> Result<int> { throw std::bad_alloc(); });
  ASSERT_TRUE(made);
  EXPECT_NE(made->error().what.find("memory"), std::string::npos);
}

}  // namespace
}  // namespace baywright
