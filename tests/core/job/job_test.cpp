// SPDX-License-Identifier: Apache-2.0
#include "job/job.h"

#include <gtest/gtest.h>

#include "job/validate.h"

namespace baywright {
namespace {

TEST(NewJob, IsValidBeforeAnythingIsSurveyed) {
  const Job job = newJob();
  EXPECT_TRUE(validate(job).empty());
  EXPECT_TRUE(job.room.walls.empty());
  ASSERT_EQ(job.options.size(), 1u);
  EXPECT_EQ(job.activeOption, job.options.front().id);
}

TEST(Job, NeverGivesAnIdTwice) {
  Job job = newJob();
  const Id first = job.takeId();
  const Id second = job.takeId();
  EXPECT_NE(first, second);
  EXPECT_EQ(job.lastId, second.value);
}

TEST(Job, TakesTheFirstOptionWhenNoneIsActive) {
  Job job = newJob();
  job.options.push_back(job.options.front());
  job.options.back().name = "Other";
  job.activeOption = Id{};
  EXPECT_EQ(&job.option(), &job.options.front());
}

TEST(Job, ComparesByValue) {
  Job job = newJob();
  Job other = job;
  EXPECT_EQ(job, other);
  other.option().placement.bay.heading += 1e-12;
  EXPECT_NE(job, other);
}

}  // namespace
}  // namespace baywright
