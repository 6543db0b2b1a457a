// SPDX-License-Identifier: Apache-2.0
#include "survey/plan_trace_lines.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace baywright {
namespace {

/// White paper with dark bars.
GrayImage paper(int width, int height, const std::vector<std::array<int, 4>>& bars) {
  GrayImage image{
      width, height,
      std::vector<std::uint8_t>(static_cast<std::size_t>(width) * static_cast<std::size_t>(height), 255)};
  for (const auto& [x0, y0, x1, y1] : bars)
    for (int y = y0; y < y1; ++y)
      for (int x = x0; x < x1; ++x) image.pixels[static_cast<std::size_t>(y * width + x)] = 20;
  return image;
}

double nearest(const std::vector<Vec2>& points, const Vec2& to) {
  double best = 1e300;
  for (const Vec2& point : points) best = std::min(best, (point - to).norm());
  return best;
}

TEST(PlanTraceLines, AreThePicturesStrokesWithTheirEnds) {
  // Two strokes 4 wide that make a corner, and the paper's dark edge.
  const auto traces =
      picturedTraces(paper(400, 300, {{50, 98, 300, 102}, {298, 98, 302, 250}, {0, 0, 400, 2}}), 2);
  ASSERT_TRUE(traces) << traces.error().sentence();
  EXPECT_EQ(traces->lines.size(), 2u);
  // In pixels of the plan's own picture, which is twice as large.
  EXPECT_LT(nearest(traces->ends, {100, 200}), 4);
  EXPECT_LT(nearest(traces->ends, {600, 500}), 4);
  for (const Segment2& line : traces->lines) {
    const bool isLevel = std::abs(line.a.y() - line.b.y()) < 2;
    EXPECT_NEAR(isLevel ? line.a.y() : line.a.x(), isLevel ? 200 : 600, 1);
  }
}

TEST(PlanTraceLines, LieWhereThePlanDoes) {
  PlanScan scan;
  scan.worldFromPixel << 0.01, 0, -1, 0, -0.01, 5, 0, 0, 1;
  PictureTraces traces;
  traces.lines = {{{0, 0}, {200, 0}}};
  traces.ends = {{200, 100}};
  const PictureTraces seen = tracesOnPlan(scan, traces);
  EXPECT_TRUE(seen.lines[0].b.isApprox(Vec2(1, 5), 1e-12));
  EXPECT_TRUE(seen.ends[0].isApprox(Vec2(1, 4), 1e-12));
  // Beyond the horizon of a photographed plan there is nothing.
  scan.worldFromPixel << 1, 0, 0, 0, -1, 0, -0.01, 0, 1;
  EXPECT_TRUE(tracesOnPlan(scan, traces).lines.empty() && tracesOnPlan(scan, traces).ends.empty());
}

}  // namespace
}  // namespace baywright
