// SPDX-License-Identifier: Apache-2.0
// Each way to a room as a person goes it: a button of the start page or a row of the menu, the file dialog,
// and what is asked then.
#include <gtest/gtest.h>

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPainter>
#include <QPdfWriter>
#include <QPushButton>
#include <QSpinBox>
#include <QTemporaryDir>

#include "dialog_driver.h"
#include "job/room_geometry.h"
#include "jobfile/job_archive.h"
#include "panels/start_page.h"
#include "survey_files.h"
#include "window/main_window.h"

namespace baywright {
namespace {

using namespace testing;

class WaysIn : public ::testing::Test {
 protected:
  WaysIn() {
    window_.resize(1400, 900);
    window_.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&window_));
  }

  QString file(const char* name, const std::string& bytes) {
    QFile made(folder_.filePath(QString::fromLatin1(name)));
    EXPECT_TRUE(made.open(QIODevice::WriteOnly));
    made.write(QByteArray::fromStdString(bytes));
    return made.fileName();
  }
  /// The file dialog comes next, and this name is typed into it.
  void expectFile(const QString& path) {
    driver_.expect("QFileDialog", [path](QDialog& dialog) {
      auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
      ASSERT_TRUE(name);
      name->setText(path);
      QTest::keyClick(name, Qt::Key_Return);
    });
  }
  void pressOnStartPage(const char* button) {
    auto* page = window_.findChild<StartPage*>();
    ASSERT_TRUE(page && page->isVisible());
    QTest::mouseClick(page->findChild<QPushButton*>(QString::fromLatin1(button)), Qt::LeftButton);
  }
  void choose(const char* action) { window_.findChild<QAction*>(QString::fromLatin1(action))->trigger(); }
  const Job& job() { return window_.document().job(); }
  Job saved() {
    const std::filesystem::path path = folder_.filePath(QStringLiteral("saved.bayjob")).toStdString();
    EXPECT_FALSE(window_.document().save(QString::fromStdString(path.string())));
    return loadJob(path).value_or(Job{});
  }

  QTemporaryDir folder_;
  MainWindow window_{std::filesystem::path()};
  DialogDriver driver_;
};

TEST_F(WaysIn, LeadsFromTheStartPageToAMeasuredRoomThatKeepsItsList) {
  expectFile(file("garage list.csv", measuringList()));
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  pressOnStartPage("openSurvey");
  EXPECT_NEAR(floorArea(job().room), 30, 0.02);
  ASSERT_EQ(job().originals.size(), 1U);
  EXPECT_EQ(job().originals[0].name, "garage list.csv");
  const Job again = saved();
  ASSERT_EQ(again.originals.size(), 1U);
  EXPECT_EQ(again.originals[0].file->bytes, measuringList());
  window_.document().undoStack().undo();
  EXPECT_TRUE(job().originals.empty());
  window_.document().undoStack().redo();
  EXPECT_EQ(job().originals.size(), 1U);
}

TEST_F(WaysIn, LeadsFromTheMenuToARoomOfADrawingThatIsKept) {
  expectFile(file("house.dxf", dxfRoom(4)));
  driver_.expect("drawingDialog", DialogDriver::clicking("next"));
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  choose("importSurvey");
  EXPECT_NEAR(floorArea(job().room), 32, 1e-6);
  const Job again = saved();
  ASSERT_EQ(again.originals.size(), 1U);
  EXPECT_EQ(again.originals[0].file->fileName, "house.dxf");
  EXPECT_EQ(again.originals[0].file->bytes, dxfRoom(4));
}

TEST_F(WaysIn, LeadsFromTheStartPageToAScan) {
  expectFile(file("hall.ply", plyRoom()));
  driver_.expect("scanDialog", DialogDriver::clicking("next"));
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  pressOnStartPage("openSurvey");
  EXPECT_NEAR(floorArea(job().room), 24, 0.05);
  EXPECT_EQ(job().roomScans.size(), 1U);
  EXPECT_TRUE(job().originals.empty());  // the scan keeps its file itself
}

TEST_F(WaysIn, LeadsFromTheMenuToThePageOfAPdfThatIsLookedAt) {
  const QString path = folder_.filePath(QStringLiteral("house.pdf"));
  {
    QPdfWriter writer(path);
    writer.setPageSize(QPageSize(QPageSize::A4));
    QPainter painter(&writer);
    painter.drawText(1000, 1000, QStringLiteral("Cover"));
    writer.newPage();
    painter.fillRect(500, 500, 6000, 9000, Qt::black);
  }
  expectFile(path);
  driver_.expect("pageDialog", [](QDialog& dialog) {
    const auto lightness = [&] {
      return dialog.findChild<QLabel*>(QStringLiteral("page"))
          ->pixmap()
          .toImage()
          .pixelColor(100, 200)
          .lightness();
    };
    EXPECT_GT(lightness(), 200);
    dialog.findChild<QSpinBox*>()->setValue(2);
    EXPECT_LT(lightness(), 50);
    DialogDriver::click(dialog, "use");
  });
  choose("importPlan");
  ASSERT_EQ(job().planScans.size(), 1U);
  EXPECT_EQ(job().planScans[0].page, 1);
}

TEST_F(WaysIn, LeadsFromTheStartPageToAPlanThatIsTraced) {
  QImage picture(800, 600, QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter(&picture).drawRect(100, 80, 600, 440);
  const QString path = folder_.filePath(QStringLiteral("plan.png"));
  ASSERT_TRUE(picture.save(path));
  expectFile(path);
  pressOnStartPage("openPlan");
  ASSERT_EQ(job().planScans.size(), 1U);
  EXPECT_EQ(job().planScans[0].name, "plan");
}

TEST_F(WaysIn, LeadsFromTheStartPageToTheOutlineToolAndTheExample) {
  pressOnStartPage("drawFloor");
  EXPECT_EQ(window_.toolBox().current(), ToolKind::Outline);
  MainWindow other{std::filesystem::path()};
  other.show();
  QTest::mouseClick(other.findChild<QPushButton*>(QStringLiteral("openExample")), Qt::LeftButton);
  EXPECT_EQ(other.document().job().golfers.size(), 2U);
}

TEST_F(WaysIn, LeadsTheFilesOutAgain) {
  choose("saveOriginals");  // nothing is kept yet: a sentence and no dialog
  expectFile(file("list.csv", measuringList()));
  driver_.expect("reviewDialog", DialogDriver::clicking("take"));
  choose("importSurvey");
  ASSERT_TRUE(QDir(folder_.path()).mkdir(QStringLiteral("out")));
  expectFile(folder_.filePath(QStringLiteral("out")));
  driver_.expect("savedOriginals", [](QDialog& dialog) { dialog.accept(); });
  choose("saveOriginals");
  QFile written(folder_.filePath(QStringLiteral("out/list.csv")));
  ASSERT_TRUE(written.open(QIODevice::ReadOnly));
  EXPECT_EQ(written.readAll().toStdString(), measuringList());
}

}  // namespace
}  // namespace baywright
