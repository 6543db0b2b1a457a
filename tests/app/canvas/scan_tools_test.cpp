// SPDX-License-Identifier: Apache-2.0
#include "canvas/scan_tools.h"

#include <gtest/gtest.h>

#include "geometry/homography.h"
#include "support/fake_tool_host.h"
#include "support/job_builder.h"
#include "survey/plan_scan_fit.h"

namespace baywright {
namespace {

using namespace testing;

Job withScan() {
  Job job = newJob();
  PlanScan scan;
  scan.id = job.takeId();
  scan.name = "Scan";
  scan.worldFromPixel = worldFromFreshPixels({1000, 800}, {0, 0}, 10);
  job.planScans.push_back(scan);
  return job;
}

Vec2 seen(const Job& job, const Vec2& pixel) {
  return *mapped(Homography{job.planScans[0].worldFromPixel}, pixel);
}

TEST(ScanScaleTool, MakesTheClickedLineAsLongAsTyped) {
  FakeToolHost host(withScan());
  ScanScaleTool tool;
  const Vec2 a = seen(host.job(), {100, 400});
  const Vec2 b = seen(host.job(), {900, 400});
  host.click(tool, a);
  EXPECT_TRUE(host.entries.empty());
  host.click(tool, b);
  EXPECT_EQ(host.entries, std::vector<std::size_t>{0});
  EXPECT_FALSE(tool.take(host, 0, 6.4));
  tool.accept(host);
  EXPECT_NEAR((seen(host.job(), {900, 400}) - seen(host.job(), {100, 400})).norm(), 6.4, 1e-12);
  EXPECT_TRUE(host.job().planScans[0].scaled);
  EXPECT_EQ(host.document().undoStack().count(), 1);
  EXPECT_EQ(host.doneCount, 1);
}

TEST(ScanScaleTool, LevelsALineThatIsALittleAskewAndSaysSo) {
  FakeToolHost host(withScan());
  ScanScaleTool tool;
  host.click(tool, seen(host.job(), {100, 400}));
  host.click(tool, seen(host.job(), {900, 412}));
  EXPECT_FALSE(tool.take(host, 0, 6.4));
  EXPECT_NEAR(seen(host.job(), {900, 412}).y(), seen(host.job(), {100, 400}).y(), 1e-12);
  ASSERT_FALSE(host.said.isEmpty());
  EXPECT_TRUE(host.said.back().contains(QStringLiteral("turned")));
}

TEST(ScanScaleTool, SnapsToTheEndsOfAScaleBarUnlessHeldOff) {
  FakeToolHost host(withScan());
  host.scanTraces.lines = {{{390, 700}, {610, 700}}};
  host.scanTraces.ends = {{400, 700}, {600, 700}};
  ScanScaleTool tool;
  host.click(tool, seen(host.job(), {404, 703}));
  host.click(tool, seen(host.job(), {598, 696}));
  EXPECT_FALSE(tool.take(host, 0, 5));
  EXPECT_NEAR((seen(host.job(), {600, 700}) - seen(host.job(), {400, 700})).norm(), 5, 1e-9);
  tool.accept(host);
  EXPECT_TRUE(tool.status(host).contains(QStringLiteral("scale bar")));
  const Vec2 beside = seen(host.job(), {404, 703});
  host.click(tool, beside, Qt::ControlModifier);
  host.click(tool, seen(host.job(), {500, 300}), Qt::ControlModifier);
  EXPECT_EQ(tool.fields(host)[0].from, beside);
}

TEST(ScanScaleTool, TellsTheScaleOfASheetWhoseSizeIsKnown) {
  const auto told = [](double length) {
    Job job = withScan();
    job.planScans[0].pdfDotsPerMetre = 4000;  // 800 pixels are 200 mm of paper
    FakeToolHost host(job);
    ScanScaleTool tool;
    host.click(tool, seen(host.job(), {100, 400}));
    host.click(tool, seen(host.job(), {900, 400}));
    EXPECT_FALSE(tool.take(host, 0, length));
    return host.said.back();
  };
  EXPECT_TRUE(told(10).contains(QStringLiteral("1:50"))) << told(10).toStdString();
  EXPECT_TRUE(told(8.6).contains(QStringLiteral("1:43.0"))) << told(8.6).toStdString();
}

TEST(ScanScaleTool, ComplainsWhereThePointsCoincide) {
  FakeToolHost host(withScan());
  ScanScaleTool tool;
  host.click(tool, {1, 1});
  host.click(tool, {1, 1});
  EXPECT_TRUE(tool.take(host, 0, 6.4));
  EXPECT_FALSE(host.job().planScans[0].scaled);
}

TEST(ScanScaleTool, WantsAPlan) {
  FakeToolHost host(newJob());
  ScanScaleTool tool;
  host.click(tool, {1, 1});
  EXPECT_FALSE(tool.isBusy());
  EXPECT_FALSE(host.said.isEmpty());
}

TEST(ScanStraightenTool, MakesARectangleOfFourPoints) {
  FakeToolHost host(withScan());
  ScanStraightenTool tool;
  const std::array<Vec2, 4> pixels{Vec2(120, 700), Vec2(880, 660), Vec2(800, 150), Vec2(200, 180)};
  for (const Vec2& pixel : pixels) host.click(tool, seen(host.job(), pixel));
  EXPECT_EQ(host.entries, std::vector<std::size_t>{0});
  ASSERT_EQ(tool.fields(host).size(), 2u);
  EXPECT_FALSE(tool.take(host, 0, 6.0));
  EXPECT_FALSE(tool.take(host, 1, 4.0));
  tool.accept(host);
  std::array<Vec2, 4> corners;
  for (std::size_t i = 0; i < 4; ++i) corners[i] = seen(host.job(), pixels[i]);
  EXPECT_NEAR((corners[1] - corners[0]).norm(), 6, 1e-9);
  EXPECT_NEAR((corners[2] - corners[1]).norm(), 4, 1e-9);
  EXPECT_NEAR((corners[1] - corners[0]).dot(corners[2] - corners[1]), 0, 1e-9);
  EXPECT_NEAR((corners[3] - corners[0]).dot(corners[1] - corners[0]), 0, 1e-9);
  EXPECT_EQ(host.doneCount, 1);
}

TEST(ScanStraightenTool, SnapsToTheEndsOfLinesUnlessHeldOff) {
  FakeToolHost host(withScan());
  host.scanTraces.ends = {{120, 700}, {880, 660}};
  ScanStraightenTool tool;
  const Vec2 beside = seen(host.job(), {803, 148});
  host.click(tool, seen(host.job(), {124, 703}));
  host.click(tool, seen(host.job(), {877, 657}));
  host.click(tool, beside, Qt::ControlModifier);
  host.click(tool, seen(host.job(), {200, 180}));
  const auto fields = tool.fields(host);
  ASSERT_EQ(fields.size(), 2u);
  EXPECT_TRUE(fields[0].from.isApprox(seen(host.job(), {120, 700}), 1e-12));
  EXPECT_TRUE(fields[0].to.isApprox(seen(host.job(), {880, 660}), 1e-12));
  EXPECT_EQ(fields[1].to, beside);
}

TEST(ScanStraightenTool, AsksForTheOtherLengthWhenOneIsMissing) {
  FakeToolHost host(withScan());
  ScanStraightenTool tool;
  for (const Vec2& pixel : {Vec2(120, 700), Vec2(880, 660), Vec2(800, 150), Vec2(200, 180)})
    host.click(tool, seen(host.job(), pixel));
  EXPECT_FALSE(tool.take(host, 0, 6.0));
  tool.accept(host);
  EXPECT_EQ(host.entries, (std::vector<std::size_t>{0, 1}));
  EXPECT_FALSE(host.job().planScans[0].scaled);
}

TEST(ScanStraightenTool, TellsWhatIsWrongWithThePoints) {
  FakeToolHost host(withScan());
  ScanStraightenTool tool;
  for (const Vec2& p : {Vec2(0, 0), Vec2(1, 0), Vec2(2, 0), Vec2(0, 1)}) host.click(tool, p);
  tool.take(host, 0, 6.0);
  EXPECT_TRUE(tool.take(host, 1, 4.0));
  EXPECT_FALSE(host.job().planScans[0].scaled);
}

}  // namespace
}  // namespace baywright
