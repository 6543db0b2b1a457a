// SPDX-License-Identifier: Apache-2.0
#include "job/room_starts.h"

#include <gtest/gtest.h>

#include "job/room_geometry.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

constexpr double kExact = 1e-12;

TEST(StartRoom, MakesARectangleWithTheBayInside) {
  const auto job = startRoom(newJob(), RectangleFloor{taped(4), shot(7)}, FlatCeiling{taped(2.5)});
  ASSERT_TRUE(job) << job.error().sentence();
  EXPECT_NEAR(floorArea(job->room), 28, kExact);
  EXPECT_EQ(ceilingHeightAt(job->room, {1, 1}), 2.5);
  EXPECT_EQ(job->room.ceiling[0].height.how, Instrument::Tape);
  const BayPose bay = job->option().placement.bay;
  EXPECT_TRUE(isInside(job->room, bay.origin));
  EXPECT_NEAR(std::abs(bay.down().y()), 1, kExact) << "along the longer side";
}

TEST(StartRoom, KeepsEachLengthsAccuracy) {
  const auto job = startRoom(newJob(), RectangleFloor{guessed(6), shot(4)}, FlatCeiling{});
  const std::vector<WallLine> walls = wallLines(job->room);
  const auto lengthSigma = [](const WallLine& wall) {
    return std::hypot(wall.startCovariance.sigmaAlong(wall.along), wall.endCovariance.sigmaAlong(wall.along));
  };
  EXPECT_NEAR(lengthSigma(walls[0]), instrumentSigma(Instrument::Guess, 6), kExact);
  EXPECT_NEAR(lengthSigma(walls[1]), instrumentSigma(Instrument::Laser, 4), kExact);
}

TEST(StartRoom, MakesAnL) {
  const auto job = startRoom(newJob(), LShapeFloor{taped(6), taped(5), taped(2), taped(1.5)}, FlatCeiling{});
  ASSERT_TRUE(job) << job.error().sentence();
  EXPECT_EQ(job->room.walls.size(), 6u);
  EXPECT_NEAR(floorArea(job->room), 27, kExact);
  EXPECT_FALSE(isInside(job->room, {5.5, 4.5}));
}

TEST(StartRoom, SlopesTheCeilingAcrossTheFloor) {
  SlopedCeiling ceiling{taped(2.2), taped(3.0), SlopedCeiling::Direction::AlongWidth};
  const auto across = startRoom(newJob(), RectangleFloor{taped(6), taped(4)}, ceiling);
  ASSERT_TRUE(across) << across.error().sentence();
  EXPECT_NEAR(*ceilingHeightAt(across->room, {1, 0}), 2.2, kExact);
  EXPECT_NEAR(*ceilingHeightAt(across->room, {5, 4}), 3.0, kExact);
  ceiling.direction = SlopedCeiling::Direction::AlongLength;
  const auto along = startRoom(newJob(), RectangleFloor{taped(6), taped(4)}, ceiling);
  EXPECT_NEAR(*ceilingHeightAt(along->room, {6, 1}), 3.0, kExact);
}

TEST(StartRoom, StepsTheCeilingDownOverAStrip) {
  const SteppedCeiling ceiling{taped(2.7), taped(2.3), taped(1.5)};
  const auto job = startRoom(newJob(), RectangleFloor{taped(6), taped(4)}, ceiling);
  ASSERT_TRUE(job) << job.error().sentence();
  EXPECT_EQ(ceilingHeightAt(job->room, {1, 2}), 2.3);
  EXPECT_EQ(ceilingHeightAt(job->room, {2, 2}), 2.7);
}

TEST(StartRoom, ReplacesWhatWasThere) {
  const Job before = testing::garage(9, 9).withDoor("A", 1).withColumn({3, 3}, 0.1, 2).job();
  const auto after = startRoom(before, RectangleFloor{}, FlatCeiling{});
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_TRUE(after->room.fixtures.empty());
  EXPECT_TRUE(after->room.openings.empty());
  EXPECT_EQ(after->room.ceiling.size(), 1u);
}

TEST(StartRoom, RefusesSizesThatAreNoRoom) {
  EXPECT_FALSE(startRoom(newJob(), RectangleFloor{taped(0), taped(4)}, FlatCeiling{}));
  EXPECT_FALSE(startRoom(newJob(), RectangleFloor{taped(6), taped(std::nan(""))}, FlatCeiling{}));
  EXPECT_FALSE(startRoom(newJob(), RectangleFloor{}, FlatCeiling{taped(0.5)}));
  EXPECT_FALSE(startRoom(newJob(), RectangleFloor{}, SlopedCeiling{taped(2.2), taped(-1)}));
  const auto cut = startRoom(newJob(), LShapeFloor{taped(6), taped(5), taped(6), taped(1)}, FlatCeiling{});
  ASSERT_FALSE(cut);
  EXPECT_NE(cut.error().what.find("beside the cut"), std::string::npos);
}

}  // namespace
}  // namespace baywright
