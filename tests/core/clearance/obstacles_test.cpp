// SPDX-License-Identifier: Apache-2.0
#include "clearance/obstacles.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "job/room_geometry.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

double nearest(const Obstacles& obstacles, const Vec3& p) {
  double best = 1e9;
  for (const RoomObstacle& obstacle : obstacles)
    best = std::min(best, closest(Capsule{p, p, 0}, obstacle).distance);
  return best;
}

std::vector<const RoomObstacle*> ofKind(const Obstacles& obstacles, ObstacleKind kind) {
  std::vector<const RoomObstacle*> found;
  for (const RoomObstacle& obstacle : obstacles) {
    if (obstacle.kind == kind) found.push_back(&obstacle);
  }
  return found;
}

TEST(WallObstacles, LeaveTheRoomFreeAndNothingElse) {
  const Job job = lShapedRoom(6, 5, 2.5, 2).job();
  const Obstacles walls = wallObstacles(job);
  std::mt19937 random(1);
  std::uniform_real_distribution<double> x(-0.5, 6.5);
  std::uniform_real_distribution<double> y(-0.5, 5.5);
  for (int i = 0; i < 3000; ++i) {
    const Vec2 p(x(random), y(random));
    const double expected = closestOnBoundary(Polygon{outline(job.room), {}}, p).distance;
    const double found = nearest(walls, raised(p, 1));
    if (isInside(job.room, p)) {
      EXPECT_NEAR(found, expected, 1e-6);
    } else if (expected < kWallDepth) {
      EXPECT_LE(found, 1e-6) << p.transpose();
    }
  }
}

TEST(WallObstacles, DoNotReachIntoTheOtherLegOfTheRoom) {
  // Two legs with 0.12 m of masonry between them.
  const Job job = roomOver({{0, 0}, {5, 0}, {5, 4}, {2.62, 4}, {2.62, 1}, {2.5, 1}, {2.5, 4}, {0, 4}}).job();
  EXPECT_GT(nearest(wallObstacles(job), {2.9, 3, 1}), 0.27);
  EXPECT_GT(nearest(wallObstacles(job), {2.2, 3, 1}), 0.29);
  EXPECT_LT(nearest(wallObstacles(job), {2.56, 3, 1}), 0);
}

TEST(WallObstacles, OpenUpForPassagesOnly) {
  const Job job =
      garage(6, 5).withPassage("A", 1, 1.2, 2.1).withDoor("A", 3).withSectionalDoor("C", 1, 2.4, 2.2).job();
  const Obstacles walls = wallObstacles(job);
  EXPECT_GT(nearest(walls, {1.6, -0.3, 1}), 0.5);  // in the passage
  EXPECT_LT(nearest(walls, {1.6, -0.3, 2.3}), 0);  // above it
  EXPECT_LT(nearest(walls, {3.4, -0.1, 1}), 0);    // a shut door
  EXPECT_LT(nearest(walls, {3.8, 5.1, 1}), 0);     // a shut sectional door
}

TEST(WallObstacles, OpenUpForASectionalDoorThatStaysOpen) {
  const Job job = garage(6, 5).withSectionalDoor("C", 1, 2.4, 2.2).thatStaysOpen().job();
  EXPECT_GT(nearest(wallObstacles(job), {3.8, 5.3, 1}), 0.5);
}

TEST(WallObstacles, StayShutWhereTheOpeningWasNotMeasured) {
  const Job job = garage(6, 5)
                      .withPassage("A", 1, 1.2)
                      .with([](Job& j) { j.room.openings.back().offset.known = false; })
                      .job();
  EXPECT_LT(nearest(wallObstacles(job), {1.6, -0.3, 1}), 0);
}

TEST(WallObstacles, KnowTheirWindows) {
  const Job job = garage(6, 5).withWindow("A", 1, 1.5, 0.9, 1.1).job();
  const Obstacles walls = wallObstacles(job);
  const auto windows = ofKind(walls, ObstacleKind::Window);
  ASSERT_EQ(windows.size(), 1u);
  EXPECT_TRUE(windows[0]->breakable);
  EXPECT_EQ(windows[0]->id, idNamed(job, "Window"));
  EXPECT_NEAR(nearest(walls, {1.75, 0.4, 1.4}), 0.4, 1e-6);  // glass closes the hole
}

