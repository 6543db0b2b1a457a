// SPDX-License-Identifier: Apache-2.0
#include "window/long_press.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QStyleHints>
#include <QTest>

namespace baywright {
namespace {

/// Counts what a widget is asked for.
struct Pad : QWidget {
  int menus = 0;
  int presses = 0;
  int releases = 0;
  QPoint menuAt;

  void contextMenuEvent(QContextMenuEvent* event) override {
    ++menus;
    menuAt = event->pos();
  }
  void mousePressEvent(QMouseEvent*) override { ++presses; }
  void mouseReleaseEvent(QMouseEvent*) override { ++releases; }
};

class Finger : public ::testing::Test {
 protected:
  void SetUp() override {
    pad.resize(200, 200);
    pad.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&pad));
  }

  auto touch() { return QTest::touchEvent(&pad, device); }
  static void waitLongEnough() {
    QTest::qWait(QGuiApplication::styleHints()->mousePressAndHoldInterval() + 200);
  }

  LongPress longPress{*qApp};
  Pad pad;
  QPointingDevice* device = QTest::createTouchDevice();
};

TEST_F(Finger, ThatRestsAsksForTheMenu) {
  touch().press(0, {60, 70});
  EXPECT_EQ(pad.presses, 1);
  waitLongEnough();
  EXPECT_EQ(pad.menus, 1);
  EXPECT_EQ(pad.menuAt, QPoint(60, 70));
  EXPECT_EQ(pad.releases, 1) << "what the press began has ended before the menu";
  touch().release(0, {60, 70});
  EXPECT_EQ(pad.releases, 1) << "lifting the finger clicks nothing";
  touch().press(0, {10, 10});
  touch().release(0, {10, 10});
  EXPECT_EQ(pad.releases, 2) << "the next tap is a click again";
}

TEST_F(Finger, WhoseLiftingNobodyToldCostsNoClick) {
  touch().press(0, {60, 70});
  waitLongEnough();
  ASSERT_EQ(pad.menus, 1);
  QTest::mouseClick(&pad, Qt::LeftButton, {}, {20, 20});
  EXPECT_EQ(pad.releases, 2) << "that of the long press and that of the click";
  touch().release(0, {60, 70});
}

TEST_F(Finger, ThatMovesDrags) {
  touch().press(0, {60, 70});
  touch().move(0, {120, 70});
  waitLongEnough();
  EXPECT_EQ(pad.menus, 0);
  touch().release(0, {120, 70});
  EXPECT_EQ(pad.releases, 1);
}

TEST_F(Finger, ThatLiftsSoonClicks) {
  touch().press(0, {60, 70});
  touch().release(0, {60, 70});
  waitLongEnough();
  EXPECT_EQ(pad.menus, 0);
}

TEST_F(Finger, IsNoMouse) {
  QTest::mousePress(&pad, Qt::LeftButton, {}, {60, 70});
  waitLongEnough();
  EXPECT_EQ(pad.menus, 0);
  QTest::mouseRelease(&pad, Qt::LeftButton, {}, {60, 70});
}

}  // namespace
}  // namespace baywright
