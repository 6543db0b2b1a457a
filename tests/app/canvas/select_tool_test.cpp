// SPDX-License-Identifier: Apache-2.0
#include "canvas/select_tool.h"

#include <gtest/gtest.h>

#include "drawing/live_dimensions.h"
#include "drawing/turn.h"
#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

/// A frame of 3 m by 1.5 m with its screen's middle at (7, 4), looking along x.
Job hall() {
  return garage(10, 8)
      .withFrame(3, 2.5, 1.5)
      .bayAt(7, 4, 0)
      .withBox("Bench", {2, 6.5}, 1.2, 0.5, 0, 0.5)
      .job();
}
Vec2 bayOrigin(const Job& job) {
  return job.option().placement.bay.origin;
}
/// On the frame's side, away from mat and screen.
const Vec2 kOnFrame(6.2, 2.51);

TEST(SelectTool, DragsTheThingUnderThePointerInOneStep) {
  FakeToolHost host(hall());
  SelectTool tool;
  const Job before = host.job();
  host.drag(tool, kOnFrame, kOnFrame + Vec2(-0.53, 0.31), Qt::ControlModifier);
  EXPECT_TRUE(bayOrigin(host.job()).isApprox(bayOrigin(before) + Vec2(-0.53, 0.31), 1e-9));
  EXPECT_EQ(host.document().undoStack().count(), 1);
  host.document().undoStack().undo();
  EXPECT_EQ(host.job(), before);
}

TEST(SelectTool, RollsBackOnEscape) {
  FakeToolHost host(hall());
  SelectTool tool;
  const Job before = host.job();
  host.hold(tool, kOnFrame, kOnFrame + Vec2(-1, 0.5));
  EXPECT_TRUE(tool.isBusy());
  EXPECT_NE(host.job(), before);
  tool.cancel(host);
  EXPECT_FALSE(tool.isBusy());
  EXPECT_EQ(host.job(), before);
  EXPECT_EQ(host.document().undoStack().count(), 0);
}

TEST(SelectTool, SnapsUnlessControlIsHeld) {
  FakeToolHost host(hall());
  SelectTool tool;
  // The bay's middle line is on the room's at y = 4 already: move it off, then nearly back.
  host.drag(tool, kOnFrame, kOnFrame + Vec2(0, 0.6), Qt::ControlModifier);
  host.drag(tool, kOnFrame + Vec2(0, 0.6), kOnFrame + Vec2(0, 0.04));
  EXPECT_NEAR(bayOrigin(host.job()).y(), 4, 1e-12);
}

TEST(SelectTool, LandsATypedDimensionExactly) {
  FakeToolHost host(hall());
  SelectTool tool;
  host.hold(tool, kOnFrame, kOnFrame + Vec2(0.3, -0.4), Qt::ControlModifier);
  const auto fields = tool.fields(host);
  ASSERT_GE(fields.size(), 2u);
  std::size_t toA = 0;
  while (toA < fields.size() && fields[toA].what != QStringLiteral("to wall A")) ++toA;
  ASSERT_LT(toA, fields.size());
  EXPECT_FALSE(tool.take(host, toA, 1.234));
  // The hand may still shake: what was typed holds.
  host.move(tool, kOnFrame + Vec2(0.9, 0.9));
  tool.accept(host);
  EXPECT_NEAR(bayOrigin(host.job()).y() - 1.5, 1.234, 1e-12);
  EXPECT_NEAR(bayOrigin(host.job()).x(), 7.3, 1e-12);
  EXPECT_EQ(host.document().undoStack().count(), 1);
}

