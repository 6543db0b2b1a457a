// SPDX-License-Identifier: Apache-2.0
#include "canvas/outline_tool.h"

#include <gtest/gtest.h>

#include "job/edit_room.h"
#include "job/room_geometry.h"
#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

std::vector<Vec2> cornersOf(const Job& job) {
  return outline(job.room);
}

TEST(OutlineTool, TracesARectangleWithExactRightAngles) {
  FakeToolHost host(newJob());
  OutlineTool tool;
  // A slanted room; each click but the second misses its corner by a few centimetres.
  const Vec2 along(std::cos(0.2), std::sin(0.2));
  const Vec2 up = leftOf(along);
  host.click(tool, {1, 1});
  host.click(tool, Vec2(1, 1) + 6 * along);
  host.click(tool, Vec2(1, 1) + 6.03 * along + 4 * up);
  host.click(tool, Vec2(1, 1) + 0.04 * along + 3.96 * up);
  host.click(tool, Vec2(1, 1) + Vec2(0.03, -0.02));
  const auto corners = cornersOf(host.job());
  ASSERT_EQ(corners.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) {
    const Vec2 a = corners[(i + 1) % 4] - corners[i];
    const Vec2 b = corners[(i + 2) % 4] - corners[(i + 1) % 4];
    EXPECT_NEAR(a.normalized().dot(b.normalized()), 0, 1e-12);
  }
  EXPECT_NEAR((corners[1] - corners[0]).norm(), 6, 1e-12);
  EXPECT_NEAR((corners[2] - corners[1]).norm(), 4, 1e-2);
  EXPECT_EQ(host.doneCount, 1);
  EXPECT_EQ(host.document().undoStack().count(), 1);
}

TEST(OutlineTool, TakesTypedLengths) {
  FakeToolHost host(newJob());
  OutlineTool tool;
  host.click(tool, {0, 0});
  host.move(tool, {3, 0.02});
  ASSERT_EQ(tool.fields(host).size(), 1u);
  EXPECT_FALSE(tool.take(host, 0, 6.25));
  host.move(tool, {6.26, 2});
  EXPECT_FALSE(tool.take(host, 0, 4.5));
  host.move(tool, {2, 4.52});
  EXPECT_FALSE(tool.take(host, 0, 6.25));
  EXPECT_TRUE(host.key(tool, Qt::Key_Return));
  const auto corners = cornersOf(host.job());
  ASSERT_EQ(corners.size(), 4u);
  EXPECT_TRUE(corners[1].isApprox(Vec2(6.25, 0), 1e-12));
  EXPECT_TRUE(corners[2].isApprox(Vec2(6.25, 4.5), 1e-12));
  EXPECT_LT((corners[3] - Vec2(0, 4.5)).norm(), 1e-12);
  // Typed all round: as good as taped.
  const auto taped = setRoomOutline(newJob(), corners, Instrument::Tape);
  ASSERT_TRUE(taped);
  EXPECT_EQ(host.job().room.walls[0].startCovariance, taped->room.walls[0].startCovariance);
}

TEST(OutlineTool, KnowsATraceOverAScaledPlanFromAGuess) {
  const auto sigma = [](bool scaled) {
    Job job = newJob();
    PlanScan scan;
    scan.id = job.takeId();
    scan.scaled = scaled;
    job.planScans.push_back(scan);
    FakeToolHost host(job);
    OutlineTool tool;
    for (const Vec2& corner : {Vec2(0, 0), Vec2(6, 0), Vec2(6, 4), Vec2(0, 4), Vec2(0, 0)})
      host.click(tool, corner);
    return host.job().room.walls.at(0).startCovariance.sigmaAlong({1, 0});
  };
  EXPECT_LT(sigma(true), sigma(false));
}

TEST(OutlineTool, GoesOneCornerBack) {
  FakeToolHost host(newJob());
  OutlineTool tool;
  for (const Vec2& corner : {Vec2(0, 0), Vec2(6, 0), Vec2(9, 9)})
    host.click(tool, corner, Qt::ControlModifier);
  EXPECT_TRUE(host.key(tool, Qt::Key_Backspace));
  host.click(tool, {6, 4});
  host.click(tool, {0, 4});
  EXPECT_TRUE(host.key(tool, Qt::Key_Return));
  EXPECT_EQ(cornersOf(host.job()).size(), 4u);
  EXPECT_TRUE(cornersOf(host.job())[2].isApprox(Vec2(6, 4), 1e-9));
}

TEST(OutlineTool, KeepsARefusedOutlineForMending) {
  FakeToolHost host(newJob());
  OutlineTool tool;
  for (const Vec2& corner : {Vec2(0, 0), Vec2(6, 4), Vec2(6, 0), Vec2(0, 4)})
    host.click(tool, corner, Qt::ControlModifier);
  QString problem;
  QObject::connect(&host.document(), &Document::problemRaised,
                   [&](const QString& sentence) { problem = sentence; });
  EXPECT_TRUE(host.key(tool, Qt::Key_Return));
  EXPECT_FALSE(problem.isEmpty());
  EXPECT_TRUE(host.job().room.walls.empty());
  EXPECT_TRUE(tool.isBusy());
  EXPECT_EQ(host.doneCount, 0);
}

TEST(OutlineTool, LeavesNoTraceWhenGivenUp) {
  FakeToolHost host(garage(6, 4).job());
  OutlineTool tool;
  const Job before = host.job();
  host.click(tool, {1, 1});
  host.click(tool, {2, 1});
  tool.cancel(host);
  EXPECT_FALSE(tool.isBusy());
  EXPECT_EQ(host.job(), before);
}

}  // namespace
}  // namespace baywright
