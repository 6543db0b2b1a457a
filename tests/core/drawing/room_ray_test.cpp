// SPDX-License-Identifier: Apache-2.0
#include "drawing/room_ray.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

TEST(DistanceToWall, IsThatOfTheNearestFace) {
  const Room room = garage(6, 4).job().room;
  EXPECT_DOUBLE_EQ(distanceToWall(room, {1, 1}, {1, 0}).value(), 5);
  EXPECT_DOUBLE_EQ(distanceToWall(room, {1, 1}, {0, -1}).value(), 1);
}

TEST(DistanceToWall, SeesTheInwardCornerOfAConcaveRoom) {
  const Room room = lShapedRoom(6, 4, 2, 1.5).job().room;
  EXPECT_DOUBLE_EQ(distanceToWall(room, {1, 3}, {1, 0}).value(), 3);
  EXPECT_DOUBLE_EQ(distanceToWall(room, {1, 2}, {1, 0}).value(), 5);
}

TEST(DistanceToWall, OfWhatTouchesIsZero) {
  EXPECT_EQ(distanceToWall(garage(6, 4).job().room, {6, 2}, {1, 0}).value(), 0);
}

TEST(DistanceToWall, IsNothingWhereNoWallIsMet) {
  EXPECT_FALSE(distanceToWall(garage(6, 4).job().room, {8, 2}, {1, 0}));
  EXPECT_FALSE(distanceToWall(Room{}, {0, 0}, {1, 0}));
}

}  // namespace
}  // namespace baywright::detail
