// SPDX-License-Identifier: Apache-2.0
#include "job/edit_options.h"

#include <gtest/gtest.h>

#include "job/validate.h"

namespace baywright {
namespace {

TEST(DuplicateOption, StandsAfterItsOriginalAndIsActive) {
  Job before = newJob();
  before.option().kit.frame.width = 4;
  const auto after = duplicateOption(*addOption(before, Option{}), before.activeOption, "Wider");
  ASSERT_TRUE(after) << after.error().sentence();
  ASSERT_EQ(after->options.size(), 3u);
  EXPECT_EQ(after->options[1].name, "Wider");
  EXPECT_EQ(after->options[1].kit.frame.width, 4);
  EXPECT_EQ(after->activeOption, after->options[1].id);
  EXPECT_EQ(after->options[1].id, Id{after->lastId});
}

TEST(DuplicateOption, SharesNoId) {
  const Job before = newJob();
  const auto after = duplicateOption(before, before.activeOption, "");
  EXPECT_TRUE(validate(*after).empty());
  EXPECT_NE(after->options[0].kit.mat.id, after->options[1].kit.mat.id);
  EXPECT_EQ(after->options[1].name, "Option 2");
}

TEST(ActivateOption, ChangesWhatTheJobIsAbout) {
  const Job before = newJob();
  const auto two = duplicateOption(before, before.activeOption, "");
  const auto after = activateOption(*two, before.activeOption);
  EXPECT_EQ(after->option().id, before.activeOption);
  EXPECT_FALSE(activateOption(before, Id{9999}));
}

TEST(RemoveOption, MakesItsNeighbourActive) {
  const Job one = newJob();
  const Job three = *duplicateOption(*duplicateOption(one, one.activeOption, ""), one.activeOption, "");
  const auto after = removeOption(three, three.activeOption);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_EQ(after->activeOption, three.options[2].id);
  const auto last = removeOption(*after, after->activeOption);
  EXPECT_EQ(last->activeOption, one.activeOption);
}

TEST(RemoveOption, KeepsTheLastOne) {
  const Job job = newJob();
  const auto after = removeOption(job, job.activeOption);
  ASSERT_FALSE(after);
  EXPECT_NE(after.error().what.find("last option"), std::string::npos);
}

TEST(RenameOption, KeepsEverythingElse) {
  Job before = newJob();
  const auto after = renameOption(before, before.activeOption, "North wall");
  before.options[0].name = "North wall";
  EXPECT_EQ(*after, before);
}

}  // namespace
}  // namespace baywright
