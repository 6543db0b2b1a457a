// SPDX-License-Identifier: Apache-2.0
#include "canvas/wall_tool.h"

#include <gtest/gtest.h>

#include "job/room_geometry.h"
#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

double lengthOf(const Job& job, const std::string& wall) {
  return wallLine(job.room, idNamed(job, "Wall " + wall))->length;
}

TEST(WallTool, MovesAWallAlongItsNormal) {
  FakeToolHost host(garage(8, 6).job());
  WallTool tool;
  host.drag(tool, {8.03, 2}, {7.53, 3.3}, Qt::ControlModifier);
  EXPECT_NEAR(lengthOf(host.job(), "A"), 7.5, 1e-9);
  EXPECT_NEAR(lengthOf(host.job(), "B"), 6, 1e-9);
  EXPECT_EQ(host.document().undoStack().count(), 1);
}

TEST(WallTool, MovesACornerAnywhere) {
  FakeToolHost host(garage(8, 6).job());
  WallTool tool;
  host.drag(tool, {8, 6}, {8.5, 6.7}, Qt::ControlModifier);
  EXPECT_TRUE(wallLine(host.job().room, idNamed(host.job(), "Wall C"))->start.isApprox(Vec2(8.5, 6.7), 1e-9));
}

TEST(WallTool, TypesTheLengthBesideAWallThatIsDragged) {
  FakeToolHost host(garage(8, 6).job());
  WallTool tool;
  host.hold(tool, {8.03, 2}, {7.4, 2}, Qt::ControlModifier);
  const auto fields = tool.fields(host);
  ASSERT_EQ(fields.size(), 2u);
  EXPECT_EQ(fields[0].what, QStringLiteral("length of wall A"));
  EXPECT_FALSE(tool.take(host, 0, 7.25));
  tool.accept(host);
  EXPECT_NEAR(lengthOf(host.job(), "A"), 7.25, 1e-12);
  EXPECT_NEAR(lengthOf(host.job(), "C"), 7.25, 1e-12);
}

TEST(WallTool, TypesAWallsLengthAfterAClick) {
  FakeToolHost host(garage(8, 6).job());
  WallTool tool;
  host.click(tool, {3, 0});
  EXPECT_EQ(host.entries, std::vector<std::size_t>{0});
  ASSERT_EQ(tool.fields(host).size(), 1u);
  EXPECT_FALSE(tool.take(host, 0, 7.775));
  tool.accept(host);
  EXPECT_NEAR(lengthOf(host.job(), "A"), 7.775, 1e-12);
}

TEST(WallTool, AddsAndTakesAwayCorners) {
  FakeToolHost host(garage(8, 6).job());
  WallTool tool;
  tool.doubleClick(host, host.at({3, 0}, Qt::LeftButton));
  ASSERT_EQ(host.job().room.walls.size(), 5u);
  host.move(tool, {3, 0});
  EXPECT_TRUE(host.key(tool, Qt::Key_Delete));
  EXPECT_EQ(host.job().room.walls.size(), 4u);
  host.move(tool, {5, 3});
  EXPECT_TRUE(host.key(tool, Qt::Key_Delete));
  EXPECT_EQ(host.job().room.walls.size(), 4u);
  EXPECT_FALSE(host.said.isEmpty());
}

TEST(WallTool, RollsBackOnEscape) {
  FakeToolHost host(garage(8, 6).job());
  WallTool tool;
  const Job before = host.job();
  host.hold(tool, {8, 6}, {9, 7});
  EXPECT_NE(host.job(), before);
  tool.cancel(host);
  EXPECT_EQ(host.job(), before);
  EXPECT_EQ(host.document().undoStack().count(), 0);
}

TEST(WallTool, SaysWhyAWallCannotGoThere) {
  FakeToolHost host(garage(8, 6).withDoor("A", 1, 3).job());
  WallTool tool;
  host.hold(tool, {8.03, 2}, {2, 2}, Qt::ControlModifier);
  EXPECT_FALSE(host.said.isEmpty());
  tool.cancel(host);
}

}  // namespace
}  // namespace baywright
