// SPDX-License-Identifier: Apache-2.0
#include "window/room_import.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QComboBox>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QTemporaryDir>
#include <QTest>
#include <QTreeWidget>
#include <QUrl>

#include "dialog_driver.h"
#include "exchange/dxf_unit.h"
#include "exchange/survey_kind.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "jobfile/job_archive.h"
#include "panels/message_strip.h"
#include "support/job_builder.h"
#include "survey_files.h"
#include "window/main_window.h"

namespace baywright {
namespace {

using namespace testing;

std::string bytesOf(const Job& job) {
  return jobToBytes(job).value();
}

QTreeWidgetItem& group(QDialog& dialog, int index) {
  return *dialog.findChild<QTreeWidget*>(QStringLiteral("parts"))->topLevelItem(index);
}
constexpr int kCeiling = 1, kOpenings = 2, kScans = 4;  // groups of the review, in their order

/// A window with a job that has a room already, and a folder with files to bring in.
class RoomImport : public ::testing::Test {
 protected:
  RoomImport() {
    window_.document().startWith(testing::garage(7.0, 6.0).job());
    before_ = window_.document().job();
  }

  QString file(const char* name, const std::string& bytes) {
    QFile made(folder_.filePath(QString::fromLatin1(name)));
    EXPECT_TRUE(made.open(QIODevice::WriteOnly));
    made.write(QByteArray::fromStdString(bytes));
    return made.fileName();
  }
  bool bring(const char* name, const std::string& bytes) {
    return window_.files().openFile(file(name, bytes));
  }
  const Job& job() { return window_.document().job(); }
  void expectNothingChanged() {
    EXPECT_EQ(job(), before_);
    EXPECT_EQ(window_.document().undoStack().count(), 0);
  }

