// SPDX-License-Identifier: Apache-2.0
#include "drawing/wall_pick.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(WallPick, FindsTheNearestWallAndThePlaceOnIt) {
  const Job job = garage(8, 6).job();
  const auto spot = wallAt(job.room, {2.5, 0.04}, 0.1);
  ASSERT_TRUE(spot);
  EXPECT_EQ(spot->wall, idNamed(job, "Wall A"));
  EXPECT_NEAR(spot->along, 2.5, 1e-12);
  EXPECT_NEAR(spot->distance, 0.04, 1e-12);
  EXPECT_FALSE(wallAt(job.room, {2.5, 0.3}, 0.1));
  // Wall C runs back from (8, 6).
  EXPECT_NEAR(wallAt(job.room, {7, 5.95}, 0.1)->along, 1, 1e-12);
}

TEST(WallPick, CountsTheMasonryAsTheWall) {
  const Job job = garage(8, 6).job();
  const double thickness = job.room.walls[0].thickness;
  EXPECT_NEAR(wallAt(job.room, {2.5, -0.8 * thickness}, 0.01)->distance, 0, 1e-12);
  EXPECT_FALSE(wallAt(job.room, {2.5, -thickness - 0.02}, 0.01));
}

TEST(WallPick, NamesACornerByTheWallThatStartsThere) {
  const Job job = garage(8, 6).job();
  EXPECT_EQ(cornerAt(job.room, {7.95, 5.95}, 0.1), idNamed(job, "Wall C"));
  EXPECT_FALSE(cornerAt(job.room, {7.8, 5.8}, 0.1));
}

TEST(WallPick, KeepsAnOpeningWithinItsWall) {
  const Job job = garage(8, 6).job();
  Opening door;
  door.width = taped(0.9);
  const auto at = [&](double along) {
    return openingAt(job.room, door, {idNamed(job, "Wall A"), along, 0}, Instrument::Drawing);
  };
  EXPECT_NEAR(at(4).offset.value, 3.55, 1e-12);
  EXPECT_NEAR(at(0.1).offset.value, 0, 1e-12);
  EXPECT_NEAR(at(7.9).offset.value, 7.1, 1e-12);
  EXPECT_EQ(at(4).offset.how, Instrument::Drawing);
  door.width = taped(20);
  EXPECT_NEAR(at(4).width.value, 8, 1e-12);
  EXPECT_NEAR(at(4).offset.value, 0, 1e-12);
  const Segment2 span = spanOf(job.room, at(4));
  EXPECT_TRUE(span.b.isApprox(Vec2(8, 0), 1e-12));
}

}  // namespace
}  // namespace baywright
