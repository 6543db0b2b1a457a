// SPDX-License-Identifier: Apache-2.0
#include "canvas/zoom_tool.h"

#include <gtest/gtest.h>

#include "support/fake_tool_host.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(ZoomTool, FillsTheViewWithTheBox) {
  FakeToolHost host(garage(8, 6).job());
  ZoomTool tool;
  host.drag(tool, {3, 4}, {1, 2.5});
  EXPECT_TRUE(host.zoomed.isApprox({Vec2(1, 2.5), Vec2(3, 4)}));
  EXPECT_EQ(host.doneCount, 1);
}

TEST(ZoomTool, TakesAClickForNoBox) {
  FakeToolHost host(garage(8, 6).job());
  ZoomTool tool;
  host.click(tool, {3, 4});
  EXPECT_TRUE(host.zoomed.isEmpty());
  EXPECT_EQ(host.doneCount, 0);
  EXPECT_FALSE(host.said.isEmpty());
}

}  // namespace
}  // namespace baywright
