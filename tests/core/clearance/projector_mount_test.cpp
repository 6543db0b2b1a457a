// SPDX-License-Identifier: Apache-2.0
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

TEST(ProjectorMount, RunsIntoALowCeiling) {
  const Job job = roomyHall().withCeiling(2.75).withProjector(1.2, {-3.0, 0, 2.72}).job();
  const Finding room = findingOf(job, "projector_mount/room");
  EXPECT_EQ(room.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(room.sentence, "the ceiling")) << room.sentence;
  // Its top is at 2.78 m, 30 mm too high, and the drop allows for what is known of both.
  EXPECT_TRUE(contains(room.sentence, "Hanging it 0.040 m lower would clear it.")) << room.sentence;
}

TEST(ProjectorMount, GivesTheDropFromTheCeiling) {
  EXPECT_NEAR(
      figureOf(assess(roomyHall().withCeiling(3.0).withProjector(1.2, {-3.0, 0, 2.4}).job()), "mount.drop"),
      0.6, 1e-9);
}

TEST(ProjectorMount, LeavesHeadroomUnderIt) {
  EXPECT_EQ(findingOf(roomyHall().withProjector(1.2, {-3.0, 0, 2.3}).job(), "projector_mount/head").verdict,
            Verdict::Clear);
  EXPECT_EQ(findingOf(roomyHall().withProjector(1.2, {-3.0, 0, 1.9}).job(), "projector_mount/head").verdict,
            Verdict::Blocked);
}

TEST(ProjectorMount, StaysInTheRoom) {
  const Job job = garage(6, 5).bayAt(3, 2.5, 0).withProjector(1.2, {-4.0, 0, 2.3}).job();
  EXPECT_NEAR(findingOf(job, "projector_mount/inside").margin->value, -1.15, 0.01);
}

TEST(ProjectorMount, AsksForTheCeilingItHangsFrom) {
  const Job job = roomyHall().with([](Job& j) { j.room.ceiling[0].height = notMeasured(3); }).job();
  EXPECT_EQ(findingOf(job, "projector_mount/ceiling").verdict, Verdict::Unknown);
}

}  // namespace
}  // namespace baywright
