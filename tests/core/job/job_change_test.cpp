// SPDX-License-Identifier: Apache-2.0
#include "job/job_change.h"

#include <gtest/gtest.h>

#include <functional>

#include "support/job_builder.h"

namespace baywright {
namespace {

Job twoOptions() {
  Job job = testing::garage(6, 4).withGolfer(1.8).withClub().withBystander({1, 1}).job();
  job.options.push_back(job.options.front());
  job.options.back().id = job.takeId();
  return job;
}

struct Case {
  const char* name;
  std::function<void(Job&)> edit;
  JobChange expected;
};

// Each part alone sets its own bit and no other.
TEST(JobChange, SetsWhatChangedAndNothingElse) {
  const std::vector<Case> cases = {
      {"info", [](Job& j) { j.info.title = "New"; }, {.info = true}},
      {"units", [](Job& j) { j.units.decimal = ','; }, {.units = true}},
      {"wall", [](Job& j) { j.room.walls[1].start.x() += 0.1; }, {.room = true}},
      {"golfer", [](Job& j) { j.golfers[0].stature.value += 0.01; }, {.people = true}},
      {"bystander", [](Job& j) { j.bystanders[0].height += 0.01; }, {.people = true}},
      {"kit", [](Job& j) { j.option().kit.frame.width += 0.1; }, {.kit = true}},
      {"placement", [](Job& j) { j.option().placement.bay.heading += 0.1; }, {.placement = true}},
      {"other option", [](Job& j) { j.options[1].kit.mat.width += 0.1; }, {.options = true}},
      {"option's name", [](Job& j) { j.option().name = "New"; }, {.options = true}},
      {"active option", [](Job& j) { j.activeOption = j.options[1].id; }, {.options = true}},
      {"requirements", [](Job& j) { j.requirements.spill = 0; }, {.requirements = true}},
      {"measurements", [](Job& j) { j.measurements.emplace_back(); }, {.measurements = true}},
      {"plan scan", [](Job& j) { j.planScans.emplace_back(); }, {.scans = true}},
      {"room scan", [](Job& j) { j.roomScans.emplace_back(); }, {.scans = true}},
      {"original", [](Job& j) { j.originals.emplace_back(); }, {.originals = true}},
  };
  for (const Case& c : cases) {
    const Job before = twoOptions();
    Job after = before;
    c.edit(after);
    EXPECT_EQ(jobChange(before, after), c.expected) << c.name;
    EXPECT_EQ(jobChange(after, before), c.expected) << c.name << ", undone";
  }
}

TEST(JobChange, IsNothingBetweenEqualJobs) {
  const Job job = twoOptions();
  EXPECT_FALSE(jobChange(job, Job(job)).any());
}

TEST(JobChange, TellsThatAnotherOptionBringsOtherKit) {
  Job before = twoOptions();
  before.options[1].kit.mat.width += 0.1;
  Job after = before;
  after.activeOption = after.options[1].id;
  const JobChange change = jobChange(before, after);
  EXPECT_TRUE(change.options);
  EXPECT_TRUE(change.kit);
  EXPECT_FALSE(change.placement);
  EXPECT_TRUE(change.affectsAssessment());
}

TEST(JobChange, LeavesTheAssessmentAloneWhenOnlyTheTitleChanged) {
  EXPECT_FALSE(JobChange{.info = true}.affectsAssessment());
}

}  // namespace
}  // namespace baywright
