// SPDX-License-Identifier: Apache-2.0
#include "window/main_window.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAction>
#include <QComboBox>
#include <QContextMenuEvent>
#include <QDropEvent>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <QUrl>
#include <algorithm>

#include "canvas/plan_view.h"
#include "job/edit.h"
#include "job/thing_lookup.h"
#include "jobfile/autosave.h"
#include "panels/message_strip.h"
#include "support/job_builder.h"
#include "window/actions.h"
#include "window/sign_off_view.h"
#include "window/wall_box.h"
#include "window/workspace.h"

namespace baywright {
namespace {

Job smallJob() {
  return testing::garage(7.0, 6.0).withGolfer(1.8, Hand::Right).withClub().job();
}

/// Answers the next message box by the button with this role's text.
void answerNextBox(QMessageBox::StandardButton button) {
  QTimer::singleShot(0, [button] {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    ASSERT_TRUE(box);
    box->button(button)->click();
  });
}

TEST(MainWindow, HasAnActionForEveryRow) {
  MainWindow window({});
  for (const ActionRow& row : actionRows())
    EXPECT_TRUE(window.findChild<QAction*>(QString::fromLatin1(row.name))) << row.name;
}

TEST(MainWindow, ShowsTheStageThatIsChosen) {
  MainWindow window({});
  for (const StageRow& row : stages()) {
    window.showStage(row.stage);
    EXPECT_EQ(window.stage(), row.stage);
    EXPECT_TRUE(
        window.findChild<QAction*>(QStringLiteral("stage") + QString::fromLatin1(row.name))->isChecked());
  }
}

TEST(MainWindow, ShowsTheMeasuringListFromTheSurvey) {
  MainWindow window({});
  window.document().startWith(smallJob());
  window.resize(1400, 900);
  window.show();
  window.showStage(Stage::Survey);
  auto* button = window.findChild<QPushButton*>(QStringLiteral("measuringList"));
  ASSERT_TRUE(button);
  EXPECT_TRUE(button->isVisible());
  button->click();
  EXPECT_EQ(window.stage(), Stage::SignOff);
  const auto boxes = window.signOff().findChildren<QComboBox*>();
  EXPECT_TRUE(std::any_of(boxes.begin(), boxes.end(), [](const QComboBox* box) {
    return box->currentData() == QVariant(QStringLiteral("measuring"));
  }));
}

TEST(MainWindow, ShowsAWallBesideThePlanOrInItsPlaceWhileTheRoomIsSurveyed) {
  MainWindow window({});
  window.document().startWith(testing::garage(7, 6).withWindow("C", 2, 1, 0.9, 1.2).job());
  window.resize(1400, 900);
  window.show();
  auto* wall = window.findChild<WallBox*>();
  ASSERT_TRUE(wall);
  auto& plan = window.findChild<Workspace*>()->plan();
  EXPECT_TRUE(wall->isVisible());
  const QSize small = wall->view().size();
  auto* choice = wall->findChild<QComboBox*>(QStringLiteral("wallChoice"));
  EXPECT_EQ(choice->count(), 4);
  window.document().selection().select(testing::idNamed(window.document().job(), "Window"));
  EXPECT_EQ(choice->currentIndex(), 2);

  wall->findChild<QToolButton*>(QStringLiteral("wallLarge"))->click();
  QTest::qWait(1);
  EXPECT_GT(wall->view().width(), small.width());
  EXPECT_TRUE(plan.isVisible());
  window.showStage(Stage::Place);
  EXPECT_FALSE(wall->isVisible());
  EXPECT_TRUE(plan.isVisible());
  window.showStage(Stage::Survey);
  QTest::qWait(1);
  EXPECT_TRUE(wall->isVisible());
  EXPECT_GT(plan.width(), wall->view().width());

  wall->setLarge(true);
  window.document().startWith(newJob());
  EXPECT_FALSE(wall->isLarge());  // there is no wall in an empty job
}

TEST(MainWindow, OffersUsualSizesOnTheToolsThatPlace) {
  MainWindow window({});
  window.document().startWith(smallJob());
  for (const ToolKind kind : {ToolKind::Opening, ToolKind::FixtureBox, ToolKind::FixtureCylinder}) {
    auto* menu = window.findChild<QMenu*>(QStringLiteral("usual%1").arg(static_cast<int>(kind)));
    ASSERT_TRUE(menu);
    QAction* last = menu->actions().last();
    while (last->menu()) last = last->menu()->actions().last();
    last->trigger();
    EXPECT_EQ(window.toolBox().current(), kind);
    const ToolSettings& settings = window.toolBox().settings();
    EXPECT_EQ(last->text().toStdString(),
              kind == ToolKind::Opening ? settings.opening.name : settings.fixture.name);
  }
}

TEST(MainWindow, MarksUnsavedWorkInItsTitle) {
  MainWindow window({});
  window.document().startWith(smallJob());
  EXPECT_FALSE(window.isWindowModified());
  window.document().change("Move", moveBay(window.document().job(), Vec2(-0.1, 0)));
  EXPECT_TRUE(window.isWindowModified());
  window.findChild<QAction*>(QStringLiteral("undo"))->trigger();
  EXPECT_FALSE(window.isWindowModified());
}

TEST(MainWindow, AsksBeforeUnsavedWorkIsLost) {
  MainWindow window({});
  window.document().startWith(smallJob());
  window.document().change("Move", moveBay(window.document().job(), Vec2(-0.1, 0)));
  window.show();
  answerNextBox(QMessageBox::Cancel);
  EXPECT_FALSE(window.close());
  EXPECT_TRUE(window.isVisible());
  answerNextBox(QMessageBox::Discard);
  EXPECT_TRUE(window.close());
}

/// Qt hands a drop on only where a drag went before.
struct DropWindow : MainWindow {
  using MainWindow::dropEvent;
  using MainWindow::MainWindow;
};

TEST(MainWindow, TakesADroppedFileOrSaysWhyNot) {
  QTemporaryDir folder;
  QFile broken(folder.filePath(QStringLiteral("broken.bayjob")));
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("nothing");
  broken.close();
  DropWindow window{std::filesystem::path()};
  window.document().startWith(smallJob());
  const Job before = window.document().job();
  QMimeData data;
  data.setUrls({QUrl::fromLocalFile(broken.fileName())});
  QDropEvent drop(QPointF(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  window.dropEvent(&drop);
  EXPECT_EQ(window.document().job(), before);
  EXPECT_FALSE(window.messages().text().isEmpty());

  data.setUrls({QUrl::fromLocalFile(QStringLiteral(BAYWRIGHT_RESOURCES "/examples/orchard-garage.bayjob"))});
  QDropEvent good(QPointF(10, 10), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
  window.dropEvent(&good);
  EXPECT_EQ(window.document().job().golfers.size(), 2U);
}

TEST(MainWindow, OpensAJobByWhatIsInItWhateverItsName) {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("garage (1).zip"));
  ASSERT_TRUE(QFile::copy(QStringLiteral(BAYWRIGHT_RESOURCES "/examples/orchard-garage.bayjob"), path));
  MainWindow window({});
  EXPECT_TRUE(window.files().openFile(path));
  EXPECT_EQ(window.document().job().golfers.size(), 2U);
}

TEST(MainWindow, OpensTheMenuOfWhatIsUnderThePointer) {
  MainWindow window({});
  window.resize(1400, 900);
  window.document().startWith(testing::garage(7.0, 6.0).withShelf("D", 2, 1, 0.4, 1.8).job());
  window.showStage(Stage::Place);
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
  PlanView& plan = window.workspace().plan();
  const Id shelf = window.document().job().room.fixtures.front().id;
  const Vec2 middle = *findThing(window.document().job(), shelf)->position;
  const QPoint at = plan.map().pixelFrom(middle).toPoint();
  bool removed = false;
  QTimer::singleShot(0, [&] {
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_TRUE(menu);
    for (QAction* action : menu->actions()) {
      if (action->objectName() != QLatin1String("remove")) continue;
      action->trigger();
      removed = true;
    }
    menu->close();
  });
  QContextMenuEvent event(QContextMenuEvent::Mouse, at, plan.mapToGlobal(at));
  QApplication::sendEvent(&plan, &event);
  EXPECT_TRUE(removed);
  EXPECT_TRUE(window.document().job().room.fixtures.empty());
}

TEST(MainWindow, OpensTheExampleThatIsBuiltIn) {
  MainWindow window({});
  window.files().openExample();
  EXPECT_EQ(window.document().job().room.walls.size(), 6U);
  EXPECT_TRUE(window.document().path().isEmpty());
}

TEST(MainWindow, KeepsUnsavedWorkForTheNextStart) {
  QTemporaryDir folder;
  const std::filesystem::path kept = folder.path().toStdString();
  Document document;
  RecoveryKeeper keeper(document, kept);
  document.startWith(smallJob());
  document.change("Move", moveBay(document.job(), Vec2(-0.1, 0)));
  keeper.keepNow();
  int files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(kept)) files += entry.is_regular_file();
  EXPECT_GE(files, 1);
  keeper.forget();
  files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(kept)) files += entry.is_regular_file();
  EXPECT_EQ(files, 0);
}

TEST(MainWindow, DraggingTheFrameChangesTheCounts) {
  MainWindow window({});
  window.resize(1400, 900);
  window.document().startWith(smallJob());
  window.showStage(Stage::Place);
  window.show();
  const int blocked = window.document().assessment().count(Verdict::Blocked);
  window.document().change("Move", moveBay(window.document().job(), Vec2(0, 2.4)));
  window.document().finishAssessment();
  EXPECT_GT(window.document().assessment().count(Verdict::Blocked), blocked);
}

}  // namespace
}  // namespace baywright
