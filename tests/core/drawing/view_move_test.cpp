// SPDX-License-Identifier: Apache-2.0
#include "drawing/view_move.h"

#include <gtest/gtest.h>

#include "drawing/thing_heights.h"
#include "job/edit_thing.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

/// Where a thing's middle and lower edge are seen.
Vec2 seenAt(ViewKind view, const Job& job, Id thing) {
  const auto heights = heightsOf(job, thing);
  return viewFromWorld(view, job, raised(heights->at, heights->bottom));
}

TEST(ViewMove, MovesHangingThingsAsTheElevationShowsThem) {
  const Job job = garage(10, 8)
                      .withCeiling(3)
                      .bayAt(6, 4, 0.7)
                      .withProjector(1.0, {-3, 0.3, 2.2})
                      .withBox("Duct", {3, 3}, 1, 0.4, 2.0, 2.3)
                      .job();
  for (const ViewKind view : {ViewKind::DownRange, ViewKind::Side}) {
    for (const Id thing : {job.option().kit.projector.id, idNamed(job, "Duct")}) {
      const auto moved = moveInView(view, job, thing, {0.25, -0.1});
      ASSERT_TRUE(moved) << moved.error().sentence();
      const Vec2 by = seenAt(view, *moved, thing) - seenAt(view, job, thing);
      EXPECT_TRUE(by.isApprox(Vec2(0.25, -0.1), 1e-9)) << by.transpose();
    }
  }
}

TEST(ViewMove, KeepsOnTheFloorWhatStandsThere) {
  const Job job = garage(10, 8).bayAt(6, 4, 0).withBystander({2, 2}).withDoor("A", 2.0).job();
  const auto person = moveInView(ViewKind::Side, job, idNamed(job, "Onlooker"), {0.5, 0.5});
  ASSERT_TRUE(person);
  EXPECT_TRUE(person->bystanders[0].position.isApprox(Vec2(2.5, 2), 1e-12));
  const auto door = moveInView(ViewKind::Side, job, idNamed(job, "Door"), {0.5, 0.5});
  ASSERT_TRUE(door);
  EXPECT_EQ(door->room.openings[0].sill.value, 0);
  EXPECT_NEAR(door->room.openings[0].offset.value, 2.5, 1e-12);
}

TEST(ViewMove, NeverSinksAWindowBelowTheFloor) {
  const Job job = garage(10, 8).withWindow("A", 2, 1, 0.9, 1.2).bayAt(6, 4, 0).job();
  const auto moved = moveInView(ViewKind::Side, job, idNamed(job, "Window"), {0, -2});
  ASSERT_TRUE(moved);
  EXPECT_EQ(moved->room.openings[0].sill.value, 0);
}

TEST(ViewMove, RaisesCeilingsOnlyInElevations) {
  const Job job = garage(10, 8).withCeiling(3).job();
  const Id ceiling = idNamed(job, "Ceiling");
  EXPECT_FALSE(canMoveIn(ViewKind::Plan, job, ceiling));
  EXPECT_TRUE(canMoveIn(ViewKind::Side, job, ceiling));
  const auto moved = moveInView(ViewKind::Side, job, ceiling, {4, -0.2});
  ASSERT_TRUE(moved);
  EXPECT_NEAR(moved->room.ceiling[0].height.value, 2.8, 1e-12);
}

TEST(ViewMove, LeavesWallsLockedPlansAndTheScreensFaceAlone) {
  Job job = garage(10, 8).job();
  PlanScan scan;
  scan.id = job.takeId();
  scan.locked = true;
  job.planScans.push_back(scan);
  EXPECT_FALSE(canMoveIn(ViewKind::Plan, job, idNamed(job, "Wall A")));
  EXPECT_FALSE(canMoveIn(ViewKind::Plan, job, scan.id));
  job.planScans[0].locked = false;
  EXPECT_TRUE(canMoveIn(ViewKind::Plan, job, scan.id));
  EXPECT_FALSE(canMoveIn(ViewKind::ScreenFace, job, job.option().kit.frame.id));
  EXPECT_FALSE(canMoveIn(ViewKind::Plan, job, Id{9999}));
}

TEST(ViewMove, TellsHowTheRoomSlidesUnderAMovingBay) {
  const Job before = garage(10, 8).bayAt(6, 4, 0.3).job();
  const Job after = *translate(before, before.option().kit.frame.id, {0.4, -0.7});
  const Vec3 fixed(1, 2, 0.5);
  for (const ViewKind view : {ViewKind::Plan, ViewKind::DownRange, ViewKind::Side}) {
    const Vec2 seen = viewFromWorld(view, after, fixed) - viewFromWorld(view, before, fixed);
    const Vec2 shift = viewShift(view, before.option().placement.bay, after.option().placement.bay);
    EXPECT_TRUE((seen - shift).norm() < 1e-12) << seen.transpose() << " / " << shift.transpose();
  }
}

}  // namespace
}  // namespace baywright
