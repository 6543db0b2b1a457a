// SPDX-License-Identifier: Apache-2.0
#include "clearance/door_geometry.h"

#include <gtest/gtest.h>

#include "geometry/polygon.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(LeafSector, IsAQuarterOfADiscAboutTheHinge) {
  const Job job = garage(6, 5).withDoor("A", 1.0, 0.9, HingeSide::Start).job();
  const auto sector = leafSector(job.room, job.room.openings[0]);
  EXPECT_NEAR(signedArea(sector), kPi * 0.81 / 4, 0.81 * 2 * kSectorExcess);
  EXPECT_GT(signedArea(sector), kPi * 0.81 / 4);
  for (const Vec2& p : sector) {
    EXPECT_LE((p - Vec2(1, 0)).norm(), 0.9 * (1 + 2 * kSectorExcess));
    EXPECT_GE(p.y(), -1e-12);
    EXPECT_GE(p.x(), 1 - 1e-12);
  }
}

TEST(LeafSector, TurnsAboutTheOtherJambToo) {
  const Job job = garage(6, 5).withDoor("A", 1.0, 0.9, HingeSide::End).job();
  for (const Vec2& p : leafSector(job.room, job.room.openings[0])) EXPECT_LE(p.x(), 1.9 + 1e-12);
}

TEST(LeafSector, LiesOutsideForADoorThatOpensOut) {
  const Job job = garage(6, 5).withDoor("A", 1.0, 0.9, HingeSide::Start, LeafSwing::OutOfRoom).job();
  for (const Vec2& p : leafSector(job.room, job.room.openings[0])) EXPECT_LE(p.y(), 1e-12);
}

TEST(LeafSector, IsConvexUpToHalfATurn) {
  for (const double angle : {0.2, 1.2, 90_deg, 150_deg, 180_deg}) {
    const Job job =
        garage(6, 5).withDoor("A", 2.0).with([&](Job& j) { j.room.openings[0].openAngle = angle; }).job();
    const auto sector = leafSector(job.room, job.room.openings[0]);
    EXPECT_GT(signedArea(sector), 0.5 * angle * 0.81 - 1e-9);
    EXPECT_NEAR(signedArea({convexHull(sector)}), signedArea(sector), 1e-9) << angle;
  }
}

TEST(ClearWidth, LosesTheLeafThatStandsInIt) {
  Opening door;
  door.width = taped(0.9);
  door.leafThickness = 0.04;
  EXPECT_NEAR(clearOpeningWidth(door).value, 0.86, 1e-12);
  door.kind = OpeningKind::Passage;
  EXPECT_NEAR(clearOpeningWidth(door).value, 0.90, 1e-12);
}

TEST(SectionalDoor, AsksForItsMeasures) {
  const Job job = garage(6, 5)
                      .withSectionalDoor("C", 1, 2.4, 2.1)
                      .with([](Job& j) { j.room.openings[0].height = notMeasured(2.1); })
                      .job();
  const auto door = sectionalDoor(job.room, job.room.openings[0]);
  ASSERT_TRUE(door);
  EXPECT_FALSE(door->missing.empty());
  EXPECT_NEAR(door->open->bounds().low.z(), 0, 1e-12);
}

TEST(SectionalDoor, TracksHangAtTheHeadroomAboveTheOpening) {
  const Job job = garage(6, 5).withSectionalDoor("C", 1, 2.4, 2.1).job();
  const auto door = sectionalDoor(job.room, job.room.openings[0]);
  ASSERT_TRUE(door);
  EXPECT_NEAR(door->open->bounds().high.z(), 2.1 + 0.30, 1e-12);
  EXPECT_NEAR(door->open->bounds().low.y(), 5 - (2.1 + kTrackRunOut), 1e-12);
}

}  // namespace
}  // namespace baywright
