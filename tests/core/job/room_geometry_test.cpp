// SPDX-License-Identifier: Apache-2.0
#include "job/room_geometry.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::idNamed;
using testing::lShapedRoom;

constexpr double kExact = 1e-12;

TEST(WallLine, RunsToTheNextCornerWithTheRoomOnItsLeft) {
  const Job job = garage(6, 4).job();
  const auto b = wallLine(job.room, idNamed(job, "Wall B"));
  ASSERT_TRUE(b);
  EXPECT_EQ(b->start, Vec2(6, 0));
  EXPECT_EQ(b->end, Vec2(6, 4));
  EXPECT_EQ(b->length, 4);
  EXPECT_EQ(b->inward, Vec2(-1, 0));
  EXPECT_EQ(b->at(1.5), Vec2(6, 1.5));
}

TEST(WallLine, OfTheLastWallEndsAtTheFirstCorner) {
  const Job job = garage(6, 4).job();
  EXPECT_EQ(wallLine(job.room, idNamed(job, "Wall D"))->end, Vec2(0, 0));
}

TEST(WallLine, IsNotThereForOtherIds) {
  const Job job = garage(6, 4).job();
  EXPECT_FALSE(wallLine(job.room, job.activeOption));
}

TEST(WallLine, IsLeastSureWhereItsEndsAre) {
  Job job = garage(6, 4).uncheckedJob();
  job.room.walls[0].startCovariance = PlanCovariance::isotropic(0.010);
  job.room.walls[1].startCovariance = PlanCovariance::isotropic(0.030);
  const WallLine a = wallLines(job.room).front();
  EXPECT_NEAR(a.sigmaAt(0), 0.010, kExact);
  EXPECT_NEAR(a.sigmaAt(6), 0.030, kExact);
  EXPECT_NEAR(a.sigmaAt(3), std::hypot(0.005, 0.015), kExact);
  EXPECT_NEAR(a.sigmaAt(-1), 0.010, kExact);
}

TEST(OpeningPlace, GivesJambsAndHeights) {
  const Job job = garage(6, 4).withWindow("C", 1.0, 1.2, 0.9, 1.1).job();
  const auto window = openingPlace(job.room, idNamed(job, "Window"));
  ASSERT_TRUE(window);
  EXPECT_EQ(window->start, Vec2(5, 4));  // wall C runs back along x
  EXPECT_NEAR((window->end - Vec2(3.8, 4)).norm(), 0, kExact);
  EXPECT_EQ(window->bottom, 0.9);
  EXPECT_EQ(window->top, 2.0);
  EXPECT_EQ(window->inward, Vec2(0, -1));
}

TEST(CeilingAt, IsTheLowestPartOverThePoint) {
  const Job job = garage(6, 4).withCeiling(2.7).withCeilingPart({{0, 0}, {2, 0}, {2, 4}, {0, 4}}, 2.2).job();
  EXPECT_EQ(ceilingHeightAt(job.room, {1, 1}), 2.2);
  EXPECT_EQ(ceilingHeightAt(job.room, {2, 1}), 2.2) << "the edge belongs to the part";
  EXPECT_EQ(ceilingHeightAt(job.room, {3, 1}), 2.7);
  EXPECT_EQ(ceilingAt(job.room, {1, 1})->part, job.room.ceiling[1].id);
}

TEST(CeilingAt, FollowsASlope) {
  const Job job = garage(6, 4).withSlopedCeiling(2.0, 3.0, 4).job();
  EXPECT_NEAR(*ceilingHeightAt(job.room, {5, 1}), 2.25, kExact);
}

TEST(CeilingAt, IsNotKnownWhereNoPartIs) {
  Job job = garage(6, 4).uncheckedJob();
  job.room.ceiling.front().region = {{0, 0}, {2, 0}, {2, 4}, {0, 4}};
  EXPECT_FALSE(ceilingHeightAt(job.room, {3, 1}));
}

TEST(FloorArea, LeavesOutTheCutOfAnL) {
  EXPECT_NEAR(floorArea(lShapedRoom(6, 5, 2, 1.5).job().room), 6 * 5 - 2 * 1.5, kExact);
}

TEST(IsInside, TakesTheEdgeAndLeavesTheCut) {
  const Room room = lShapedRoom(6, 5, 2, 1.5).job().room;
  EXPECT_TRUE(isInside(room, {1, 4.5}));
  EXPECT_TRUE(isInside(room, {0, 2}));
  EXPECT_FALSE(isInside(room, {5, 4.5}));
  EXPECT_FALSE(isInside(Room{}, {0, 0}));
}

TEST(PlanBox, HoldsEveryCorner) {
  const auto box = planBox(testing::roomOver({{-1, 2}, {3, 1}, {2, 5}}).job().room);
  ASSERT_TRUE(box);
  EXPECT_EQ(box->low, Vec2(-1, 1));
  EXPECT_EQ(box->size(), Vec2(4, 4));
  EXPECT_FALSE(planBox(Room{}));
}

TEST(WithVarianceAlong, ReplacesOneDirectionAndKeepsTheOther) {
  const PlanCovariance covariance{4e-4, 1e-4, 9e-4};
  const Vec2 unit = Vec2(3, 4).normalized();
  const PlanCovariance changed = withVarianceAlong(covariance, unit, 25e-6);
  EXPECT_NEAR(changed.sigmaAlong(unit), 0.005, kExact);
  EXPECT_NEAR(changed.sigmaAlong(leftOf(unit)), covariance.sigmaAlong(leftOf(unit)), kExact);
}

TEST(CornerSigma, DependsOnTheDirection) {
  Job job = garage(6, 4).uncheckedJob();
  job.room.walls[0].startCovariance = {1e-4, 0, 4e-4};
  EXPECT_NEAR(*cornerSigma(job.room, job.room.walls[0].id, {1, 0}), 0.01, kExact);
  EXPECT_NEAR(*cornerSigma(job.room, job.room.walls[0].id, {0, 1}), 0.02, kExact);
  EXPECT_FALSE(cornerSigma(job.room, Id{}, {0, 1}));
}

TEST(WallLetters, GoOnAfterZ) {
  EXPECT_EQ(wallLetters(0), "A");
  EXPECT_EQ(wallLetters(25), "Z");
  EXPECT_EQ(wallLetters(26), "AA");
  EXPECT_EQ(wallLetters(99), "CV");
}

}  // namespace
}  // namespace baywright
