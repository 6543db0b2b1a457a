// SPDX-License-Identifier: Apache-2.0
#include "clearance/picture_zone.h"

#include <algorithm>

#include "clearance/obstacles.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(LightBlockers, AreNeitherPeopleNorTheProjectorNorTheScreen) {
  const Job job = roomyHall().withBystander({8, 4.5}).withShelf("A", 5, 2, 0.4, 1.9).job();
  const Obstacles obstacles = obstaclesOf(job);
  bool shelf = false;
  for (const LightBlocker& blocker : lightBlockers(obstacles, job.option().placement.bay)) {
    const RoomObstacle& what = obstacles[blocker.index];
    EXPECT_NE(what.kind, ObstacleKind::Bystander);
    EXPECT_NE(what.kind, ObstacleKind::Projector);
    EXPECT_NE(what.kind, ObstacleKind::ProjectorMount);
    EXPECT_NE(what.name, "the screen");
    EXPECT_LT(boundsOf(blocker.inBay).low.x(), 0);
    shelf = shelf || what.name == "the shelf";
  }
  EXPECT_TRUE(shelf);
}

TEST(PictureAlone, HoldsAllThatTheRoomDoesNotChange) {
  const Job job = roomyHall().job();
  const auto zone = pictureAlone(job.option(), job.requirements);
  ASSERT_TRUE(zone) << zone.error().sentence();
  EXPECT_GT(zone->picture.width, 0);
  EXPECT_GT(zone->brightness.meanIlluminance, 0);
  EXPECT_TRUE(zone->shadows.empty());
}

TEST(PictureAlone, TellsWhyThereIsNone) {
  Job job = roomyHall().job();
  job.option().placement.projector.lens.x() = 0.5;  // behind the screen
  EXPECT_FALSE(pictureAlone(job.option(), job.requirements));
}

}  // namespace
}  // namespace baywright