TEST(SelectTool, TypesADimensionOfWhatIsSelectedWithoutADrag) {
  FakeToolHost host(hall());
  SelectTool tool;
  host.document().selection().select(idNamed(host.job(), "Bench"));
  EXPECT_TRUE(host.key(tool, Qt::Key_Return));
  ASSERT_EQ(host.entries, std::vector<std::size_t>{0});
  const auto fields = tool.fields(host);
  ASSERT_FALSE(fields.empty());
  const QString what = fields[0].what;
  EXPECT_FALSE(tool.take(host, 0, 0.75));
  tool.accept(host);
  EXPECT_EQ(tool.fields(host)[0].what, what);
  EXPECT_NEAR(tool.fields(host)[0].value, 0.75, 1e-12);
  EXPECT_EQ(host.document().undoStack().count(), 1);
}

TEST(SelectTool, TypesADistanceAfterADoubleClick) {
  FakeToolHost host(hall());
  SelectTool tool;
  host.click(tool, {2, 6.5});
  tool.doubleClick(host, host.at({2, 6.5}, Qt::LeftButton));
  EXPECT_EQ(host.entries, std::vector<std::size_t>{0});
  EXPECT_EQ(host.document().selection().selected(), idNamed(host.job(), "Bench"));
}

TEST(SelectTool, GoesRoundWhatLiesAtOneSpot) {
  FakeToolHost host(hall());
  SelectTool tool;
  Selection& selection = host.document().selection();
  const Vec2 onMat = bayOrigin(host.job()) + Vec2(-3.5, 0.3);
  host.click(tool, onMat);
  const Id first = selection.selected();
  EXPECT_EQ(first, host.job().option().kit.mat.id);
  const auto hits = hitsAt(host.linework(), onMat, host.reach());
  for (std::size_t i = 1; i < hits.size(); ++i) {
    host.click(tool, onMat);
    EXPECT_EQ(selection.selected(), hits[i].id);
  }
  host.click(tool, onMat);
  EXPECT_EQ(selection.selected(), first);
  host.click(tool, {-3, -3});
  EXPECT_FALSE(selection.selected());
}

TEST(SelectTool, DragsWhatIsSelectedEvenBelowSomethingElse) {
  FakeToolHost host(
      garage(10, 8).withFrame(3, 2.5, 1.5).bayAt(7, 4, 0).withBox("Rug", {6.4, 4}, 0.6, 0.6, 0, 0.01).job());
  SelectTool tool;
  host.document().selection().select(host.job().option().kit.frame.id);
  host.drag(tool, {6.4, 4}, {5.9, 4.5}, Qt::ControlModifier);
  EXPECT_TRUE(bayOrigin(host.job()).isApprox(Vec2(6.5, 4.5), 1e-9));
}

TEST(SelectTool, PansWhereThereIsNothingToMove) {
  FakeToolHost host(hall());
  SelectTool tool;
  host.drag(tool, {-2, -2}, {-1, -2});
  EXPECT_NEAR(host.panned.x(), 100, 1e-9);
  EXPECT_EQ(host.document().undoStack().count(), 0);
  // A wall is not dragged by a slip of the hand.
  host.drag(tool, {5, -0.05}, {5, 0.5});
  EXPECT_EQ(host.document().undoStack().count(), 0);
}

TEST(SelectTool, MergesNudgesIntoOneStep) {
  FakeToolHost host(hall());
  SelectTool tool;
  const Job before = host.job();
  host.document().selection().select(host.job().option().kit.frame.id);
  EXPECT_TRUE(host.key(tool, Qt::Key_Left));
  EXPECT_TRUE(host.key(tool, Qt::Key_Left));
  EXPECT_TRUE(host.key(tool, Qt::Key_Up, Qt::ShiftModifier));
  EXPECT_TRUE(host.key(tool, Qt::Key_Right, Qt::AltModifier));
  EXPECT_TRUE(bayOrigin(host.job()).isApprox(Vec2(7 - 0.019, 4.1), 1e-9));
  EXPECT_EQ(host.document().undoStack().count(), 1);
  host.document().undoStack().undo();
  EXPECT_EQ(host.job(), before);
}

