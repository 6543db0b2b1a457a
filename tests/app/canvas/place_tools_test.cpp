// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "canvas/bystander_tool.h"
#include "canvas/fixture_tools.h"
#include "canvas/opening_tool.h"
#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(OpeningTool, PutsTheOpeningUnderThePointer) {
  FakeToolHost host(garage(8, 6).job());
  host.toolSettings.opening.kind = OpeningKind::Window;
  host.toolSettings.opening.name = "North window";
  host.toolSettings.opening.width = guessed(1.2);
  host.toolSettings.opening.sill = guessed(0.9);
  host.toolSettings.opening.height = guessed(1.2);
  OpeningTool tool;
  host.click(tool, {2.5, 5.93});
  ASSERT_EQ(host.job().room.openings.size(), 1u);
  const Opening& window = host.job().room.openings[0];
  EXPECT_EQ(window.wall, idNamed(host.job(), "Wall C"));
  EXPECT_NEAR(window.offset.value, 8 - 2.5 - 0.6, 1e-12);
  EXPECT_EQ(window.kind, OpeningKind::Window);
  EXPECT_EQ(host.document().selection().selected(), window.id);
  EXPECT_EQ(host.doneCount, 1);
  EXPECT_EQ(host.entries, std::vector<std::size_t>{0});
}

TEST(OpeningTool, CentresOnTheWallUnlessControlIsHeld) {
  FakeToolHost host(garage(8, 6).job());
  OpeningTool tool;
  host.click(tool, {4.05, 0});
  EXPECT_NEAR(host.job().room.openings.at(0).offset.value + host.job().room.openings[0].width.value / 2, 4,
              1e-12);
}

TEST(OpeningTool, WantsAWall) {
  FakeToolHost host(garage(8, 6).job());
  OpeningTool tool;
  host.click(tool, {4, 3});
  EXPECT_TRUE(host.job().room.openings.empty());
  EXPECT_FALSE(host.said.isEmpty());
  EXPECT_EQ(host.doneCount, 0);
}

TEST(FixtureBoxTool, DragsFromCornerToCorner) {
  FakeToolHost host(garage(8, 6).job());
  host.toolSettings.fixture.name = "Cupboard";
  FixtureBoxTool tool;
  // The first corner snaps into the room's.
  host.drag(tool, {0.05, 0.04}, {1.5, 0.62});
  ASSERT_EQ(host.job().room.fixtures.size(), 1u);
  const Fixture& fixture = host.job().room.fixtures[0];
  EXPECT_EQ(fixture.name, "Cupboard");
  const auto& box = std::get<BoxShape>(fixture.shape);
  EXPECT_NEAR(box.width, 1.5, 1e-9);
  EXPECT_NEAR(box.depth, 0.62, 1e-9);
  EXPECT_TRUE(box.centre.isApprox(Vec2(0.75, 0.31), 1e-9));
  EXPECT_EQ(host.document().selection().selected(), fixture.id);
  EXPECT_EQ(host.doneCount, 1);
}

TEST(FixtureBoxTool, PlacesTheUsualSizeByAClick) {
  FakeToolHost host(garage(8, 6).job());
  host.toolSettings.fixture.shape = BoxShape{Vec2::Zero(), 0, 0.9, 0.45};
  FixtureBoxTool tool;
  host.click(tool, {4.2, 2.2}, Qt::ControlModifier);
  ASSERT_EQ(host.job().room.fixtures.size(), 1u);
  const auto& box = std::get<BoxShape>(host.job().room.fixtures[0].shape);
  EXPECT_EQ(box.width, 0.9);
  EXPECT_EQ(box.depth, 0.45);
  EXPECT_TRUE(box.centre.isApprox(Vec2(4.2, 2.2), 1e-12));
}

TEST(FixtureBoxTool, TakesTypedSizes) {
  FakeToolHost host(garage(8, 6).job());
  FixtureBoxTool tool;
  host.hold(tool, {0.02, 0.02}, {1.4, 0.7});
  ASSERT_EQ(tool.fields(host).size(), 2u);
  EXPECT_FALSE(tool.take(host, 0, 1.2));
  EXPECT_FALSE(tool.take(host, 1, 0.4));
  tool.accept(host);
  ASSERT_EQ(host.job().room.fixtures.size(), 1u);
  const auto& box = std::get<BoxShape>(host.job().room.fixtures[0].shape);
  EXPECT_EQ(box.width, 1.2);
  EXPECT_EQ(box.depth, 0.4);
  EXPECT_TRUE(box.centre.isApprox(Vec2(0.6, 0.2), 1e-12));
}

TEST(FixtureCylinderTool, DragsARadius) {
  FakeToolHost host(garage(8, 6).job());
  FixtureCylinderTool tool;
  host.drag(tool, {4.2, 2.2}, {4.5, 2.6}, Qt::ControlModifier);
  ASSERT_EQ(host.job().room.fixtures.size(), 1u);
  EXPECT_NEAR(std::get<CylinderShape>(host.job().room.fixtures[0].shape).radius, 0.5, 1e-12);
}

TEST(FixturePolygonTool, ClicksACornerAfterTheOther) {
  FakeToolHost host(garage(8, 6).job());
  FixturePolygonTool tool;
  for (const Vec2& corner : {Vec2(2, 2), Vec2(4, 2), Vec2(4, 3), Vec2(2, 3), Vec2(2.01, 2.01)})
    host.click(tool, corner);
  ASSERT_EQ(host.job().room.fixtures.size(), 1u);
  EXPECT_EQ(std::get<PrismShape>(host.job().room.fixtures[0].shape).outline.size(), 4u);
}

TEST(BystanderTool, PutsSomebodyThere) {
  FakeToolHost host(garage(8, 6).job());
  BystanderTool tool;
  host.click(tool, {1.5, 4.5});
  ASSERT_EQ(host.job().bystanders.size(), 1u);
  EXPECT_EQ(host.job().bystanders[0].position, Vec2(1.5, 4.5));
  EXPECT_EQ(host.doneCount, 1);
}

}  // namespace
}  // namespace baywright
