// SPDX-License-Identifier: Apache-2.0
// From a scanned plan to a signed-off sheet, by mouse and keyboard in a real window.
#include <gtest/gtest.h>

#include <QApplication>
#include <QFileInfo>
#include <QLineEdit>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>

#include "canvas/plan_view.h"
#include "clearance/assess.h"
#include "geometry/homography.h"
#include "job/edit.h"
#include "job/room_geometry.h"
#include "jobfile/job_archive.h"
#include "jobfile/job_json.h"
#include "panels/message_strip.h"
#include "window/main_window.h"
#include "window/sign_off_view.h"
#include "window/workspace.h"

namespace baywright {
namespace {

// The scanned plan: walls drawn at 100 pixels to the metre, 8.00 x 7.00 m.
constexpr int kPixelsPerMetre = 100;
const std::array<Vec2, 4> kCornerPixels = {Vec2(150, 850), Vec2(950, 850), Vec2(950, 150), Vec2(150, 150)};

QString drawPlan(const QTemporaryDir& folder) {
  QImage sheet(1100, 1000, QImage::Format_RGB32);
  sheet.fill(QColor(250, 249, 240));
  QPainter painter(&sheet);
  painter.setPen(QPen(Qt::black, 6));
  painter.drawRect(QRectF(150, 150, 800, 700));
  painter.end();
  const QString path = folder.filePath(QStringLiteral("the plan.png"));
  sheet.save(path);
  return path;
}

class FittersDay : public ::testing::Test {
 protected:
  void SetUp() override {
    if (QGuiApplication::platformName() == QLatin1String("offscreen")) GTEST_SKIP() << "needs a display";
    window.resize(1500, 950);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
  }

  Document& document() { return window.document(); }
  const Job& job() { return window.document().job(); }
  PlanView& plan() { return window.workspace().plan(); }
  QPoint pixel(const Vec2& world) { return plan().map().pixelFrom(world).toPoint(); }
  Vec2 onPlan(const Vec2& scanPixel) {
    return *mapped(Homography{job().planScans.front().worldFromPixel}, scanPixel);
  }

  void moveTo(QPoint at, Qt::MouseButtons held = Qt::NoButton) {
    QMouseEvent move(QEvent::MouseMove, at, plan().mapToGlobal(at), Qt::NoButton, held, Qt::NoModifier);
    QApplication::sendEvent(&plan(), &move);
  }
  void click(const Vec2& world) {
    moveTo(pixel(world));
    QTest::mouseClick(&plan(), Qt::LeftButton, Qt::NoModifier, pixel(world));
  }
  void drag(const Vec2& fromWorld, const Vec2& toWorld) {
    constexpr int kSteps = 12;
    const QPoint from = pixel(fromWorld);
    const QPoint way = pixel(toWorld) - from;
    moveTo(from);
    QTest::mousePress(&plan(), Qt::LeftButton, Qt::NoModifier, from);
    for (int step = 1; step <= kSteps; ++step) moveTo(from + way * step / kSteps, Qt::LeftButton);
    QTest::mouseRelease(&plan(), Qt::LeftButton, Qt::NoModifier, from + way);
    document().finishAssessment();
  }
  /// A point of the frame's side with nothing in front of it.
  Vec2 onFrame() {
    const Frame& frame = job().option().kit.frame;
    const BayPose& bay = job().option().placement.bay;
    return bay.origin + 0.5 * (frame.behindScreen - frame.depth) * bay.down() +
           0.5 * frame.width * bay.right();
  }
  void choose(ToolKind tool) { window.toolBox().choose(tool); }
  void type(const QString& text) {
    QLineEdit* entry = plan().findChild<QLineEdit*>();
    ASSERT_TRUE(entry && entry->isVisible());
    entry->setText(text);
    QTest::keyClick(entry, Qt::Key_Return);
  }

