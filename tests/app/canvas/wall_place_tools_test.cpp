// SPDX-License-Identifier: Apache-2.0
#include "canvas/wall_place_tools.h"

#include <gtest/gtest.h>

#include "canvas/select_tool.h"
#include "canvas/tool_box.h"
#include "canvas/wall_view.h"
#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

/// Looks at wall A of a room of 8 by 6 by 2.5 m: x of the view is 8 minus x of the world.
struct AtWallA : FakeToolHost {
  AtWallA() : AtWallA(garage(8, 6).withCeiling(2.5).job()) {}
  explicit AtWallA(const Job& job) : FakeToolHost(job, {ViewKind::Wall, idNamed(job, "Wall A")}) {
    toolSettings.opening.kind = OpeningKind::Window;
    toolSettings.opening.name = "Window";
    toolSettings.opening.width = guessed(1.2);
    toolSettings.opening.sill = guessed(0.9);
    toolSettings.opening.height = guessed(1.2);
    toolSettings.fixture.name = "Cupboard";
    toolSettings.fixture.shape = BoxShape{Vec2::Zero(), 0, 0.8, 0.35};
    toolSettings.fixture.bottom = guessed(1.4);
    toolSettings.fixture.top = guessed(2.1);
  }
  const Opening& opening() const { return job().room.openings.at(0); }
  const Fixture& fixture() const { return job().room.fixtures.at(0); }
};

TEST(WallOpeningTool, PutsAnOpeningAsItIsDrawn) {
  AtWallA host;
  WallOpeningTool tool;
  host.drag(tool, {1.33, 0.71}, {2.57, 1.93}, Qt::ControlModifier);
  ASSERT_EQ(host.job().room.openings.size(), 1U);
  EXPECT_NEAR(host.opening().offset.value, 8 - 2.57, 1e-9);
  EXPECT_NEAR(host.opening().width.value, 1.24, 1e-9);
  EXPECT_NEAR(host.opening().sill.value, 0.71, 1e-9);
  EXPECT_NEAR(host.opening().height.value, 1.22, 1e-9);
  EXPECT_EQ(host.document().selection().selected(), host.opening().id);
  EXPECT_EQ(host.doneCount, 1);
}

TEST(WallOpeningTool, PlacesTheUsualSizeAtItsUsualHeightByAClickNearIt) {
  AtWallA host;
  WallOpeningTool tool;
  host.click(tool, {3.0, 1.53});  // its middle is at 1.5 m
  EXPECT_NEAR(host.opening().sill.value, 0.9, 1e-9);
  EXPECT_NEAR(host.opening().offset.value, 8 - 3.6, 1e-9);
  EXPECT_EQ(host.opening().width.how, Instrument::Guess);
}

TEST(WallOpeningTool, SnapsToTheMiddleOfTheWallAndKeepsDoorsOnTheFloor) {
  AtWallA host;
  host.toolSettings.opening = Opening{};
  WallOpeningTool tool;
  host.click(tool, {4.05, 1.8});
  EXPECT_NEAR(host.opening().offset.value + host.opening().width.value / 2, 4, 1e-9);
  EXPECT_EQ(host.opening().sill.value, 0);
}

TEST(WallOpeningTool, TakesTypedSizesAndOffsetsWhileTheButtonIsHeld) {
  AtWallA host;
  WallOpeningTool tool;
  host.hold(tool, {1.33, 0.71}, {2.57, 1.93}, Qt::ControlModifier);
  ASSERT_EQ(tool.fields(host).size(), 4U);
  EXPECT_FALSE(tool.take(host, 0, 1.5));
  EXPECT_FALSE(tool.take(host, 1, 1.0));
  EXPECT_FALSE(tool.take(host, 2, 0.8));
  EXPECT_FALSE(tool.take(host, 3, 1.1));
  EXPECT_TRUE(tool.take(host, 0, 0));  // no size
  tool.accept(host);
  EXPECT_NEAR(host.opening().width.value, 1.5, 1e-9);
  EXPECT_NEAR(host.opening().height.value, 1.0, 1e-9);
  EXPECT_NEAR(host.opening().offset.value, 8 - 0.8 - 1.5, 1e-9);
  EXPECT_NEAR(host.opening().sill.value, 1.1, 1e-9);
}

TEST(WallOpeningTool, RefusesAFigureThatReachesPastTheWall) {
  AtWallA host;
  WallOpeningTool tool;
  host.hold(tool, {1.33, 0.71}, {2.57, 1.93}, Qt::ControlModifier);
  const auto problem = tool.take(host, 2, 7.5);
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->sentence().find("8.000 m"), std::string::npos) << problem->sentence();
  tool.accept(host);
  EXPECT_NEAR(host.opening().offset.value, 8 - 2.57, 1e-9);
}

