// SPDX-License-Identifier: Apache-2.0
#include "job/bay_start.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

TEST(StartingPose, StandsBeforeTheShortWallOfALongRoom) {
  const Job job = testing::garage(6.0, 4.5).job();
  const BayPose pose = startingPose(job.room, Frame{});
  EXPECT_NEAR(pose.origin.x(), 6.0 - Frame{}.behindScreen - kStartBehind, 1e-12);
  EXPECT_NEAR(pose.origin.y(), 2.25, 1e-12);
  EXPECT_NEAR(pose.heading, 0, 1e-12);
}

TEST(StartingPose, PassesAWallThatIsNarrowerThanTheFrame) {
  // A corridor: its ends are 2 m wide, the frame 3.2 m.
  const Job job = testing::garage(9.0, 2.0).job();
  const BayPose pose = startingPose(job.room, Frame{});
  EXPECT_NEAR(std::abs(std::sin(pose.heading)), 1, 1e-12);
}

TEST(StartingPose, IsTheOriginWithoutARoom) { EXPECT_EQ(startingPose(Room{}, Frame{}), BayPose{}); }

}  // namespace
}  // namespace baywright
