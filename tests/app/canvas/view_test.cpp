// SPDX-License-Identifier: Apache-2.0
#include "canvas/view.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QLineEdit>
#include <QNativeGestureEvent>
#include <QPainter>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include "canvas/elevation_view.h"
#include "canvas/plan_view.h"
#include "canvas/screen_face_view.h"
#include "clearance/assess.h"
#include "drawing/view_move.h"
#include "geometry/homography.h"
#include "job/edit_placement.h"
#include "job/room_geometry.h"
#include "support/job_builder.h"
#include "survey/plan_scan_fit.h"

namespace baywright {
namespace {

using namespace testing;

Job hall() {
  return garage(10, 8).withFrame(3, 2.5, 1.5).bayAt(7, 4, 0).withGolfer(1.8).withClub().job();
}
/// On the frame's side, away from mat and screen.
const Vec2 kOnFrame(6.2, 2.51);

Vec2 bayOrigin(const Document& document) {
  return document.job().option().placement.bay.origin;
}

/// A view on the screen, with a hand.
template <class ViewType, class... More>
struct Bench {
  explicit Bench(Job job, More... more) {
    document.startWith(std::move(job));
    view = std::make_unique<ViewType>(document, toolBox, more...);
    view->resize(900, 700);
    view->show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(view.get()));
    view->setFocus();
  }

