// SPDX-License-Identifier: Apache-2.0
#include "drawing/room_section.h"

#include <gtest/gtest.h>

#include "job/room_geometry.h"
#include "support/job_builder.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

TEST(RoomSection, CutsARectangleFromWallToWall) {
  const auto section = sectionOf(garage(6, 4).withCeiling(2.5).job().room, {{2, 1}, {1, 0}});
  ASSERT_EQ(section.size(), 1u);
  EXPECT_DOUBLE_EQ(section[0].left.x, -2);
  EXPECT_DOUBLE_EQ(section[0].right.x, 4);
  EXPECT_NEAR(section[0].left.xOuter, -2.1, 1e-12);
  EXPECT_NEAR(section[0].right.xOuter, 4.1, 1e-12);
  ASSERT_EQ(section[0].ceiling.size(), 1u);
  EXPECT_DOUBLE_EQ(section[0].ceiling[0].heightFrom, 2.5);
}

TEST(RoomSection, FollowsASlope) {
  const auto section = sectionOf(garage(6, 4).withSlopedCeiling(2.2, 3.0, 4).job().room, {{2, 0.5}, {0, 1}});
  EXPECT_NEAR(section[0].ceiling[0].heightFrom, 2.2, 1e-12);
  EXPECT_NEAR(section[0].ceiling[0].heightTo, 3.0, 1e-12);
  EXPECT_NEAR(heightAt(section, 0.5).value(), 2.4, 1e-12);
}

TEST(RoomSection, StepsWhereALowerPartBegins) {
  const Room room =
      garage(6, 4).withCeiling(2.7).withCeilingPart({{0, 0}, {2, 0}, {2, 4}, {0, 4}}, 2.3).job().room;
  const auto section = sectionOf(room, {{0, 1}, {1, 0}});
  ASSERT_EQ(section[0].ceiling.size(), 2u);
  EXPECT_DOUBLE_EQ(section[0].ceiling[0].to, 2);
  EXPECT_DOUBLE_EQ(section[0].ceiling[0].heightTo, 2.3);
  EXPECT_DOUBLE_EQ(section[0].ceiling[1].heightFrom, 2.7);
}

TEST(RoomSection, TurnsFromOnePlaneToTheOtherWhereTheyCross) {
  // A gable: two planes over the whole floor, the lower one counts, so they meet in a ridge at y = 2.
  const Room room =
      garage(6, 4).withSlopedCeiling(2.0, 4.0, 4).withCeilingPart({}, 4.0, {0, -0.5}).job().room;
  const auto section = sectionOf(room, {{3, 0}, {0, 1}});
  ASSERT_EQ(section[0].ceiling.size(), 2u);
  EXPECT_NEAR(section[0].ceiling[0].to, 2, 1e-9);
  EXPECT_NEAR(heightAt(section, 2).value(), 3, 1e-9);
  EXPECT_NEAR(heightAt(section, 4).value(), 2, 1e-9);
}

// What the section says at any place is what the room says there.
TEST(RoomSection, AgreesWithTheRoom) {
  const Room room = lShapedRoom(7, 5, 2, 1.5)
                        .withSlopedCeiling(2.3, 3.3, 5)
                        .withCeilingPart({{0, 0}, {1.5, 0}, {1.5, 5}, {0, 5}}, 2.25, {0.2, 0})
                        .job()
                        .room;
  const SectionLine line{{1, 1}, Vec2(3, 1).normalized()};
  const auto section = sectionOf(room, line);
  for (double x = -1; x < 6; x += 0.0371) {
    const auto expected = isInside(room, line.at(x)) ? ceilingHeightAt(room, line.at(x)) : std::nullopt;
    const auto found = heightAt(section, x);
    ASSERT_EQ(found.has_value(), expected.has_value()) << x;
    if (found) {
      EXPECT_NEAR(*found, *expected, 1e-9) << x;
    }
  }
}

TEST(RoomSection, MayCutAConcaveRoomTwice) {
  // A U: the cut through both legs meets four walls.
  const Room room = roomOver({{0, 0}, {6, 0}, {6, 4}, {4, 4}, {4, 2}, {2, 2}, {2, 4}, {0, 4}}).job().room;
  const auto section = sectionOf(room, {{0, 3}, {1, 0}});
  ASSERT_EQ(section.size(), 2u);
  EXPECT_DOUBLE_EQ(section[0].right.x, 2);
  EXPECT_DOUBLE_EQ(section[1].left.x, 4);
}

TEST(RoomSection, GoesThroughOpenings) {
  const Room room = garage(6, 4).withWindow("D", 1.0, 1.5, 0.9, 1.2).job().room;  // y from 3.0 down to 1.5
  const auto through = sectionOf(room, {{1, 2}, {1, 0}});
  ASSERT_TRUE(through[0].left.opening);
  EXPECT_DOUBLE_EQ(through[0].left.openingBottom, 0.9);
  EXPECT_DOUBLE_EQ(through[0].left.openingTop, 2.1);
  EXPECT_FALSE(sectionOf(room, {{1, 1}, {1, 0}})[0].left.opening);
}

TEST(RoomSection, ThroughCornersStaysPaired) {
  const Room room = lShapedRoom(6, 4, 2, 1.5).job().room;
  for (const double y : {0.0, 2.5, 4.0}) {
    for (const RoomStretch& stretch : sectionOf(room, {{0, y}, {1, 0}})) EXPECT_LE(stretch.left.x, stretch.right.x);
  }
  EXPECT_TRUE(sectionOf(room, {{0, 9}, {1, 0}}).empty());
}

TEST(RoomSection, CutsASlantingWallSlanting) {
  const Room room = roomOver({{0, 0}, {6, 0}, {4, 4}, {0, 4}}).job().room;
  const auto section = sectionOf(room, {{0, 2}, {1, 0}});
  EXPECT_NEAR(section[0].right.x, 5, 1e-12);
  EXPECT_NEAR(section[0].right.xOuter - section[0].right.x, 0.1 * std::sqrt(20.0) / 4, 1e-12);
}

}  // namespace
}  // namespace baywright::detail
