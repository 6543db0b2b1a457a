// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "clearance/assess.h"
#include "job/edit.h"
#include "jobfile/job_archive.h"

namespace baywright {
namespace {

class OrchardGarage : public ::testing::Test {
 protected:
  void SetUp() override {
    Result<Job> loaded = loadJob(BAYWRIGHT_RESOURCES "/examples/orchard-garage.bayjob");
    ASSERT_TRUE(loaded.has_value()) << loaded.error().sentence();
    job = std::move(*loaded);
  }

  Job job;
};

TEST_F(OrchardGarage, HasAConcaveFloorASlopeAShelfASectionalDoorAndBothHands) {
  EXPECT_EQ(job.room.walls.size(), 6U);
  EXPECT_EQ(job.planScans.size(), 1U);
  bool slopes = false;
  for (const CeilingPart& part : job.room.ceiling) slopes = slopes || part.slope.norm() > 0.1;
  EXPECT_TRUE(slopes);
  bool sectional = false;
  for (const Opening& opening : job.room.openings) sectional = sectional || opening.kind == OpeningKind::SectionalDoor;
  EXPECT_TRUE(sectional);
  ASSERT_EQ(job.golfers.size(), 2U);
  EXPECT_NE(job.golfers[0].hand, job.golfers[1].hand);
}

TEST_F(OrchardGarage, ShowsSomethingBlockedAndSomethingTight) {
  const Assessment assessment = assess(job);
  EXPECT_GE(assessment.count(Verdict::Blocked), 1);
  EXPECT_GE(assessment.count(Verdict::Tight), 1);
  EXPECT_EQ(assessment.count(Verdict::Unknown), 0);
}

TEST_F(OrchardGarage, IsClearAfterADragOfLessThanHalfAMetre) {
  for (double right = 0.05; right < 0.5; right += 0.05) {
    for (double up = -0.2; up <= 0.2; up += 0.1) {
      const Vec2 by(right, up);
      if (by.norm() >= 0.5) continue;
      const Result<Job> moved = moveBay(job, by);
      ASSERT_TRUE(moved.has_value()) << moved.error().sentence();
      const Assessment assessment = assess(*moved);
      if (assessment.count(Verdict::Blocked) == 0 && assessment.count(Verdict::Tight) == 0) return;
    }
  }
  FAIL() << "No drag of less than half a metre clears the example.";
}

}  // namespace
}  // namespace baywright