  QPoint pixel(const Vec2& at) const { return view->map().pixelFrom(at).toPoint(); }
  double metresPerPixel() const { return view->map().metresPerPixel(); }
  void hold(const Vec2& from, const Vec2& to, Qt::KeyboardModifiers modifiers = Qt::NoModifier,
            Qt::MouseButton button = Qt::LeftButton) {
    const QPoint a = pixel(from);
    const QPoint b = pixel(to);
    QTest::mouseMove(view.get(), a);
    QTest::mousePress(view.get(), button, modifiers, a);
    for (int step = 1; step <= 4; ++step) moveTo(a + (b - a) * step / 4, modifiers, button);
  }
  void drag(const Vec2& from, const Vec2& to, Qt::KeyboardModifiers modifiers = Qt::NoModifier,
            Qt::MouseButton button = Qt::LeftButton) {
    const QPoint b = pixel(to);
    hold(from, to, modifiers, button);
    QTest::mouseRelease(view.get(), button, modifiers, b);
  }
  void moveTo(QPoint at, Qt::KeyboardModifiers modifiers = Qt::NoModifier,
              Qt::MouseButtons buttons = Qt::LeftButton) {
    // QTest::mouseMove knows no modifiers.
    QMouseEvent move(QEvent::MouseMove, at, view->mapToGlobal(at), Qt::NoButton, buttons, modifiers);
    QApplication::sendEvent(view.get(), &move);
  }
  void click(const Vec2& at) {
    moveTo(pixel(at), Qt::NoModifier, Qt::NoButton);
    QTest::mouseClick(view.get(), Qt::LeftButton, Qt::NoModifier, pixel(at));
  }
  void wheel(QPoint at, int notches) {
    QWheelEvent event(at, view->mapToGlobal(at), {}, {0, 120 * notches}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(view.get(), &event);
  }
  QLineEdit* entry() const { return view->template findChild<QLineEdit*>(); }

  Document document;
  ToolBox toolBox;
  std::unique_ptr<ViewType> view;
};
using PlanBench = Bench<PlanView>;

TEST(View, DragsTheFrameHalfAMetreInOneStep) {
  PlanBench bench(hall());
  const Job before = bench.document.job();
  bench.drag(kOnFrame, kOnFrame + Vec2(-0.5, 0), Qt::ControlModifier);
  EXPECT_NEAR(bayOrigin(bench.document).x(), 6.5, 1.5 * bench.metresPerPixel());
  EXPECT_NEAR(bayOrigin(bench.document).y(), 4, 1.5 * bench.metresPerPixel());
  EXPECT_EQ(bench.document.undoStack().count(), 1);
  bench.document.undoStack().undo();
  EXPECT_EQ(bench.document.job(), before);
}

TEST(View, AssessesWhileItDrags) {
  PlanBench bench(hall());
  bench.hold(kOnFrame, kOnFrame + Vec2(2, 0), Qt::ControlModifier);
  bench.document.finishAssessment();
  const Assessment dragged = bench.document.assessment();
  const Assessment direct = assess(bench.document.job());
  ASSERT_EQ(dragged.findings.size(), direct.findings.size());
  for (std::size_t i = 0; i < direct.findings.size(); ++i)
    EXPECT_EQ(dragged.findings[i].sentence, direct.findings[i].sentence);
  QTest::mouseRelease(bench.view.get(), Qt::LeftButton, Qt::NoModifier, bench.pixel(kOnFrame));
}

TEST(View, LandsATypedDimensionExactly) {
  PlanBench bench(hall());
  bench.hold(kOnFrame, kOnFrame + Vec2(0.3, -0.6), Qt::ControlModifier);
  // The nearest wall comes first: A, below the frame.
  QTest::keyClicks(bench.view.get(), QStringLiteral("1"));
  ASSERT_TRUE(bench.entry()->isVisible());
  QTest::keyClicks(bench.entry(), QStringLiteral(".225"));
  QTest::keyClick(bench.entry(), Qt::Key_Return);
  EXPECT_FALSE(bench.entry()->isVisible());
  EXPECT_EQ(bench.document.undoStack().count(), 1);
  const double toB =
      10 - bayOrigin(bench.document).x() - bench.document.job().option().kit.frame.behindScreen;
  const double toA = bayOrigin(bench.document).y() - 1.5;
  EXPECT_NEAR(std::min(std::abs(toA - 1.225), std::abs(toB - 1.225)), 0, 1e-12);
  // Letting go afterwards changes nothing.
  const Job typed = bench.document.job();
  QTest::mouseRelease(bench.view.get(), Qt::LeftButton, Qt::NoModifier, bench.pixel(kOnFrame));
  EXPECT_EQ(bench.document.job(), typed);
}

TEST(View, GoesFromOneDimensionToTheNextByTab) {
  PlanBench bench(hall());
  bench.hold(kOnFrame, kOnFrame + Vec2(0.2, -0.2), Qt::ControlModifier);
  QTest::keyClick(bench.view.get(), Qt::Key_Tab);
  ASSERT_TRUE(bench.entry()->isVisible());
  const QString first = bench.entry()->accessibleName();
  bench.entry()->setText(QStringLiteral("1.5"));
  QTest::keyClick(bench.entry(), Qt::Key_Tab);
  EXPECT_TRUE(bench.entry()->isVisible());
  EXPECT_NE(bench.entry()->accessibleName(), first);
  QTest::keyClick(bench.entry(), Qt::Key_Escape);
  EXPECT_FALSE(bench.entry()->isVisible());
  EXPECT_EQ(bayOrigin(bench.document), Vec2(7, 4));
  EXPECT_EQ(bench.document.undoStack().count(), 0);
}

TEST(View, ShowsWhatIsWrongWithATypedText) {
  PlanBench bench(hall());
  bench.document.selection().select(bench.document.job().option().kit.frame.id);
  QTest::keyClick(bench.view.get(), Qt::Key_Return);
  ASSERT_TRUE(bench.entry()->isVisible());
  bench.entry()->setText(QStringLiteral("three"));
  QTest::keyClick(bench.entry(), Qt::Key_Return);
  EXPECT_TRUE(bench.entry()->isVisible());
  bool told = false;
  for (const QLabel* label : bench.view->findChildren<QLabel*>())
    told = told || label->text().contains(QStringLiteral("three"));
  EXPECT_TRUE(told);
  EXPECT_EQ(bench.document.undoStack().count(), 0);
}

TEST(View, GivesUpADragOnEscapeAndOnUndo) {
  for (const auto& [key, modifier] : {std::pair{Qt::Key_Escape, Qt::KeyboardModifiers()},
                                      std::pair{Qt::Key_Z, Qt::KeyboardModifiers(Qt::ControlModifier)}}) {
    PlanBench bench(hall());
    ASSERT_TRUE(bench.document.change(QStringLiteral("before"), moveBay(bench.document.job(), {-0.25, 0})));
    const Job before = bench.document.job();
    const Vec2 onFrame = kOnFrame - Vec2(0.25, 0);
    bench.hold(onFrame, onFrame + Vec2(-1, 0.5));
    EXPECT_NE(bench.document.job(), before);
    QTest::keyClick(bench.view.get(), key, modifier);
    EXPECT_EQ(bench.document.job(), before);
    EXPECT_EQ(bench.document.undoStack().count(), 1);
    QTest::mouseRelease(bench.view.get(), Qt::LeftButton, Qt::NoModifier, bench.pixel(onFrame));
    EXPECT_EQ(bench.document.job(), before);
  }
}

TEST(View, ZoomsAtThePointer) {
  PlanBench bench(hall());
  const QPoint pointer(200, 150);
  const Vec2 under = bench.view->map().drawingFrom(pointer);
  const double before = bench.metresPerPixel();
  QSignalSpy rescaled(bench.view.get(), &View::scaleChanged);
  bench.wheel(pointer, 3);
  EXPECT_LT(bench.metresPerPixel(), before);
  EXPECT_TRUE(bench.view->map().drawingFrom(pointer).isApprox(under, 1e-9));
  EXPECT_EQ(rescaled.count(), 1);
  QTest::keyClick(bench.view.get(), Qt::Key_0, Qt::ControlModifier);
  EXPECT_NEAR(bench.metresPerPixel(), before, 0.02 * before);
}

TEST(View, PansByTheMiddleButtonAndBySpace) {
  PlanBench bench(hall());
  const Job before = bench.document.job();
  const Vec2 grabbed = kOnFrame;
  const QPoint start = bench.pixel(grabbed);
  bench.drag(grabbed, grabbed + Vec2(1, 1), Qt::NoModifier, Qt::MiddleButton);
  EXPECT_GT((bench.pixel(grabbed) - start).manhattanLength(), 10);
  const QPoint second = bench.pixel(grabbed);
  QTest::keyPress(bench.view.get(), Qt::Key_Space);
  bench.drag(grabbed, grabbed + Vec2(1, 1));
  QTest::keyRelease(bench.view.get(), Qt::Key_Space);
  EXPECT_GT((bench.pixel(grabbed) - second).manhattanLength(), 10);
  EXPECT_EQ(bench.document.job(), before);
}

TEST(View, ZoomsByAPinchOnATouchpad) {
  PlanBench bench(hall());
  const double before = bench.metresPerPixel();
  const QPointF at(300, 300);
  QNativeGestureEvent pinch(Qt::ZoomNativeGesture, QPointingDevice::primaryPointingDevice(), 2, at, at,
                            bench.view->mapToGlobal(at), 0.5, {});
  QApplication::sendEvent(bench.view.get(), &pinch);
  EXPECT_NEAR(bench.metresPerPixel(), before / 1.5, 1e-12);
}

QPointingDevice* touchScreen() {
  static QPointingDevice* device = QTest::createTouchDevice();
  return device;
}

TEST(View, ZoomsAndPansByTwoFingersOnTheScreen) {
  Bench<PlanView> bench(hall());
  View& view = *bench.view;
  const double before = bench.metresPerPixel();
  const Vec2 middle = view.map().drawingFrom(QPointF(450, 350));
  QPoint left(400, 350);
  QPoint right(500, 350);
  QTest::touchEvent(&view, touchScreen()).press(0, left).press(1, right);
  for (int step = 0; step < 10; ++step) {
    left += QPoint(-10, 2);
    right += QPoint(10, 2);
    QTest::touchEvent(&view, touchScreen()).move(0, left).move(1, right);
    QTest::qWait(5);
  }
  QTest::touchEvent(&view, touchScreen()).release(0, left).release(1, right);
  // The fingers were 100 pixels apart and end 300 apart, 20 lower; the first steps tell that it is a pinch at
  // all.
  EXPECT_LT(bench.metresPerPixel(), 0.5 * before);
  EXPECT_GT(bench.metresPerPixel(), 0.3 * before);
  EXPECT_LT((view.map().pixelFrom(middle) - QPointF(450, 370)).manhattanLength(), 25);
  EXPECT_EQ(bench.document.job(), hall()) << "nothing was dragged";
}

TEST(View, DragsKitWithOneFinger) {
  Bench<PlanView> bench(hall());
  const Vec2 before = bayOrigin(bench.document);
  const QPoint from = bench.pixel(kOnFrame);
  const QPoint by(0, -60);
  QTest::touchEvent(bench.view.get(), touchScreen()).press(0, from);
  for (int step = 1; step <= 6; ++step) {
    QTest::touchEvent(bench.view.get(), touchScreen()).move(0, from + by * step / 6);
    QTest::qWait(5);
  }
  QTest::touchEvent(bench.view.get(), touchScreen()).release(0, from + by);
  QTest::qWait(5);
  EXPECT_GT(bayOrigin(bench.document).y(), before.y() + 30 * bench.metresPerPixel());
}

TEST(View, PansWithTwoFingersOnATouchpad) {
  PlanBench bench(hall());
  const QPoint before = bench.pixel({0, 0});
  const double scale = bench.metresPerPixel();
  QWheelEvent event(QPointF(300, 300), QPointF(300, 300), {12, -7}, {24, -14}, Qt::NoButton, Qt::NoModifier,
                    Qt::ScrollUpdate, false);
  QApplication::sendEvent(bench.view.get(), &event);
  EXPECT_EQ(bench.pixel({0, 0}) - before, QPoint(12, -7));
  EXPECT_EQ(bench.metresPerPixel(), scale);
}

TEST(View, KeepsTheRoomStillInAnElevationWhileTheBayMoves) {
  Bench<ElevationView, Elevation> bench(hall(), Elevation::DownRange);
  const Vec3 inTheRoom(1, 0, 1);
  const auto seen = [&] {
    return bench.view->map().pixelFrom(viewFromWorld(ViewKind::DownRange, bench.document.job(), inTheRoom));
  };
  const QPointF before = seen();
  ASSERT_TRUE(bench.document.change(QStringLiteral("move"), moveBay(bench.document.job(), {0.3, -0.8})));
  EXPECT_LT((seen() - before).manhattanLength(), 1e-6);
}

TEST(View, DragsTheBayInAnElevationUnderThePointer) {
  Bench<ElevationView, Elevation> bench(hall(), Elevation::DownRange);
  const Vec2 onFrame(-1.49, 1.2);
  const QPoint start = bench.pixel(onFrame);
  const QPoint end = start + QPoint(80, 0);
  bench.document.selection().select(bench.document.job().option().kit.frame.id);
  const double scale = bench.metresPerPixel();
  QTest::mousePress(bench.view.get(), Qt::LeftButton, Qt::ControlModifier, start);
  for (int step = 1; step <= 8; ++step) bench.moveTo(start + QPoint(10 * step, 0), Qt::ControlModifier);
  QTest::mouseRelease(bench.view.get(), Qt::LeftButton, Qt::ControlModifier, end);
  // Right of the golfer's view is down on this plan.
  EXPECT_NEAR(bayOrigin(bench.document).y(), 4 - 80 * scale, 1.5 * scale);
  EXPECT_NEAR(bench.view->map().pixelFrom(onFrame).x(), end.x(), 1.5);
}

TEST(View, TakesToolsByTheirKeysAndLeavesThemByEscape) {
  PlanBench bench(hall());
  QSignalSpy status(bench.view.get(), &View::statusChanged);
  QTest::keyClick(bench.view.get(), Qt::Key_D);
  EXPECT_EQ(bench.toolBox.current(), ToolKind::Outline);
  EXPECT_GE(status.count(), 1);
  QTest::keyClick(bench.view.get(), Qt::Key_Escape);
  EXPECT_EQ(bench.toolBox.current(), ToolKind::Select);
}

TEST(View, SelectsInsteadWhereAToolDoesNotWork) {
  Bench<ElevationView, Elevation> bench(hall(), Elevation::Side);
  bench.toolBox.choose(ToolKind::Outline);
  bench.click({-0.7, 1.0});
  EXPECT_TRUE(bench.document.selection().selected());
}

TEST(View, TracesARoomByClicks) {
  PlanBench bench(newJob());
  bench.view->zoomTo({Vec2(-1, -1), Vec2(8, 6)});
  bench.toolBox.choose(ToolKind::Outline);
  for (const Vec2& corner : {Vec2(0, 0), Vec2(6, 0.03), Vec2(6.02, 4), Vec2(0.03, 4.02), Vec2(0.01, 0.01)})
    bench.click(corner);
  const auto corners = outline(bench.document.job().room);
  ASSERT_EQ(corners.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) {
    const Vec2 a = corners[(i + 1) % 4] - corners[i];
    const Vec2 b = corners[(i + 2) % 4] - corners[(i + 1) % 4];
    EXPECT_NEAR(a.normalized().dot(b.normalized()), 0, 1e-12);
  }
  EXPECT_EQ(bench.toolBox.current(), ToolKind::Select);
}

TEST(View, TakesCeilingHeightsByClicksAndMovesThemByADrag) {
  PlanBench bench(garage(10, 8).job());
  ViewOptions options;
  options.corners = true;
  bench.view->setOptions(options);
  QTest::keyClick(bench.view.get(), Qt::Key_H);
  ASSERT_EQ(bench.toolBox.current(), ToolKind::Ceiling);
  for (const auto& [at, height] : {std::pair{Vec2(2, 6.3), "2.41"}, std::pair{Vec2(3.1, 1.7), "2.6"}}) {
    bench.click(at);
    ASSERT_TRUE(bench.entry()->isVisible());
    QTest::keyClicks(bench.entry(), QString::fromLatin1(height));
    QTest::keyClick(bench.entry(), Qt::Key_Return);
  }
  ASSERT_EQ(bench.document.job().measurements.size(), 2u);
  EXPECT_DOUBLE_EQ(bench.document.job().measurements[1].value, 2.6);
  EXPECT_NEAR((bench.document.job().measurements[1].position - Vec2(3.1, 1.7)).norm(), 0, 0.1);
  QTest::keyClick(bench.view.get(), Qt::Key_V);
  const Vec2 mark = bench.document.job().measurements[1].position;
  bench.drag(mark, mark + Vec2(0.5, 0.4), Qt::ControlModifier);
  const Vec2 moved = bench.document.job().measurements[1].position - mark;
  EXPECT_NEAR((moved - Vec2(0.5, 0.4)).norm(), 0, 3 * bench.metresPerPixel());
  EXPECT_EQ(bench.document.undoStack().count(), 3);
  QTest::keyClick(bench.view.get(), Qt::Key_Delete);
  EXPECT_EQ(bench.document.job().measurements.size(), 1u);
}

TEST(View, LeavesRoomForWhatIsWrittenAtCorners) {
  PlanBench bench(garage(14, 4).job());
  bench.view->fit();
  const double before = bench.view->scale();
  ViewOptions options = bench.view->options();
  options.corners = true;
  bench.view->setOptions(options);
  const double now = bench.view->scale();
  bench.view->fit();
  EXPECT_EQ(bench.view->scale(), now) << "it is fitted already";
  bench.wheel(bench.view->rect().center(), 2);
  const double zoomed = bench.view->scale();
  options.corners = false;
  bench.view->setOptions(options);
  EXPECT_EQ(bench.view->scale(), zoomed) << "what the person chose stays";
  EXPECT_NE(zoomed, before);
}

TEST(View, BringsAFindingsPointsIntoSight) {
  PlanBench bench(garage(7, 4.2).withCeiling(2.4).withGolfer(1.9).withClub().job());
  bench.document.finishAssessment();
  const Finding* finding = nullptr;
  for (const Finding& each : bench.document.assessment().findings)
    if (each.points) finding = finding ? finding : &each;
  ASSERT_NE(finding, nullptr);
  Q_EMIT bench.document.selection().zoomToFindingRequested(QString::fromStdString(finding->key));
  const auto shown = bench.view->map().shown();
  EXPECT_TRUE(shown.contains(flat(finding->points->first)));
  EXPECT_TRUE(shown.contains(flat(finding->points->second)));
  // Nearer than the whole room, with a little of it round the points.
  const Vec2 span = flat(finding->points->first - finding->points->second).cwiseAbs();
  EXPECT_LT(shown.sizes().minCoeff(), 1.3 * (span.maxCoeff() + 2));
}

TEST(View, ShowsAPlanUnderTheDrawingOnceItIsDecoded) {
  QImage picture(400, 300, QImage::Format_RGB32);
  picture.fill(QColor(200, 30, 30));
  QByteArray png;
  QBuffer buffer(&png);
  buffer.open(QIODevice::WriteOnly);
  ASSERT_TRUE(picture.save(&buffer, "PNG"));
  Job job = newJob();
  PlanScan scan;
  scan.id = job.takeId();
  scan.file = std::make_shared<const Blob>(Blob{"plan.png", png.toStdString()});
  scan.worldFromPixel = worldFromFreshPixels({400, 300}, {20, 20}, 8);
  scan.opacity = 1;
  job.planScans.push_back(scan);
  PlanBench bench(job);
  ASSERT_TRUE(QTest::qWaitFor(
      [&] { return bench.view->pixelsOf(bench.document.job().planScans[0]).has_value(); }, 5000));
  bench.view->zoomTo({Vec2(14, 15), Vec2(26, 25)});
  const QImage shown = bench.view->grab().toImage();
  EXPECT_EQ(shown.pixelColor(bench.pixel({20, 20})), QColor(200, 30, 30));
  EXPECT_NE(shown.pixelColor(bench.pixel({25.5, 20})), QColor(200, 30, 30));
}

/// White paper with a room's outline in strokes 5 pixels wide, its middle lines 100 to 700 and 80 to 520.
std::string drawnRoom() {
  QImage picture(800, 600, QImage::Format_RGB32);
  picture.fill(Qt::white);
  QPainter painter(&picture);
  painter.setPen(QPen(Qt::black, 5));
  painter.drawRect(QRectF(100, 80, 600, 440));
  painter.end();
  QByteArray png;
  QBuffer buffer(&png);
  buffer.open(QIODevice::WriteOnly);
  picture.save(&buffer, "PNG");
  return png.toStdString();
}

TEST(View, TracesTheLinesThatAPlansPictureShows) {
  Job job = newJob();
  PlanScan scan;
  scan.id = job.takeId();
  scan.file = std::make_shared<const Blob>(Blob{"plan.png", drawnRoom()});
  scan.worldFromPixel = worldFromFreshPixels({800, 600}, {4, 3}, 8);  // a pixel is a centimetre
  scan.scaled = true;
  job.planScans.push_back(scan);
  PlanBench bench(job);
  const auto plan = [&] { return bench.document.job().planScans[0]; };
  ASSERT_TRUE(QTest::qWaitFor([&] { return bench.view->tracesOf(plan()) != nullptr; }, 20000));
  EXPECT_EQ(bench.view->tracesOf(plan())->lines.size(), 4u);
  bench.view->zoomTo({Vec2(0, 0), Vec2(8, 6)});
  bench.toolBox.choose(ToolKind::Outline);
  const QImage before = bench.view->grab().toImage();
  bench.moveTo(bench.pixel({4, 3}), Qt::NoModifier, Qt::NoButton);
  EXPECT_NE(bench.view->grab().toImage(), before) << "the lines are shown while the outline is drawn";
  // Each click misses its corner by a few pixels.
  const std::array<Vec2, 4> corners{Vec2(1, 0.8), Vec2(7, 0.8), Vec2(7, 5.2), Vec2(1, 5.2)};
  for (const Vec2& corner : corners)
    bench.click(corner + Vec2(3 * bench.metresPerPixel(), -2 * bench.metresPerPixel()));
  QTest::keyClick(bench.view.get(), Qt::Key_Return);
  const Ring room = outline(bench.document.job().room);
  ASSERT_EQ(room.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) EXPECT_LT((room[i] - corners[i]).norm(), 0.012) << i;
}

TEST(View, ScalesAPlanAndLaysAnotherOnItByClicksThatSnap) {
  Job job = newJob();
  for (const double width : {8.0, 5.0}) {
    PlanScan scan;
    scan.id = job.takeId();
    scan.name = width > 6 ? "Floor" : "Ceiling";
    scan.file = std::make_shared<const Blob>(Blob{"plan.png", drawnRoom()});
    scan.worldFromPixel = worldFromFreshPixels({800, 600}, width > 6 ? Vec2(4, 3) : Vec2(12, 3), width);
    job.planScans.push_back(scan);
  }
  PlanBench bench(job);
  const auto plan = [&](std::size_t i) { return bench.document.job().planScans[i]; };
  const auto seen = [&](std::size_t i, double x, double y) {
    return *mapped(Homography{plan(i).worldFromPixel}, Vec2(x, y));
  };
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return bench.view->tracesOf(plan(0)) && bench.view->tracesOf(plan(1)); }, 20000));
  bench.view->zoomTo({Vec2(0, -1), Vec2(15, 7)});
  const Vec2 miss(3 * bench.metresPerPixel(), 2 * bench.metresPerPixel());

  bench.document.selection().select(plan(0).id);
  bench.toolBox.choose(ToolKind::ScanScale);
  bench.click(seen(0, 100, 520) + miss);
  bench.click(seen(0, 700, 520) - miss);
  QTest::keyClicks(bench.view->findChild<QLineEdit*>(), QStringLiteral("4.5"));
  QTest::keyClick(bench.view->findChild<QLineEdit*>(), Qt::Key_Return);
  EXPECT_TRUE(plan(0).scaled);
  EXPECT_NEAR((seen(0, 700, 520) - seen(0, 100, 520)).norm(), 4.5, 0.02);

  bench.document.selection().select(plan(1).id);
  bench.toolBox.choose(ToolKind::ScanAlign);
  for (const auto& [x, y] : {std::pair{100, 520}, std::pair{700, 80}}) {
    bench.click(seen(1, x, y) + miss);
    bench.click(seen(0, x, y) - miss);
  }
  EXPECT_TRUE(plan(1).scaled);
  EXPECT_LT((seen(1, 400, 300) - seen(0, 400, 300)).norm(), 0.015);
  EXPECT_EQ(bench.toolBox.current(), ToolKind::Select);
  bench.document.undoStack().undo();
  EXPECT_EQ(plan(1), job.planScans[1]);
}

