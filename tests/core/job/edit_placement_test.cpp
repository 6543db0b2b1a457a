// SPDX-License-Identifier: Apache-2.0
#include "job/edit_placement.h"

#include <gtest/gtest.h>

#include "support/job_builder.h"

namespace baywright {
namespace {

constexpr double kExact = 1e-12;

Job bay() {
  return testing::garage(8, 5).bayAt(6, 2.5, 0).strikingFrom(3, 0.1, -0.1).job();
}

const Placement& placementOf(const Result<Job>& job) {
  return job->option().placement;
}

TEST(MoveBay, TakesEverythingAlong) {
  const Job before = bay();
  const auto after = moveBay(before, {0.5, -0.2});
  Placement expected = before.option().placement;
  expected.bay.origin += Vec2(0.5, -0.2);
  EXPECT_EQ(placementOf(after), expected);
}

TEST(MoveBay, ThereAndBackIsTheSameJob) {
  const Job before = bay();
  EXPECT_EQ(*moveBay(*moveBay(before, {0.5, -0.25}), {-0.5, 0.25}), before);
}

TEST(MoveBay, RefusesToLeaveTheWorld) {
  EXPECT_FALSE(moveBay(bay(), {1e6, 0}));
  EXPECT_FALSE(moveBay(bay(), {std::nan(""), 0}));
}

TEST(TurnBay, KeepsThePivotInItsPlaceOfTheBay) {
  const Job before = bay();
  const Vec2 pivot = flat(worldFromBay(before.option().placement.bay, {-3, 0.1, 0}));
  const auto after = turnBay(before, 0.4, pivot);
  EXPECT_NEAR((flat(worldFromBay(placementOf(after).bay, {-3, 0.1, 0})) - pivot).norm(), 0, kExact);
  EXPECT_NEAR(placementOf(after).bay.heading, 0.4, kExact);
}

TEST(TurnBay, KeepsTheHeadingSmall) {
  Job job = bay();
  for (int i = 0; i < 20; ++i) job = *turnBay(job, 1, {6, 2.5});
  EXPECT_LE(std::abs(job.option().placement.bay.heading), kPi);
  EXPECT_NEAR(std::cos(job.option().placement.bay.heading), std::cos(20.0), 1e-9);
}

TEST(MoveMat, TakesStrikePointsAndMonitorAlong) {
  const Job before = bay();
  const Placement was = before.option().placement;
  const Placement is = placementOf(moveMat(before, {-0.5, 0.3}));
  EXPECT_NEAR(is.strikeDistance, was.strikeDistance + 0.5, kExact);
  EXPECT_NEAR(is.strikeRightHanded, 0.4, kExact);
  EXPECT_NEAR(is.strikeLeftHanded, 0.2, kExact);
  EXPECT_NEAR((is.monitor - was.monitor - Vec3(-0.5, 0.3, 0)).norm(), 0, kExact);
  EXPECT_EQ(is.bay, was.bay);
  EXPECT_EQ(is.projector, was.projector);
}

TEST(SetStrikeDistance, MovesTheMatAsFar) {
  const Placement is = placementOf(setStrikeDistance(bay(), 3.4));
  EXPECT_EQ(is.strikeDistance, 3.4);
  EXPECT_NEAR(is.matCentre.x(), -3.4, kExact);
  EXPECT_EQ(is.strikeRightHanded, 0.1);
}

TEST(SetStrikeDistance, RefusesNoneAndLess) {
  EXPECT_FALSE(setStrikeDistance(bay(), 0));
  EXPECT_FALSE(setStrikeDistance(bay(), -1));
}

TEST(MoveStrikePoint, MovesOneHandSidewaysAndBothBack) {
  const Placement is = placementOf(moveStrikePoint(bay(), Hand::Left, {-0.2, -0.3}));
  EXPECT_NEAR(is.strikeDistance, 3.2, kExact);
  EXPECT_NEAR(is.strikeLeftHanded, -0.4, kExact);
  EXPECT_EQ(is.strikeRightHanded, 0.1);
  EXPECT_EQ(is.matCentre, bay().option().placement.matCentre);
}

TEST(SetStrikeOffset, IsForOneHand) {
  EXPECT_EQ(placementOf(setStrikeOffset(bay(), Hand::Right, 0.6)).strikeRightHanded, 0.6);
  EXPECT_EQ(placementOf(setStrikeOffset(bay(), Hand::Right, 0.6)).strikeLeftHanded, -0.1);
}

TEST(MoveMonitor, StaysInTheBay) {
  const Job before = bay();
  const Vec3 was = before.option().placement.monitor;
  EXPECT_NEAR((placementOf(moveMonitor(before, {0.1, 0.2, 0.3})).monitor - was - Vec3(0.1, 0.2, 0.3)).norm(),
              0, kExact);
  EXPECT_EQ(placementOf(setMonitorPlace(before, {-3, 1, 0})).monitor, Vec3(-3, 1, 0));
}

TEST(MoveProjector, StaysOnTheGolfersSide) {
  const auto behind = moveProjector(bay(), {5, 0, 0});
  ASSERT_FALSE(behind);
  EXPECT_NE(behind.error().sentence().find("behind the screen's face"), std::string::npos);
  EXPECT_NEAR(placementOf(moveProjector(bay(), {1, 0, 0})).projector.lens.x(), -2.6, kExact);
}

TEST(SetProjectorMount, ReplacesAllOfIt) {
  ProjectorMount mount;
  mount.kind = MountKind::Floor;
  mount.lens = {-2, 0.5, 0.2};
  EXPECT_EQ(placementOf(setProjectorMount(bay(), mount)).projector, mount);
}

TEST(SetPlacement, IsForTheActiveOption) {
  Placement placement;
  placement.bay = {{1, 2}, 0.3};
  EXPECT_EQ(placementOf(setPlacement(bay(), placement)), placement);
  EXPECT_EQ(placementOf(setBayPose(bay(), placement.bay)).bay, placement.bay);
}

}  // namespace
}  // namespace baywright
