// SPDX-License-Identifier: Apache-2.0
#include "panels/room_form.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include "job/edit.h"
#include "job/room_geometry.h"
#include "panels/floor_preview.h"

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

TEST(RoomForm, SketchesTheRoomAsItIsTyped) {
  Document document;
  RoomForm form(document);
  form.show();
  const auto* sketch = form.findChild<FloorPreview*>();
  ASSERT_NE(sketch, nullptr);
  EXPECT_NEAR(floorArea(sketch->room()), 6.0 * 4.5, 1e-9);
  QLineEdit* length = form.findChildren<QLineEdit*>().front();
  length->setText(QStringLiteral("7.2"));
  EXPECT_NEAR(floorArea(sketch->room()), 7.2 * 4.5, 1e-9);
  length->setText(QStringLiteral("7.2 x"));
  EXPECT_NEAR(floorArea(sketch->room()), 7.2 * 4.5, 1e-9) << "half typed";
  length->setText(QStringLiteral("7.2"));
  const QList<QComboBox*> boxes = form.findChildren<QComboBox*>();
  boxes[0]->setCurrentIndex(1);
  boxes[1]->setCurrentIndex(1);
  EXPECT_EQ(sketch->room().walls.size(), 6U);
  EXPECT_NE(sketch->room().ceiling.front().slope, Vec2(0, 0));
  EXPECT_TRUE(document.job().room.walls.empty());
  EXPECT_EQ(document.undoStack().count(), 0);
}

TEST(RoomForm, NamesTheWallsBetweenWhichTheCeilingSlopes) {
  Document document;
  RoomForm form(document);
  form.show();
  const QList<QComboBox*> boxes = form.findChildren<QComboBox*>();
  for (const int shape : {0, 1}) {
    boxes[0]->setCurrentIndex(shape);
    for (const int ceiling : {1, 2}) {
      boxes[1]->setCurrentIndex(ceiling);
      QStringList heights;
      for (const QLabel* label : form.findChildren<QLabel*>())
        if (label->text().contains(QStringLiteral("eight at wall"))) heights << label->text().right(1);
      ASSERT_EQ(heights.size(), 2);
      // What is typed there stands along the wall that is named.
      const Room& room = form.findChild<FloorPreview*>()->room();
      const double typed[] = {2.7, 2.2};
      for (int i = 0; i < 2; ++i) {
        for (const WallLine& wall : wallLines(room)) {
          if (QString::fromStdString(wall.name) != heights[i]) continue;
          for (const Vec2& end : {wall.start, wall.end})
            EXPECT_NEAR(room.ceiling.front().heightAt(end), typed[i], 1e-9) << wall.name << shape << ceiling;
        }
      }
    }
  }
}

TEST(RoomForm, KeepsWhatWasTypedWhenTheUnitChanges) {
  Document document;
  RoomForm form(document);
  form.show();
  QLineEdit* length = form.findChildren<QLineEdit*>().front();
  length->setText(QStringLiteral("7.2 m"));
  UnitSystem feet = document.job().units;
  feet.length = LengthUnit::FeetInches;
  ASSERT_TRUE(document.change(QStringLiteral("Feet"), setUnits(document.job(), feet)));
  EXPECT_TRUE(length->text().contains(QStringLiteral("23"))) << length->text().toStdString();
  QTest::keyClick(length, Qt::Key_Return);
  EXPECT_NEAR(wallLines(document.job().room)[0].length, 7.2, 0.002);
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
