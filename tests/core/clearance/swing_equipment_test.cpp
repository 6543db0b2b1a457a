// SPDX-License-Identifier: Apache-2.0
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

TEST(SwingEquipment, FindsAProjectorInTheWay) {
  Job job = roomyHall().job();
  // Right where the club is highest.
  const SwingZone zone = assess(job).swings[0];
  job.option().placement.projector.lens = zone.strikePointInBay + zone.swing->expected.figures.highest.at;
  const Finding projector = findingOf(job, "swing_equipment/<driver>/projector");
  EXPECT_EQ(projector.verdict, Verdict::Blocked);
  EXPECT_EQ(projector.subjects[2], job.option().kit.projector.id);
  EXPECT_TRUE(contains(projector.sentence, "hits the projector")) << projector.sentence;
}

TEST(SwingEquipment, GainsRoomFromTheFrameByStrikingFartherBack) {
  const auto margin = [](double distance) {
    const Job job = roomyHall().strikingFrom(distance).job();
    return findingOf(job, "swing_equipment/<driver>/frame").margin->value;
  };
  EXPECT_GT(margin(3.4), margin(2.8));
}

TEST(SwingEquipment, DoesNotChangeWhenTheBayMoves) {
  const auto frame = [](double x, double y, double heading) {
    return findingOf(roomyHall().bayAt(x, y, heading).uncheckedJob(), "swing_equipment/<driver>/frame")
        .margin->value;
  };
  EXPECT_NEAR(frame(10, 4.5, 0), frame(8, 5.5, 2.0), 1e-9);
}

// Fabric is as thick as its tubes, but nothing gets through it: how far a club would get past a side counts
// in full, and the way out is back inside. The screen's face is a plane: from a bay whose only near side it
// is, the margin is the distance less what the swing reaches toward the target.
TEST(SwingEquipment, FindsAClubThatWouldPassTheFabricDeepInIt) {
  const auto job = [](double distance) {
    return roomyHall().withFrame(9, 4.4, 0.12).strikingFrom(distance).withoutProjector().job();
  };
  for (const double distance : {1.9, 1.6, 1.2}) {
    const Job near = job(distance);
    const Assessment assessment = assess(near);
    const Finding finding = findingOf(near, assessment, "swing_equipment/<driver>/frame");
    const double reach = assessment.swings[0].swing->expected.figures.towardTarget.value;
    // The frame's mouth, its members and its screen stand within 20 mm before the face.
    EXPECT_NEAR(finding.margin->value, distance - 0.02 - reach - 0.15, 0.021) << distance;
    EXPECT_TRUE(contains(finding.sentence, "farther from the screen")) << finding.sentence;
  }
}

}  // namespace
}  // namespace baywright
