// SPDX-License-Identifier: Apache-2.0
#include "job/edit_kit.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(SetFrame, KeepsTheIdOfTheOneItReplaces) {
  const Job before = newJob();
  Frame frame;
  frame.name = "Low frame";
  frame.height = 2.2;
  const auto after = setFrame(before, frame);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_EQ(after->option().kit.frame.id, before.option().kit.frame.id);
  EXPECT_EQ(after->option().kit.frame.height, 2.2);
  EXPECT_EQ(after->option().kit.frame.name, "Low frame");
}

TEST(SetScreen, KeepsTheNameWhereTheNewOneHasNone) {
  const auto after = setScreen(newJob(), Screen{});
  EXPECT_EQ(after->option().kit.screen.name, "Screen");
}

TEST(SetMat, RefusesNoSize) {
  Mat mat;
  mat.width = 0;
  const auto after = setMat(newJob(), mat);
  ASSERT_FALSE(after);
  EXPECT_NE(after.error().sentence().find("mat"), std::string::npos);
}

TEST(SetMonitor, BringsItBack) {
  Job before = newJob();
  before.option().kit.hasMonitor = false;
  EXPECT_TRUE(setMonitor(before, LaunchMonitor{})->option().kit.hasMonitor);
}

TEST(SetProjector, MovesTheZoomIntoItsRange) {
  Job before = newJob();
  before.option().kit.hasProjector = false;
  before.option().placement.projector.throwRatio = 1.2;
  Projector projector;
  projector.throwMin = 0.5;
  projector.throwMax = 0.8;
  const auto after = setProjector(before, projector);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_TRUE(after->option().kit.hasProjector);
  EXPECT_EQ(after->option().placement.projector.throwRatio, 0.8);
}

TEST(SetKit, ReplacesAllParts) {
  const Job before = newJob();
  Kit kit;
  kit.frame.width = 4;
  kit.mat.width = 2;
  kit.hasMonitor = false;
  const auto after = setKit(before, kit);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_EQ(after->option().kit.frame.width, 4);
  EXPECT_EQ(after->option().kit.mat.width, 2);
  EXPECT_FALSE(after->option().kit.hasMonitor);
  EXPECT_EQ(after->option().kit.mat.id, before.option().kit.mat.id);
}

TEST(KitVerbs, RefuseAJobWithoutOption) {
  Job job = newJob();
  job.options.clear();
  EXPECT_FALSE(setFrame(job, Frame{}));
}

}  // namespace
}  // namespace baywright