  QTemporaryDir folder_;
  MainWindow window_{std::filesystem::path()};
  DialogDriver driver_;
  Job before_;
};

TEST_F(RoomImport, TakesAMeasuringListWithoutQuestions) {
  window_.showStage(Stage::Place);
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  ASSERT_TRUE(bring("list.csv", measuringList()));
  EXPECT_NEAR(floorArea(job().room), 30, 0.02);
  EXPECT_EQ(job().room.openings.size(), 2U);
  EXPECT_NEAR(job().room.ceiling.at(0).height.value, 2.9, 0.001);
  EXPECT_EQ(job().measurements.size(), 6U);
  EXPECT_EQ(window_.stage(), Stage::Survey);
}

TEST_F(RoomImport, LeavesOutWhatWasUnticked) {
  driver_.expect("reviewDialog", [](QDialog& dialog) {
    EXPECT_EQ(group(dialog, kOpenings).childCount(), 2);
    group(dialog, kOpenings).child(0)->setCheckState(0, Qt::Unchecked);
    group(dialog, kCeiling).child(0)->setCheckState(0, Qt::Unchecked);
    DialogDriver::click(dialog, "take");
  });
  ASSERT_TRUE(bring("list.csv", measuringList()));
  ASSERT_EQ(job().room.openings.size(), 1U);
  EXPECT_EQ(job().room.openings[0].kind, OpeningKind::Window);
  ASSERT_EQ(job().room.ceiling.size(), 1U);
  EXPECT_FALSE(job().room.ceiling[0].height.known);
}

TEST_F(RoomImport, TakesWhatWasCorrectedInTheReview) {
  driver_.expect("reviewDialog", [](QDialog& dialog) {
    auto* parts = dialog.findChild<QTreeWidget*>(QStringLiteral("parts"));
    auto* form = dialog.findChild<QWidget*>(QStringLiteral("corrections"));
    group(dialog, kOpenings).child(0)->setCheckState(0, Qt::Unchecked);
    const auto correct = [&](QTreeWidgetItem* row, const QString& field, const QString& figure) {
      parts->setCurrentItem(row);
      for (QLineEdit* line : form->findChildren<QLineEdit*>()) {
        if (line->accessibleName() != field) continue;
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, figure);
        QTest::keyClick(line, Qt::Key_Return);
      }
    };
    correct(group(dialog, kOpenings).child(1), QStringLiteral("Width"), QStringLiteral("1.11"));
    EXPECT_TRUE(group(dialog, kOpenings).child(1)->text(1).contains(QStringLiteral("1.11")))
        << group(dialog, kOpenings).child(1)->text(1).toStdString();
    correct(group(dialog, kCeiling).child(0), QStringLiteral("Height at the anchor"), QStringLiteral("2.77"));
    EXPECT_EQ(group(dialog, kOpenings).child(0)->checkState(0), Qt::Unchecked) << "ticks stay";
    EXPECT_EQ(parts->currentItem(), group(dialog, kCeiling).child(0));
    EXPECT_TRUE(dialog.isVisible()) << "Enter took the figure, not the room";
    DialogDriver::click(dialog, "take");
  });
  ASSERT_TRUE(bring("list.csv", measuringList()));
  ASSERT_EQ(job().room.openings.size(), 1U);
  EXPECT_NEAR(job().room.openings[0].width.value, 1.11, 1e-9);
  EXPECT_TRUE(findById(job().room.walls, job().room.openings[0].wall));
  EXPECT_NEAR(job().room.ceiling.at(0).height.value, 2.77, 1e-9);
  EXPECT_EQ(job().measurements.size(), 6U) << "readings still name the walls";
  EXPECT_EQ(window_.document().undoStack().count(), 1);
}

TEST_F(RoomImport, IsOneStepThatUndoTakesBack) {
  const std::string bytes = bytesOf(before_);
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  ASSERT_TRUE(bring("list.csv", measuringList()));
  EXPECT_NE(bytesOf(job()), bytes);
  EXPECT_EQ(window_.document().undoStack().count(), 1);
  window_.document().undoStack().undo();
  EXPECT_EQ(bytesOf(job()), bytes);
}

TEST_F(RoomImport, ChangesNothingWhenTheReviewIsGivenUp) {
  driver_.expect("reviewDialog", DialogDriver::giveUp);
  EXPECT_FALSE(bring("list.csv", measuringList()));
  expectNothingChanged();
}

TEST_F(RoomImport, TakesADrawingWithItsStatedUnitAndSuggestedLayers) {
  driver_.expect("drawingDialog", [](QDialog& dialog) {
    auto* layers = dialog.findChild<QTreeWidget*>(QStringLiteral("layers"));
    ASSERT_EQ(layers->topLevelItemCount(), 2);
    EXPECT_EQ(layers->topLevelItem(0)->text(0), QStringLiteral("WALLS"));
    EXPECT_EQ(layers->topLevelItem(0)->checkState(0), Qt::Checked);
    EXPECT_EQ(layers->topLevelItem(1)->checkState(0), Qt::Unchecked);
    EXPECT_FALSE(layers->topLevelItem(1)->text(2).isEmpty());
    EXPECT_TRUE(dialog.findChild<QLabel*>(QStringLiteral("extent"))->text().contains(QStringLiteral("6.40")));
    DialogDriver::click(dialog, "next");
  });
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  ASSERT_TRUE(bring("house.dxf", dxfRoom(4)));
  EXPECT_NEAR(floorArea(job().room), 32, 1e-6);
}

TEST_F(RoomImport, DoesNotGoOnBeforeAnUnstatedUnitIsChosen) {
  driver_.expect("drawingDialog", [](QDialog& dialog) {
    auto* next = dialog.findChild<QAbstractButton*>(QStringLiteral("next"));
    EXPECT_FALSE(next->isEnabled());
    auto* units = dialog.findChild<QComboBox*>(QStringLiteral("unit"));
    EXPECT_EQ(units->currentIndex(), -1);
    units->setCurrentIndex(units->findData(static_cast<int>(DrawingUnit::Millimetres)));
    DialogDriver::click(dialog, "next");
  });
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  ASSERT_TRUE(bring("house.dxf", dxfRoom(0)));
  EXPECT_NEAR(floorArea(job().room), 32, 1e-6);
}

TEST_F(RoomImport, AsksAgainWhenTheChosenLayersCloseNoRoom) {
  driver_.expect("drawingDialog", [](QDialog& dialog) {
    auto* layers = dialog.findChild<QTreeWidget*>(QStringLiteral("layers"));
    layers->topLevelItem(0)->setCheckState(0, Qt::Unchecked);
    layers->topLevelItem(1)->setCheckState(0, Qt::Checked);
    DialogDriver::click(dialog, "next");
  });
  driver_.expect("drawingDialog", [](QDialog& dialog) {
    EXPECT_FALSE(dialog.findChild<QLabel*>(QStringLiteral("problem"))->text().isEmpty());
    DialogDriver::giveUp(dialog);
  });
  EXPECT_FALSE(bring("house.dxf", dxfRoom(4)));
  expectNothingChanged();
}

TEST_F(RoomImport, OffersEveryRoomOfADrawing) {
  const std::string two =
      dxfDrawing(dxfRing("WALLS", 0, 0, 6400, 5000) + dxfRing("WALLS", 9000, 0, 4000, 5000), 4);
  driver_.expect("drawingDialog", DialogDriver::clicking("next"));
  driver_.expect("reviewDialog", [](QDialog& dialog) {
    auto* rooms = dialog.findChild<QComboBox*>(QStringLiteral("room"));
    ASSERT_TRUE(rooms);
    EXPECT_EQ(rooms->count(), 2);
    rooms->setCurrentIndex(1);
    DialogDriver::click(dialog, "take");
  });
  ASSERT_TRUE(bring("house.dxf", two));
  EXPECT_NEAR(floorArea(job().room), 20, 1e-6);
}

TEST_F(RoomImport, TakesAScanAndKeepsItsFile) {
  driver_.expect("scanDialog", [](QDialog& dialog) {
    EXPECT_EQ(dialog.findChild<QComboBox*>(QStringLiteral("up"))->currentText(), QStringLiteral("z"));
    EXPECT_EQ(dialog.findChild<QComboBox*>(QStringLiteral("unit"))->currentText(), QStringLiteral("metres"));
    EXPECT_TRUE(dialog.findChild<QLabel*>(QStringLiteral("whyUnit"))->text().contains(QStringLiteral("2.5")));
    DialogDriver::click(dialog, "next");
  });
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  const std::string bytes = plyRoom();
  ASSERT_TRUE(bring("hall.ply", bytes));
  EXPECT_NEAR(floorArea(job().room), 24, 0.05);
  ASSERT_EQ(job().roomScans.size(), 1U);
  EXPECT_EQ(job().roomScans[0].file->fileName, "hall.ply");
  EXPECT_EQ(job().roomScans[0].file->bytes, bytes);
}

TEST_F(RoomImport, TakesTheRoomOfAScanWithoutTheScan) {
  driver_.expect("scanDialog", DialogDriver::clicking("next"));
  driver_.expect("reviewDialog", [](QDialog& dialog) {
    group(dialog, kScans).child(0)->setCheckState(0, Qt::Unchecked);
    DialogDriver::click(dialog, "take");
  });
  ASSERT_TRUE(bring("hall.ply", plyRoom()));
  EXPECT_TRUE(job().roomScans.empty());
  EXPECT_EQ(job().room.walls.size(), 4U);
}

TEST_F(RoomImport, UsesTheAxisThatWasChosenAndAsksAgain) {
  driver_.expect("scanDialog", [](QDialog& dialog) {
    auto* unit = dialog.findChild<QComboBox*>(QStringLiteral("unit"));
    unit->setCurrentIndex(unit->findData(static_cast<int>(DrawingUnit::Millimetres)));
    DialogDriver::click(dialog, "next");
  });
  driver_.expect("scanDialog", [](QDialog& dialog) {
    EXPECT_FALSE(dialog.findChild<QLabel*>(QStringLiteral("problem"))->text().isEmpty());
    DialogDriver::giveUp(dialog);
  });
  EXPECT_FALSE(bring("hall.ply", plyRoom()));
  expectNothingChanged();
}

TEST_F(RoomImport, SaysWhyADamagedFileIsRefused) {
  const std::string list = "kind,from,to,value\nwall,A,,six\n";
  const std::pair<const char*, std::string> damaged[] = {{"cut.ply", plyRoom().substr(0, 60)},
                                                         {"none.dxf", "nothing at all"},
                                                         {"bad.csv", list},
                                                         {"empty.xyz", ""},
                                                         {"text.txt", "hello\nthere\n"},
                                                         {"bad.glb", "glTF"}};
  for (const auto& [name, bytes] : damaged) {
    window_.messages().say({});
    EXPECT_FALSE(bring(name, bytes)) << name;
    EXPECT_TRUE(window_.messages().text().contains(QString::fromLatin1(name)))
        << name << ": " << window_.messages().text().toStdString();
    expectNothingChanged();
  }
}

TEST_F(RoomImport, SaysSoWhenTheFileIsGone) {
  EXPECT_FALSE(window_.files().openFile(folder_.filePath(QStringLiteral("gone.dxf"))));
  EXPECT_FALSE(window_.messages().text().isEmpty());
  expectNothingChanged();
}

/// Qt hands a drop on only where a drag went before.
struct DropWindow : MainWindow {
  using MainWindow::dropEvent;
  using MainWindow::MainWindow;
};

TEST_F(RoomImport, TakesAFileThatIsDropped) {
  DropWindow window{std::filesystem::path()};
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(file("list.csv", measuringList()))});
  QDropEvent drop(QPointF(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  window.dropEvent(&drop);
  QTest::qWait(50);
  EXPECT_EQ(window.document().job().room.walls.size(), 4U);
}

TEST(OpenFilter, OffersWhateverCanBeBroughtIn) {
  for (const std::string_view suffix : surveySuffixes()) {
    const QString pattern =
        QStringLiteral("*.") + QString::fromLatin1(suffix.data(), static_cast<qsizetype>(suffix.size()));
    EXPECT_TRUE(JobFiles::openFilter().contains(pattern)) << pattern.toStdString();
  }
}

}  // namespace
}  // namespace baywright