TEST(SelectTool, TurnsByItsHandleInSteps) {
  FakeToolHost host(hall());
  SelectTool tool;
  const Id frame = host.job().option().kit.frame.id;
  host.document().selection().select(frame);
  const Vec2 handle = pointAhead(*turnableOf(host.job(), frame), 14 * host.reach().unitsPerMm);
  // Up and to the left of the pivot, about 44 degrees.
  host.drag(tool, handle, bayOrigin(host.job()) + 2 * Vec2(std::cos(44_deg), std::sin(44_deg)));
  EXPECT_NEAR(host.job().option().placement.bay.heading, 45_deg, 1e-12);
  EXPECT_EQ(host.document().undoStack().count(), 1);
}

TEST(SelectTool, TurnsByATypedAngle) {
  FakeToolHost host(hall());
  SelectTool tool;
  host.document().selection().select(idNamed(host.job(), "Bench"));
  EXPECT_TRUE(host.key(tool, Qt::Key_R));
  ASSERT_EQ(tool.fields(host).size(), 1u);
  EXPECT_EQ(tool.fields(host)[0].kind, FieldKind::Angle);
  EXPECT_FALSE(tool.take(host, 0, 12.5_deg));
  tool.accept(host);
  EXPECT_NEAR(std::get<BoxShape>(host.job().room.fixtures[0].shape).heading, 12.5_deg, 1e-12);
}

TEST(SelectTool, RemovesAndSaysWhyNot) {
  FakeToolHost host(hall());
  SelectTool tool;
  host.document().selection().select(idNamed(host.job(), "Bench"));
  EXPECT_TRUE(host.key(tool, Qt::Key_Delete));
  EXPECT_TRUE(host.job().room.fixtures.empty());
  EXPECT_FALSE(host.document().selection().selected());
  QString problem;
  QObject::connect(&host.document(), &Document::problemRaised,
                   [&](const QString& sentence) { problem = sentence; });
  host.document().selection().select(host.job().option().kit.frame.id);
  EXPECT_TRUE(host.key(tool, Qt::Key_Delete));
  EXPECT_FALSE(problem.isEmpty());
}

TEST(SelectTool, HoversWhatAClickWouldSelect) {
  FakeToolHost host(hall());
  SelectTool tool;
  host.move(tool, {2, 6.5});
  EXPECT_EQ(host.document().selection().hovered(), idNamed(host.job(), "Bench"));
  host.move(tool, {-3, -3});
  EXPECT_FALSE(host.document().selection().hovered());
}

TEST(SelectTool, RaisesTheProjectorInAnElevation) {
  FakeToolHost host(garage(10, 8).withCeiling(4).bayAt(8, 4, 0).withProjector(1.0, {-3, 0, 2.2}).job(),
                    ViewKind::Side);
  SelectTool tool;
  const Id projector = host.job().option().kit.projector.id;
  host.document().selection().select(projector);
  const Vec2 lens(-3, 2.2);
  host.drag(tool, lens - Vec2(0.05, 0), lens + Vec2(0.15, 0.4), Qt::ControlModifier);
  EXPECT_TRUE(host.job().option().placement.projector.lens.isApprox(Vec3(-2.8, 0, 2.6), 1e-9));
}

TEST(SelectTool, MovesAPlanOnlyWhenItIsSelected) {
  Job job = hall();
  PlanScan scan;
  scan.id = job.takeId();
  scan.name = "Scan";
  scan.worldFromPixel << 0.01, 0, -1, 0, -0.01, 9, 0, 0, 1;
  job.planScans.push_back(scan);
  FakeToolHost host(job);
  host.scanPixels = Vec2(2000, 2000);
  SelectTool tool;
  host.drag(tool, {13, 5}, {14, 5}, Qt::ControlModifier);
  EXPECT_EQ(host.document().undoStack().count(), 0);
  host.click(tool, {13, 5});
  EXPECT_EQ(host.document().selection().selected(), scan.id);
  host.drag(tool, {13, 5}, {14, 5}, Qt::ControlModifier);
  EXPECT_NEAR(host.job().planScans[0].worldFromPixel(0, 2), 0, 1e-9);
}

}  // namespace
}  // namespace baywright
