// SPDX-License-Identifier: Apache-2.0
#include "drawing/live_dimensions.h"

#include <gtest/gtest.h>

#include "drawing/thing_heights.h"
#include "job/room_geometry.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

const LiveDimension* named(const std::vector<LiveDimension>& dimensions, const std::string& what) {
  for (const LiveDimension& dimension : dimensions)
    if (dimension.what == what) return &dimension;
  return nullptr;
}

TEST(LiveDimensions, MeasureTheFrameSquareToEachWallItFaces) {
  const Job job = garage(10, 8).withFrame(3, 2.5, 1.5).bayAt(7, 4.5, 0).job();
  const Frame& frame = job.option().kit.frame;
  const auto dimensions = liveDimensions(ViewKind::Plan, job, frame.id);
  ASSERT_EQ(dimensions.size(), 4u);
  EXPECT_NEAR(named(dimensions, "to wall A")->value, 3.0, 1e-12);
  EXPECT_NEAR(named(dimensions, "to wall C")->value, 2.0, 1e-12);
  EXPECT_NEAR(named(dimensions, "to wall B")->value, 3 - frame.behindScreen, 1e-12);
  EXPECT_NEAR(named(dimensions, "to wall D")->value, 7 + frame.behindScreen - 1.5, 1e-12);
  for (std::size_t i = 1; i < dimensions.size(); ++i) EXPECT_LE(dimensions[i - 1].value, dimensions[i].value);
  const LiveDimension& a = *named(dimensions, "to wall A");
  EXPECT_TRUE((a.to + a.value * a.grow).isApprox(a.from, 1e-12));
  EXPECT_NEAR(a.to.y(), 0, 1e-12);
}

TEST(LiveDimensions, MeasureFromAPointToTheWallsItFaces) {
  const Job job = garage(10, 8).job();
  const auto distances = wallDistances(job.room, {3, 2});
  ASSERT_EQ(distances.size(), 4u);
  EXPECT_EQ(distances[0].what, "to wall A");
  EXPECT_NEAR(distances[0].value, 2, 1e-12);
  EXPECT_EQ(distances[1].what, "to wall D");
  EXPECT_NEAR(distances[1].value, 3, 1e-12);
  EXPECT_TRUE(distances[1].from.isApprox(Vec2(3, 2), 1e-12));
}

TEST(LiveDimensions, LandWhereTheyAreTyped) {
  const Job job = garage(10, 8).withFrame(3, 2.5).bayAt(7, 4.5, 0.4).job();
  const Id frame = job.option().kit.frame.id;
  for (const LiveDimension& dimension : liveDimensions(ViewKind::Plan, job, frame)) {
    const auto moved = withDimension(ViewKind::Plan, job, frame, dimension, 1.234);
    ASSERT_TRUE(moved);
    const auto after = liveDimensions(ViewKind::Plan, *moved, frame);
    ASSERT_NE(named(after, dimension.what), nullptr);
    EXPECT_NEAR(named(after, dimension.what)->value, 1.234, 1e-9);
  }
}

TEST(LiveDimensions, DoNotLookThroughWalls) {
  // The upper arm of the L hides wall D's upper part from a shelf in the lower right.
  const Job job = lShapedRoom(8, 6, 4, 3).withBox("Box", {6, 1.5}, 1, 0.4, 0, 1.8).job();
  const auto dimensions = liveDimensions(ViewKind::Plan, job, idNamed(job, "Box"));
  EXPECT_EQ(named(dimensions, "to wall E"), nullptr);
  ASSERT_NE(named(dimensions, "to wall C"), nullptr);
  EXPECT_NEAR(named(dimensions, "to wall C")->value, 3 - 1.7, 1e-12);
}

TEST(LiveDimensions, TellAnOpeningsPlaceInItsWall) {
  const Job job = garage(8, 6).withDoor("A", 1.5, 0.9).job();
  const Id door = idNamed(job, "Door");
  const auto dimensions = liveDimensions(ViewKind::Plan, job, door);
  ASSERT_EQ(dimensions.size(), 2u);
  EXPECT_NEAR(dimensions[0].value, 1.5, 1e-12);
  EXPECT_NEAR(dimensions[1].value, 8 - 2.4, 1e-12);
  const auto moved = withDimension(ViewKind::Plan, job, door, dimensions[1], 0.25);
  ASSERT_TRUE(moved);
  EXPECT_NEAR(moved->room.openings[0].offset.value, 8 - 0.9 - 0.25, 1e-12);
}

TEST(LiveDimensions, OfAWallAreTheLengthsBesideIt) {
  // The side walls are slanted: the typed one gets its length all the same.
  const Job job = roomOver({{0, 0}, {6, 0}, {7, 4}, {-1, 4}}).job();
  const Id wall = idNamed(job, "Wall C");
  const auto dimensions = liveDimensions(ViewKind::Plan, job, wall);
  ASSERT_EQ(dimensions.size(), 2u);
  EXPECT_NEAR(dimensions[0].value, std::sqrt(17.0), 1e-12);
  for (const LiveDimension& dimension : dimensions) {
    const auto moved = withDimension(ViewKind::Plan, job, wall, dimension, 5.0);
    ASSERT_TRUE(moved);
    EXPECT_NEAR(named(liveDimensions(ViewKind::Plan, *moved, wall), dimension.what)->value, 5.0, 1e-9);
  }
}

TEST(LiveDimensions, TellHeightsInElevations) {
  const Job job = garage(10, 8).withCeiling(3).bayAt(8, 4, 0).withProjector(1.0, {-3, 0.3, 2.2}).job();
  const Id projector = job.option().kit.projector.id;
  const auto side = liveDimensions(ViewKind::Side, job, projector);
  EXPECT_NEAR(named(side, "from the lens to the floor")->value, 2.2, 1e-12);
  EXPECT_NEAR(named(side, "from the lens to the screen")->value, 3, 1e-12);
  EXPECT_NEAR(named(side, "below the ceiling")->value, 3 - heightsOf(job, projector)->top, 1e-12);
  const auto nearer =
      withDimension(ViewKind::Side, job, projector, *named(side, "from the lens to the screen"), 2.5);
  ASSERT_TRUE(nearer);
  EXPECT_NEAR(nearer->option().placement.projector.lens.x(), -2.5, 1e-12);
  const auto lower = withDimension(ViewKind::Side, job, projector, *named(side, "below the ceiling"), 1.0);
  ASSERT_TRUE(lower);
  EXPECT_NEAR(heightsOf(*lower, projector)->top, 2.0, 1e-12);
  const auto front = liveDimensions(ViewKind::DownRange, job, projector);
  EXPECT_NEAR(named(front, "from the bay's middle line")->value, 0.3, 1e-12);
}

TEST(LiveDimensions, RaiseACeiling) {
  const Job job = garage(10, 8).withCeiling(3).job();
  const Id ceiling = idNamed(job, "Ceiling");
  const auto dimensions = liveDimensions(ViewKind::Side, job, ceiling);
  ASSERT_EQ(dimensions.size(), 1u);
  const auto raised = withDimension(ViewKind::Side, job, ceiling, dimensions[0], 2.41);
  ASSERT_TRUE(raised);
  EXPECT_NEAR(*ceilingHeightAt(raised->room, {5, 4}), 2.41, 1e-12);
}

}  // namespace
}  // namespace baywright