TEST(WallOpeningTool, SaysWhenAnOpeningIsInTheWay) {
  AtWallA host(garage(8, 6).withCeiling(2.5).withDoor("A", 4).job());
  WallOpeningTool tool;
  QString said;
  QObject::connect(&host.document(), &Document::problemRaised, &host.document(),
                   [&](const QString& sentence) { said = sentence; });
  host.drag(tool, {3.0, 0.5}, {4.0, 1.5}, Qt::ControlModifier);
  EXPECT_EQ(host.job().room.openings.size(), 1U);
  EXPECT_FALSE(said.isEmpty());
}

TEST(WallFixtureTool, HangsAFixtureOnTheWall) {
  AtWallA host;
  WallFixtureTool tool;
  host.drag(tool, {5.02, 1.21}, {5.93, 1.87}, Qt::ControlModifier);
  ASSERT_EQ(host.job().room.fixtures.size(), 1U);
  const auto& box = std::get<BoxShape>(host.fixture().shape);
  EXPECT_NEAR(box.width, 0.91, 1e-9);
  EXPECT_NEAR(box.depth, 0.35, 1e-9);
  EXPECT_TRUE(box.centre.isApprox(Vec2(8 - 5.475, 0.175), 1e-9));
  EXPECT_NEAR(host.fixture().bottom.value, 1.21, 1e-9);
  EXPECT_NEAR(host.fixture().top.value, 1.87, 1e-9);
}

TEST(WallFixtureTool, CountsAsReadOffAScanOnlyWhereOneShows) {
  Job job = garage(8, 6).withCeiling(2.5).job();
  for (const bool visible : {true, false}) {
    RoomScan scan;
    scan.id = job.takeId();
    scan.visible = visible;
    job.roomScans = {scan};
    AtWallA host(job);
    WallFixtureTool tool;
    host.drag(tool, {5.02, 1.21}, {5.93, 1.87}, Qt::ControlModifier);
    const Instrument expected = visible ? Instrument::Scan : Instrument::Guess;
    EXPECT_EQ(host.fixture().bottom.how, expected);
    EXPECT_EQ(host.fixture().planInstrument, expected);
  }
}

TEST(WallFixtureTool, SnapsCornersToFloorAndEnds) {
  AtWallA host;
  WallFixtureTool tool;
  host.drag(tool, {0.05, 0.04}, {0.93, 2.46});
  const auto& box = std::get<BoxShape>(host.fixture().shape);
  EXPECT_NEAR(box.width, 0.93, 1e-9);
  EXPECT_EQ(host.fixture().bottom.value, 0);
  EXPECT_NEAR(host.fixture().top.value, 2.5, 1e-9);
}

TEST(SelectTool, MovesAWindowOverTheFaceOfItsWall) {
  AtWallA host(garage(8, 6).withCeiling(2.5).withWindow("A", 2, 1, 0.9, 1.2).job());
  SelectTool tool;
  host.drag(tool, {5.5, 2.07}, {4.73, 1.9}, Qt::ControlModifier);
  EXPECT_NEAR(host.opening().offset.value, 2.77, 1e-9);
  EXPECT_NEAR(host.opening().sill.value, 0.73, 1e-9);
}

TEST(WallView, GoesToTheWallOfWhatIsSelectedAndRoundTheRoom) {
  Document document;
  ToolBox toolBox;
  const Job job = garage(8, 6).withDoor("C", 2).job();
  WallView view(document, toolBox);
  EXPECT_FALSE(view.wall());
  document.startWith(job);
  EXPECT_EQ(view.wall(), idNamed(job, "Wall A"));
  document.selection().select(idNamed(job, "Door"));
  EXPECT_EQ(view.wall(), idNamed(job, "Wall C"));
  // Standing in the room, wall B is to the right of wall C.
  view.turn(1);
  EXPECT_EQ(view.wall(), idNamed(job, "Wall B"));
  view.turn(-2);
  EXPECT_EQ(view.wall(), idNamed(job, "Wall D"));
  document.startWith(newJob());
  EXPECT_FALSE(view.wall());
}

TEST(ToolBox, KeepsForEachToolWhatItPlacedLast) {
  ToolBox toolBox;
  Fixture pipe;
  pipe.name = "Pipe";
  pipe.shape = CylinderShape{};
  toolBox.placeFixture(pipe);
  EXPECT_EQ(toolBox.current(), ToolKind::FixtureCylinder);
  toolBox.choose(ToolKind::FixtureBox);
  EXPECT_TRUE(std::holds_alternative<BoxShape>(toolBox.settings().fixture.shape));
  toolBox.choose(ToolKind::FixtureCylinder);
  EXPECT_EQ(toolBox.settings().fixture.name, "Pipe");
}

}  // namespace
}  // namespace baywright