TEST(View, HasANameForThoseWhoDoNotSeeIt) {
  Document document;
  ToolBox toolBox;
  QSet<QString> names;
  const PlanView plan(document, toolBox);
  const ElevationView front(document, toolBox, Elevation::DownRange);
  const ElevationView side(document, toolBox, Elevation::Side);
  const ScreenFaceView face(document, toolBox);
  for (const View* view : std::initializer_list<const View*>{&plan, &front, &side, &face}) {
    EXPECT_FALSE(view->accessibleName().isEmpty());
    EXPECT_EQ(view->focusPolicy(), Qt::StrongFocus);
    names.insert(view->accessibleName());
  }
  EXPECT_EQ(names.size(), 4);
}

TEST(View, RollsBackWhenItIsDestroyedInTheMiddleOfADrag) {
  PlanBench bench(hall());
  const Job before = bench.document.job();
  bench.hold(kOnFrame, kOnFrame + Vec2(-1, 0.5));
  EXPECT_NE(bench.document.job(), before);
  bench.view.reset();
  EXPECT_EQ(bench.document.job(), before);
}

TEST(View, DrawsInTheColoursOfTheDesktop) {
  PlanBench bench(hall());
  const auto lightness = [&] { return bench.view->grab().toImage().pixelColor(5, 5).lightness(); };
  EXPECT_GT(lightness(), 128);
  QPalette dark = bench.view->palette();
  dark.setColor(QPalette::Window, QColor(40, 40, 40));
  bench.view->setPalette(dark);
  EXPECT_LT(lightness(), 128);
}

}  // namespace
}  // namespace baywright