TEST(CeilingObstacles, HangAtTheLowestPlane) {
  const Job job = garage(6, 5)
                      .withCeiling(2.8)
                      .withCeilingPart({{0, 0}, {2, 0}, {2, 5}, {0, 5}}, 2.3)
                      .withCeilingPart({{3, 0}, {6, 0}, {6, 5}, {3, 5}}, 2.5, {0.1, 0})
                      .job();
  const Obstacles ceiling = ceilingObstacles(job);
  std::mt19937 random(2);
  std::uniform_real_distribution<double> x(0.01, 5.99);
  std::uniform_real_distribution<double> y(0.01, 4.99);
  std::uniform_real_distribution<double> z(1.8, 3.2);
  for (int i = 0; i < 3000; ++i) {
    const Vec3 p(x(random), y(random), z(random));
    const bool above = p.z() > *ceilingHeightAt(job.room, flat(p));
    EXPECT_EQ(nearest(ceiling, p) < 0, above) << p.transpose();
  }
}

TEST(CeilingObstacles, ShowTheFaceOfAStep) {
  const Job job = garage(6, 5).withCeiling(2.8).withCeilingPart({{0, 0}, {2, 0}, {2, 5}, {0, 5}}, 2.3).job();
  EXPECT_NEAR(nearest(ceilingObstacles(job), {2.2, 2.5, 2.5}), 0.2, 1e-6);
}

TEST(CeilingObstacles, HaveNoWayOutThroughAWallOrTheNextPart) {
  // Two parts of one height that meet at x = 3: a club 0.4 m up beside the joint is 0.4 m deep, and so is one
  // at the wall.
  const Job job = garage(6, 5)
                      .with([](Job& j) { j.room.ceiling.clear(); })
                      .withCeilingPart({{0, 0}, {3, 0}, {3, 5}, {0, 5}}, 2.4)
                      .withCeilingPart({{3, 0}, {6, 0}, {6, 5}, {3, 5}}, 2.4)
                      .job();
  const Obstacles ceiling = ceilingObstacles(job);
  EXPECT_NEAR(nearest(ceiling, {2.95, 2.5, 2.8}), -0.4, 1e-6);
  EXPECT_NEAR(nearest(ceiling, {0.05, 2.5, 2.8}), -0.4, 1e-6);
}

TEST(CeilingObstacles, AskForWhatNobodyMeasured) {
  const Job bare = garage(6, 5).with([](Job& j) { j.room.ceiling.clear(); }).uncheckedJob();
  const Obstacles none = ceilingObstacles(bare);
  ASSERT_FALSE(none.empty());
  EXPECT_EQ(none[0].missing, "the height of the ceiling");

  const Job half = garage(6, 5)
                       .with([](Job& j) { j.room.ceiling.clear(); })
                       .withCeilingPart({{0, 0}, {3, 0}, {3, 5}, {0, 5}}, 2.4)
                       .job();
  const Obstacles some = ceilingObstacles(half);
  const auto missing =
      std::find_if(some.begin(), some.end(), [](const RoomObstacle& o) { return !o.missing.empty(); });
  ASSERT_NE(missing, some.end());
  EXPECT_NEAR(missing->bounds.low.x(), 3, 1e-5);
  EXPECT_NEAR(missing->bounds.high.x(), 6, 1e-5);

  const Job guessed = garage(6, 5).with([](Job& j) { j.room.ceiling[0].height = notMeasured(2.4); }).job();
  EXPECT_EQ(ceilingObstacles(guessed)[0].missing, "the height of the ceiling");
}