  QTemporaryDir folder;
  MainWindow window{std::filesystem::path()};
};

TEST_F(FittersDay, GoesFromAScannedPlanToASheet) {
  // Open the plan; it asks for its scale at once.
  ASSERT_TRUE(window.files().openFile(drawPlan(folder)));
  ASSERT_EQ(job().planScans.size(), 1U);
  ASSERT_TRUE(QTest::qWaitFor([&] { return plan().pixelsOf(job().planScans.front()).has_value(); }, 5000));
  plan().fit();
  EXPECT_EQ(window.toolBox().current(), ToolKind::ScanScale);

  // Two clicks and the true length.
  click(onPlan(kCornerPixels[0]));
  click(onPlan(kCornerPixels[1]));
  type(QStringLiteral("8 m"));
  ASSERT_TRUE(job().planScans.front().scaled);
  const double drawn = (onPlan(kCornerPixels[2]) - onPlan(kCornerPixels[1])).norm();
  EXPECT_NEAR(drawn, 7.0, 0.05);
  plan().fit();

  // Trace the walls.
  choose(ToolKind::Outline);
  for (const Vec2& corner : kCornerPixels) click(onPlan(corner));
  click(onPlan(kCornerPixels[0]));
  ASSERT_EQ(job().room.walls.size(), 4U);
  EXPECT_NEAR(floorArea(job().room), 8.0 * 7.0, 1.0);
  window.showStage(Stage::Place);
  plan().fit();

  // The ceiling is asked for until it is measured.
  document().finishAssessment();
  EXPECT_GT(document().assessment().count(Verdict::Unknown), 0);
  CeilingPart ceiling = job().room.ceiling.front();
  ceiling.height = taped(2.9);
  ASSERT_TRUE(document().change("Measure the ceiling", setCeilingPart(job(), ceiling)));

  // Somebody swings.
  Golfer golfer;
  golfer.name = "Robin";
  golfer.stature = taped(1.80);
  golfer.clubs.push_back({{}, "Driver", 1.15, 1.01});
  ASSERT_TRUE(document().change("Add a golfer", addGolfer(job(), golfer)));
  document().finishAssessment();

  // Drag the frame into a wall: something more is blocked; drag it back: it is not.
  const auto bay = [&] { return job().option().placement.bay.origin; };
  const Vec2 home = bay();
  const int blocked = document().assessment().count(Verdict::Blocked);
  const Vec2 toWall = 2.6 * job().option().placement.bay.right();
  drag(onFrame(), onFrame() + toWall);
  EXPECT_NEAR((bay() - home - toWall).norm(), 0, 0.3) << "dragged, and snapped at most a little";
  EXPECT_EQ(document().selection().selected(), job().option().kit.frame.id);
  EXPECT_GT(document().assessment().count(Verdict::Blocked), blocked);
  EXPECT_EQ(document().assessment().findings.size(), assess(job()).findings.size());
  drag(onFrame(), onFrame() + home - bay());

  // The last of the way by the arrow keys, a centimetre a step.
  plan().setFocus();
  const Vec2 left = home - bay();
  const auto push = [&](Qt::Key key, double metres) {
    for (int step = 0; step < std::lround(metres * 100); ++step) QTest::keyClick(&plan(), key);
  };
  push(left.x() > 0 ? Qt::Key_Right : Qt::Key_Left, std::abs(left.x()));
  push(left.y() > 0 ? Qt::Key_Up : Qt::Key_Down, std::abs(left.y()));
  document().finishAssessment();
  EXPECT_NEAR((bay() - home).norm(), 0, 0.01);
  EXPECT_EQ(document().assessment().count(Verdict::Blocked), blocked);
  EXPECT_EQ(document().assessment().findings.size(), assess(job()).findings.size());

  // Print, save, open again, compare.
  window.showStage(Stage::SignOff);
  QTest::qWait(50);
  const QString pdf = folder.filePath(QStringLiteral("plan.pdf"));
  const Result<void> written = window.signOff().writePdfTo(pdf);
  ASSERT_TRUE(written.has_value()) << written.error().sentence();
  EXPECT_GT(QFileInfo(pdf).size(), 10000);
  const QString file = folder.filePath(QStringLiteral("the job.bayjob"));
  ASSERT_FALSE(document().save(file).has_value());
  EXPECT_FALSE(window.isWindowModified());
  const Result<Job> again = loadJob(file.toStdString());
  ASSERT_TRUE(again.has_value()) << again.error().sentence();
  EXPECT_EQ(jobToJson(*again), jobToJson(job()));

  // Everything can be undone, to the job before the plan was opened.
  while (document().undoStack().canUndo()) document().undoStack().undo();
  EXPECT_TRUE(job().room.walls.empty());
  EXPECT_TRUE(job().planScans.empty());
  while (document().undoStack().canRedo()) document().undoStack().redo();
  EXPECT_EQ(jobToJson(*again), jobToJson(job()));
  EXPECT_FALSE(window.isWindowModified());
}

TEST_F(FittersDay, KeepsTheJobWhenAFileCannotBeRead) {
  ASSERT_TRUE(window.files().openFile(QStringLiteral(BAYWRIGHT_RESOURCES "/examples/orchard-garage.bayjob")));
  const Job before = job();
  QFile broken(folder.filePath(QStringLiteral("broken.png")));
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("not a picture");
  broken.close();
  EXPECT_FALSE(window.files().openFile(broken.fileName()));
  EXPECT_EQ(job(), before);
  EXPECT_FALSE(window.messages().text().isEmpty());
}

TEST_F(FittersDay, MakesARoomByKeyboardAlone) {
  QWidget* button = window.findChild<QWidget*>(QStringLiteral("makeRoom"));
  ASSERT_TRUE(button && button->isVisible());
  window.activateWindow();
  QLineEdit* length = qobject_cast<QLineEdit*>(button->parentWidget()->focusProxy());
  ASSERT_TRUE(length);
  length->setFocus();
  length->selectAll();
  QTest::keyClicks(length, QStringLiteral("7.25"));
  QTest::keyClick(length, Qt::Key_Return);
  ASSERT_EQ(job().room.walls.size(), 4U);
  EXPECT_NEAR(planBox(job().room)->size().x(), 7.25, 1e-9);
  EXPECT_TRUE(plan().isVisible());
}

TEST_F(FittersDay, SeesTheWholeRoomIn3DFromTheStart) {
  SceneView& scene = window.workspace().scene();
  if (!scene.isWorking()) GTEST_SKIP() << "needs OpenGL";
  ASSERT_TRUE(window.files().openFile(QStringLiteral(BAYWRIGHT_RESOURCES "/examples/orchard-garage.bayjob")));
  QTest::qWait(50);  // the view gets its size beside the plan
  const OrbitCamera camera = scene.camera();
  scene.fitToRoom();
  EXPECT_NEAR(camera.distance, scene.camera().distance, 0.01);

  // A camera that somebody moved stays where it is.
  OrbitCamera moved = scene.camera();
  moved.distance += 3;
  scene.setCamera(moved);
  window.resize(1300, 800);
  QTest::qWait(50);
  EXPECT_EQ(scene.camera(), moved);
}

}  // namespace
}  // namespace baywright
