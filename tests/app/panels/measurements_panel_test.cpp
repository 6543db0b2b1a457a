// SPDX-License-Identifier: Apache-2.0
#include "panels/measurements_panel.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPointer>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "support/job_builder.h"

namespace baywright {
namespace {

class Panel : public ::testing::Test {
 protected:
  void SetUp() override {
    document.startWith(testing::garage(6.0, 4.0).job());
    panel.resize(1200, 300);
    panel.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&panel));
  }

  template <class T>
  T* child(const char* name) {
    return panel.findChild<T*>(QString::fromLatin1(name));
  }
  void press(const char* button) { QTest::mouseClick(child<QPushButton>(button), Qt::LeftButton); }
  /// Into the cell whose editor is open; Enter takes it.
  void typeNext(const char* text) {
    QPointer<QLineEdit> editor;
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor = panel.table()->viewport()->findChild<QLineEdit*>(); }));
    QTest::keyClicks(editor, QString::fromUtf8(text));
    QTest::keyClick(editor, Qt::Key_Return);
    // It closes, and the next one opens, by queued calls.
    ASSERT_TRUE(QTest::qWaitFor([&] { return editor.isNull(); }));
    QCoreApplication::processEvents();
  }
  void addDiagonal(int from, int to) {
    child<QComboBox>("firstCorner")->setCurrentIndex(from);
    child<QComboBox>("secondCorner")->setCurrentIndex(to);
    press("addReading");
  }
  /// A floor of 6 by 4 whose wall C was read 20 cm short, with both diagonals to tell which it is.
  void readWithABlunder() {
    press("addWalls");
    for (const char* length : {"6.002", "4.001", "5.8", "3.999"}) typeNext(length);
    addDiagonal(0, 2);
    typeNext("7.212");
    addDiagonal(1, 3);
    typeNext("7.211");
  }

  Document document;
  MeasurementsPanel panel{document};
};

TEST_F(Panel, TakesWallLengthsByKeyboardAlone) {
  auto* walls = child<QPushButton>("addWalls");
  walls->setFocus();
  QTest::keyClick(walls, Qt::Key_Space);
  for (const char* length : {"6.002", "4.001", "5.998", "3.999"}) typeNext(length);
  const auto& readings = document.job().measurements;
  ASSERT_EQ(readings.size(), 4U);
  for (std::size_t i = 0; i < 4; ++i) EXPECT_EQ(readings[i].from, document.job().room.walls[i].id);
  EXPECT_DOUBLE_EQ(readings[2].value, 5.998);
  EXPECT_EQ(document.undoStack().count(), 4);
}

TEST_F(Panel, StaysInTheRowWhoseFigureIsRefused) {
  press("addWalls");
  typeNext("long");
  EXPECT_TRUE(document.job().measurements.empty());
  EXPECT_EQ(panel.table()->currentIndex().row(), 0);
  typeNext("6");
  ASSERT_EQ(document.job().measurements.size(), 1U);
  EXPECT_EQ(panel.table()->currentIndex().row(), 1);
}

TEST_F(Panel, NamesABlunderAndSetsItAside) {
  readWithABlunder();
  ASSERT_EQ(document.job().measurements.size(), 6U);
  EXPECT_TRUE(child<QLabel>("suspicion")->text().contains(QStringLiteral("wall C"), Qt::CaseInsensitive))
      << child<QLabel>("suspicion")->text().toStdString();
  ASSERT_TRUE(child<QPushButton>("setAside")->isVisible());
  press("setAside");
  EXPECT_FALSE(document.job().measurements[2].used);
  EXPECT_FALSE(child<QLabel>("suspicion")->isVisible()) << child<QLabel>("suspicion")->text().toStdString();
}

TEST_F(Panel, AdjustsTheWallsAsOneStepAndUndoBringsThemBack) {
  press("addWalls");
  for (const char* length : {"6.102", "4.051", "6.1", "4.049"}) typeNext(length);
  addDiagonal(0, 2);
  typeNext("7.325");
  const Job before = document.job();
  const Result<SurveyAdjustment> fit = adjust(before.room, before.measurements);
  ASSERT_TRUE(fit);
  const int steps = document.undoStack().count();
  press("adjustWalls");
  EXPECT_EQ(document.undoStack().count(), steps + 1);
  const auto& walls = document.job().room.walls;
  for (std::size_t i = 0; i < walls.size(); ++i) EXPECT_EQ(walls[i].start, fit->corners[i].position);
  EXPECT_NEAR((walls[1].start - walls[0].start).norm(), 6.102, 0.003);
  document.undoStack().undo();
  EXPECT_EQ(document.job(), before);
}

TEST_F(Panel, SaysWhatToMeasureNextAndHowMuchIsChecked) {
  press("addWalls");
  for (const char* length : {"6", "4", "6", "4"}) typeNext(length);
  EXPECT_TRUE(child<QLabel>("advice")->text().contains(QStringLiteral("diagonal")))
      << child<QLabel>("advice")->text().toStdString();
  const QString before = child<QLabel>("summary")->text();
  addDiagonal(0, 2);
  typeNext("7.211");
  EXPECT_NE(child<QLabel>("summary")->text(), before);
}

TEST_F(Panel, ListsWhatTheSurveyLacks) {
  Job job = document.job();
  job.room.ceiling.front().height = notMeasured(2.4);
  document.change("Forget the ceiling", job);
  auto* remarks = child<QListWidget>("remarks");
  bool saysCeiling = false;
  for (int i = 0; i < remarks->count(); ++i)
    saysCeiling =
        saysCeiling || remarks->item(i)->text().contains(QStringLiteral("ceiling"), Qt::CaseInsensitive);
  EXPECT_TRUE(saysCeiling);
}

TEST_F(Panel, RemovesAReadingByKey) {
  press("addWalls");
  for (const char* length : {"6", "4", "6", "4"}) typeNext(length);
  panel.table()->setCurrentIndex(panel.model().index(1, MeasurementsModel::What));
  QTest::keyClick(panel.table(), Qt::Key_Delete);
  EXPECT_EQ(document.job().measurements.size(), 3U);
}

}  // namespace
}  // namespace baywright