TEST(FixtureObstacles, TakeUpTheirShapes) {
  const Job job = garage(6, 5)
                      .withBox("Crate", {2, 2}, 1.0, 0.4, 0, 0.8, 30_deg)
                      .withColumn({4, 2}, 0.15, 2.7)
                      .withPrism("Corner bench", {{0, 3}, {1, 3}, {1, 4}, {2, 4}, {2, 5}, {0, 5}}, 0, 0.9)
                      .job();
  const Obstacles fixtures = fixtureObstacles(job);
  EXPECT_LT(nearest(fixtures, {2 + 0.45 * std::cos(30_deg), 2 + 0.45 * std::sin(30_deg), 0.4}), 0);
  EXPECT_NEAR(nearest(fixtures, {4, 2.5, 1}), 0.35, 1e-9);
  EXPECT_GT(nearest(fixtures, {1.5, 3.5, 0.5}), 0.3);  // in the notch of the bench
}

TEST(FixtureObstacles, AreAsLargeAsWhatIsMissingAllows) {
  const Job job = garage(6, 5)
                      .withBeam({0, 2}, {6, 2}, 0.2, 2.4, 2.7)
                      .with([](Job& j) { j.room.fixtures[0].bottom = notMeasured(2.4); })
                      .job();
  const Obstacles fixtures = fixtureObstacles(job);
  ASSERT_EQ(fixtures.size(), 1u);
  EXPECT_EQ(fixtures[0].missing, "the underside of the beam");
  EXPECT_LT(nearest(fixtures, {3, 2, 0.5}), 0);
}

TEST(DoorObstacles, RunTracksUnderTheCeiling) {
  const Job job = garage(7, 5).withSectionalDoor("C", 1, 2.4, 2.1).job();
  const Obstacles doors = doorObstacles(job);
  EXPECT_TRUE(ofKind(doors, ObstacleKind::SectionalDoor).empty());
  EXPECT_EQ(ofKind(doors, ObstacleKind::DoorTrack).size(), 4u);
  // Opening from x = 6 down to 3.6 on the wall y = 5; tracks 2.55 m into the room, 2.4 m high.
  EXPECT_LT(nearest(doors, {3.55, 3.0, 2.36}), 0);
  EXPECT_GT(nearest(doors, {4.8, 3.0, 2.36}), 0.5);
  EXPECT_GT(nearest(doors, {3.55, 2.3, 2.36}), 0.1);
}

TEST(DoorObstacles, HangTheOpenDoorBetweenTheTracks) {
  const Job job = garage(7, 5).withSectionalDoor("C", 1, 2.4, 2.1).thatStaysOpen().job();
  EXPECT_LT(nearest(doorObstacles(job), {4.8, 3.0, 2.36}), 0);
}

TEST(KitObstacles, StandInTheBay) {
  const Job job =
      garage(7, 5).bayAt(6, 2.5, 0).withFrame(3.2, 2.5, 1.5).withProjector(1.2, {-3.6, 0, 2.3}).job();
  const Obstacles kit = kitObstacles(job);
  for (const RoomObstacle& obstacle : kit) EXPECT_TRUE(obstacle.inBay);
  EXPECT_LT(nearest(kit, {5.5, 2.5 - 1.59, 1}), 0);  // right side of the frame: r = 1.6 is y = 0.9
  EXPECT_LT(nearest(kit, {5.5, 2.5, 2.48}), 0);      // roof
  EXPECT_GT(nearest(kit, {5.5, 2.5, 1.5}), 0.4);     // inside the frame is free
  EXPECT_LT(nearest(kit, {6 - 3.7, 2.5, 2.3}), 0);   // projector, behind its lens
  EXPECT_EQ(ofKind(kit, ObstacleKind::ProjectorMount).size(), 1u);
  EXPECT_EQ(ofKind(kit, ObstacleKind::Monitor).size(), 1u);
}

TEST(KitObstacles, LeaveOutWhatTheOptionDoesWithout) {
  const Job job = garage(7, 5).withoutProjector().withoutMonitor().job();
  const Obstacles kit = kitObstacles(job);
  EXPECT_TRUE(ofKind(kit, ObstacleKind::Projector).empty());
  EXPECT_TRUE(ofKind(kit, ObstacleKind::Monitor).empty());
}

TEST(Obstacles, AreNoneInAnEmptyJobButTheKit) {
  for (const RoomObstacle& obstacle : obstaclesOf(newJob())) EXPECT_TRUE(obstacle.inBay);
}

}  // namespace
}  // namespace baywright
