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

}  // namespace
}  // namespace baywright
