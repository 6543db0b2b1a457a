// SPDX-License-Identifier: Apache-2.0
#include "panels/room_form.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QTest>

#include "job/room_geometry.h"

namespace baywright {
namespace {

TEST(RoomForm, MakesARoomByKeyboardAlone) {
  Document document;
  RoomForm form(document);
  form.show();
  const QList<QLineEdit*> lines = form.findChildren<QLineEdit*>();
  lines[0]->setFocus();
  lines[0]->selectAll();
  QTest::keyClicks(lines[0], QStringLiteral("7.2"));
  lines[1]->setFocus();
  lines[1]->selectAll();
  QTest::keyClicks(lines[1], QStringLiteral("24 ft"));
  QTest::keyClick(lines[1], Qt::Key_Return);
  ASSERT_EQ(document.job().room.walls.size(), 4U);
  EXPECT_NEAR(floorArea(document.job().room), 7.2 * 24 * 0.3048, 1e-9);
  EXPECT_EQ(document.undoStack().count(), 1);
}

TEST(RoomForm, MakesAnLWithAStep) {
  Document document;
  RoomForm form(document);
  form.show();
  const QList<QComboBox*> boxes = form.findChildren<QComboBox*>();
  boxes[0]->setCurrentIndex(1);
  boxes[1]->setCurrentIndex(3);
  QTest::keyClick(form.findChildren<QLineEdit*>().front(), Qt::Key_Return);
  EXPECT_EQ(document.job().room.walls.size(), 6U);
  EXPECT_EQ(document.job().room.ceiling.size(), 2U);
}

TEST(RoomForm, RefusesALengthThatIsNone) {
  Document document;
  RoomForm form(document);
  form.show();
  QLineEdit* length = form.findChildren<QLineEdit*>().front();
  length->setText(QStringLiteral("long"));
  QTest::keyClick(length, Qt::Key_Return);
  EXPECT_TRUE(document.job().room.walls.empty());
}

}  // namespace
}  // namespace baywright
