// SPDX-License-Identifier: Apache-2.0
#include "canvas/scan_align_tool.h"

#include <gtest/gtest.h>

#include "geometry/homography.h"
#include "support/fake_tool_host.h"
#include "support/job_builder.h"
#include "survey/plan_scan_fit.h"

namespace baywright {
namespace {

using namespace testing;

/// A scaled ground floor, and over it a sheet that lies anywhere.
Job twoPlans() {
  Job job = newJob();
  PlanScan ground;
  ground.id = job.takeId();
  ground.name = "Ground floor";
  ground.worldFromPixel = worldFromFreshPixels({1000, 800}, {5, 4}, 10);
  ground.scaled = true;
  PlanScan upper = ground;
  upper.id = job.takeId();
  upper.name = "Ceiling";
  upper.worldFromPixel = worldFromFreshPixels({500, 400}, {30, 20}, 12);
  upper.scaled = false;
  job.planScans = {ground, upper};
  return job;
}

Vec2 seen(const Job& job, std::size_t plan, const Vec2& pixel) {
  return *mapped(Homography{job.planScans[plan].worldFromPixel}, pixel);
}

TEST(ScanAlignTool, LaysTheTopPlanOnTheOtherByTwoSharedPoints) {
  FakeToolHost host(twoPlans());
  ScanAlignTool tool;
  const Job before = host.job();
  host.click(tool, seen(before, 1, {100, 300}));
  host.click(tool, {1, 1});
  host.click(tool, seen(before, 1, {400, 100}));
  host.click(tool, {5, 6});
  EXPECT_LT((seen(host.job(), 1, {100, 300}) - Vec2(1, 1)).norm(), 1e-9);
  EXPECT_LT((seen(host.job(), 1, {400, 100}) - Vec2(5, 6)).norm(), 1e-9);
  EXPECT_EQ(host.job().planScans[0], before.planScans[0]);
  EXPECT_TRUE(host.job().planScans[1].scaled);  // by the plan that it lies on
  EXPECT_EQ(host.doneCount, 1);
  ASSERT_EQ(host.document().undoStack().count(), 1);
  host.document().undoStack().undo();
  EXPECT_EQ(host.job(), before);
}

TEST(ScanAlignTool, SnapsToLinesOfThePlansAndGoesOneBack) {
  FakeToolHost host(twoPlans());
  host.scanTraces.ends = {{100, 300}};
  ScanAlignTool tool;
  const Vec2 moving = seen(host.job(), 1, {100, 300});
  host.click(tool, moving + Vec2(0.03, -0.04));
  host.click(tool, seen(host.job(), 0, {100, 300}) + Vec2(0.05, 0));
  EXPECT_TRUE(host.key(tool, Qt::Key_Backspace));
  EXPECT_TRUE(tool.isBusy());
  host.click(tool, seen(host.job(), 0, {100, 300}) + Vec2(0.05, 0));
  host.click(tool, moving + Vec2(4, 3), Qt::ControlModifier);
  host.click(tool, seen(host.job(), 0, {100, 300}) + Vec2(4, 3), Qt::ControlModifier);
  EXPECT_LT((seen(host.job(), 1, {100, 300}) - seen(host.job(), 0, {100, 300})).norm(), 1e-9);
}

TEST(ScanAlignTool, WantsTwoPlansAndRefusesPointsThatCoincide) {
  Job one = twoPlans();
  one.planScans.pop_back();
  FakeToolHost lonely(one);
  ScanAlignTool tool;
  lonely.click(tool, {1, 1});
  EXPECT_FALSE(tool.isBusy());
  EXPECT_TRUE(lonely.said.back().contains(QStringLiteral("second plan")));

  FakeToolHost host(twoPlans());
  const Job before = host.job();
  for (const Vec2& p : {Vec2(30, 20), Vec2(1, 1), Vec2(30, 20), Vec2(5, 5)}) host.click(tool, p);
  EXPECT_EQ(host.job(), before);
  EXPECT_TRUE(host.said.back().contains(QStringLiteral("coincide"))) << host.said.back().toStdString();
  tool.cancel(host);
  EXPECT_FALSE(tool.isBusy());
}

}  // namespace
}  // namespace baywright
