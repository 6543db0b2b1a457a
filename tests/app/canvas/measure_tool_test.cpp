// SPDX-License-Identifier: Apache-2.0
#include "canvas/measure_tool.h"

#include <gtest/gtest.h>

#include "support/fake_tool_host.h"
#include "support/job_builder.h"
#include "units/length_text.h"

namespace baywright {
namespace {

using namespace testing;

TEST(MeasureTool, TellsTheDistanceBetweenTwoCornersItSnapsTo) {
  FakeToolHost host(garage(8, 6).job());
  MeasureTool tool;
  host.click(tool, {0.03, 0.02});
  host.click(tool, {7.96, 6.03});
  EXPECT_EQ(host.said.back(), QString::fromStdString(formatLength(10, host.job().units)));
  EXPECT_EQ(host.document().undoStack().count(), 0);
}

TEST(MeasureTool, MeasuresADragAsWell) {
  FakeToolHost host(garage(8, 6).job());
  MeasureTool tool;
  host.drag(tool, {2.5, 1.5}, {5.5, 5.5}, Qt::ControlModifier);
  EXPECT_EQ(host.said.back(), QString::fromStdString(formatLength(5, host.job().units)));
  EXPECT_FALSE(tool.isBusy());
  EXPECT_TRUE(host.key(tool, Qt::Key_Escape));
  EXPECT_FALSE(host.key(tool, Qt::Key_Escape));
}

}  // namespace
}  // namespace baywright
