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

#include "job/room_geometry.h"
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

TEST_F(Panel, DoesNotCountWhatIsAssumedAsACheck) {
  press("addWalls");
  for (const char* length : {"6.002", "4.001", "5.998", "3.999"}) typeNext(length);
  const QString walls = child<QLabel>("summary")->text();
  EXPECT_TRUE(walls.contains(QStringLiteral("Nothing checks them"))) << walls.toStdString();
  EXPECT_FALSE(walls.contains(QStringLiteral("more than needed"))) << walls.toStdString();
  for (int from : {0, 1}) {
    addDiagonal(from, from + 2);
    typeNext("7.211");
  }
  const QString all = child<QLabel>("summary")->text();
  EXPECT_TRUE(all.contains(QStringLiteral("6, 1 more than needed"))) << all.toStdString();
}

TEST_F(Panel, SelectsTheReadingUnderTheCursorAndFollowsTheSelection) {
  readWithABlunder();
  const auto& readings = document.job().measurements;
  EXPECT_EQ(document.selection().selected(), readings.back().id) << "the one that was typed last";
  panel.table()->setCurrentIndex(panel.model().index(1, MeasurementsModel::Read));
  EXPECT_EQ(document.selection().selected(), readings[1].id);
  document.selection().select(readings[3].id);
  EXPECT_EQ(panel.table()->currentIndex().row(), 3);
}

TEST_F(Panel, SaysNothingTwice) {
  press("addWalls");
  for (const char* length : {"6.002", "4.001", "5.998", "3.999"}) typeNext(length);
  const auto* remarks = child<QListWidget>("remarks");
  for (int row = 0; row < remarks->count(); ++row) {
    const QString sentence = remarks->item(row)->text().section(QStringLiteral("  "), 1);
    EXPECT_FALSE(child<QLabel>("advice")->text().contains(sentence)) << sentence.toStdString();
  }
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
  press("adjustRoom");
  EXPECT_EQ(document.undoStack().count(), steps + 1);
  const auto& walls = document.job().room.walls;
  for (std::size_t i = 0; i < walls.size(); ++i) EXPECT_EQ(walls[i].start, fit->corners[i].position);
  EXPECT_NEAR((walls[1].start - walls[0].start).norm(), 6.102, 0.003);
  document.undoStack().undo();
  EXPECT_EQ(document.job(), before);
}

TEST_F(Panel, LaysTheCeilingThroughHeightsAtCornersAndPoints) {
  auto* kind = child<QComboBox>("readingKind");
  kind->setCurrentIndex(kind->findText(QStringLiteral("Ceiling at corner")));
  // It falls by 100 mm a metre of y: the garage is 6 by 4 from the origin.
  const std::pair<int, const char*> corners[] = {{0, "2.401"}, {1, "2.4"}, {2, "2.8"}};
  for (const auto& [corner, height] : corners) {
    child<QComboBox>("firstCorner")->setCurrentIndex(corner);
    press("addReading");
    typeNext(height);
  }
  kind->setCurrentIndex(kind->findText(QStringLiteral("Ceiling at point")));
  QTest::keyClicks(child<QLineEdit>("pointX"), QStringLiteral("three"));
  QString problem;
  QObject::connect(&document, &Document::problemRaised, &document,
                   [&](const QString& told) { problem = told; });
  press("addReading");
  EXPECT_TRUE(problem.contains(QStringLiteral("three"))) << problem.toStdString();
  child<QLineEdit>("pointX")->clear();
  QTest::keyClicks(child<QLineEdit>("pointX"), QStringLiteral("3"));
  QTest::keyClicks(child<QLineEdit>("pointY"), QStringLiteral("1.5"));
  press("addReading");
  typeNext("2.55");
  ASSERT_EQ(document.job().measurements.size(), 4U);
  EXPECT_EQ(document.job().measurements[3].position, Vec2(3, 1.5));
  EXPECT_TRUE(child<QLabel>("summary")->text().contains(QStringLiteral("sloped")))
      << child<QLabel>("summary")->text().toStdString();
  // No reading of the floor is needed; residuals stand beside the heights.
  const QString off = panel.model().index(0, MeasurementsModel::OffBy).data().toString();
  EXPECT_TRUE(off.contains(QStringLiteral("0.00"))) << off.toStdString();
  const Job before = document.job();
  press("adjustRoom");
  EXPECT_NEAR(*ceilingHeightAt(document.job().room, {5, 1}), 2.5, 0.003);
  EXPECT_EQ(document.job().room.walls, before.room.walls);
  document.undoStack().undo();
  EXPECT_EQ(document.job(), before);
}

TEST_F(Panel, AdjustsTheCeilingOverTheWallsAsAdjusted) {
  press("addWalls");
  for (const char* length : {"6.1", "4.05", "6.1", "4.05"}) typeNext(length);
  auto* kind = child<QComboBox>("readingKind");
  kind->setCurrentIndex(kind->findText(QStringLiteral("Ceiling at corner")));
  const std::pair<int, const char*> corners[] = {{0, "2.4"}, {1, "2.4"}, {2, "2.402"}, {3, "2.04"}};
  for (const auto& [corner, height] : corners) {
    child<QComboBox>("firstCorner")->setCurrentIndex(corner);
    press("addReading");
    typeNext(height);
  }
  // Digits swapped at corner D: named, and set aside by the button.
  EXPECT_TRUE(child<QLabel>("suspicion")->text().contains(QStringLiteral("2.040 m")))
      << child<QLabel>("suspicion")->text().toStdString();
  press("setAside");
  const int steps = document.undoStack().count();
  press("adjustRoom");
  EXPECT_EQ(document.undoStack().count(), steps + 1);
  EXPECT_NEAR((document.job().room.walls[1].start - document.job().room.walls[0].start).norm(), 6.1, 0.003);
  EXPECT_NEAR(*ceilingHeightAt(document.job().room, {6.08, 4.03}), 2.4, 0.003);
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
