// SPDX-License-Identifier: Apache-2.0
#include "drawing/thing_heights.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(ThingHeights, ReachFromTheLowestPointToTheHighest) {
  const Job job = garage(10, 8)
                      .withCeiling(3)
                      .withProjector(1.0, {-3, 0, 2.3})
                      .withWindow("A", 2, 1, 0.9, 1.2)
                      .withBox("Duct", {3, 3}, 1, 0.4, 2.0, 2.3)
                      .withGolfer(1.8)
                      .job();
  const auto projector = heightsOf(job, job.option().kit.projector.id);
  ASSERT_TRUE(projector);
  EXPECT_LE(projector->bottom, 2.3);
  EXPECT_GE(projector->top, 2.3);
  EXPECT_NEAR(projector->top - projector->bottom, job.option().kit.projector.body.z(), 1e-9);
  EXPECT_NEAR(heightsOf(job, idNamed(job, "Window"))->top, 2.1, 1e-12);
  EXPECT_TRUE(heightsOf(job, idNamed(job, "Window"))->canRise);
  EXPECT_NEAR(heightsOf(job, idNamed(job, "Duct"))->bottom, 2.0, 1e-12);
  EXPECT_FALSE(heightsOf(job, job.option().kit.frame.id)->canRise);
  EXPECT_FALSE(heightsOf(job, idNamed(job, "Golfer")));
}

}  // namespace
}  // namespace baywright
