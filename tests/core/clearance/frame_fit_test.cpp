// SPDX-License-Identifier: Apache-2.0
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

TEST(FrameFit, NeedsItsHeightAndRoomAboveIt) {
  const Job job = garage(8, 6).withCeiling(2.60).bayAt(6, 3, 0).withFrame(3.2, 2.5).job();
  const Finding above = findingOf(job, "frame_fit/above");
  EXPECT_NEAR(above.margin->value, 2.60 - 2.50 - 0.076, 1e-9);
  EXPECT_EQ(above.verdict, Verdict::Clear);
  const Job low = garage(8, 6).withCeiling(2.55).bayAt(6, 3, 0).withFrame(3.2, 2.5).job();
  EXPECT_EQ(findingOf(low, "frame_fit/above").verdict, Verdict::Blocked);
}

TEST(FrameFit, MeetsASlopeAtItsLowEdge) {
  // 2.2 m at y = 0 rising to 3.4 m at y = 6; the frame's low corner stands at y = 3 - 1.6.
  const Job job = garage(8, 6).withSlopedCeiling(2.2, 3.4, 6).bayAt(6, 3, 0).withFrame(3.2, 2.2).job();
  const double over = 2.2 + 0.2 * 1.4 - (2.2 + 0.076);
  EXPECT_NEAR(findingOf(job, "frame_fit/above").margin->value, over / std::sqrt(1 + 0.2 * 0.2), 1e-9);
}

TEST(FrameFit, NeedsRoomBesideAndBehind) {
  const Job job = garage(8, 6).withCeiling(3).bayAt(7.5, 1.8, 0).withFrame(3.2, 2.5).job();
  const Finding beside = findingOf(job, "frame_fit/beside");
  EXPECT_NEAR(beside.margin->value, 1.8 - 1.6 - 0.05, 1e-9);
  EXPECT_TRUE(contains(beside.sentence, "wall A")) << beside.sentence;
  const Finding behind = findingOf(job, "frame_fit/behind");
  EXPECT_NEAR(behind.margin->value, 0.5 - (0.30 + 0.05), 1e-9);
  EXPECT_TRUE(contains(behind.sentence, "wall B")) << behind.sentence;
}

TEST(FrameFit, IsExactWhenTurned) {
  const double heading = 30_deg;
  const Job job = garage(8, 6).withCeiling(3).bayAt(4, 3, heading).withFrame(3.2, 2.5, 1.5).job();
  // The nearest corner of the frame, wider by 0.05 m on each side, to the wall y = 0 or y = 6.
  double nearest = 1e9;
  for (const double d : {-1.4, 0.1}) {
    for (const double r : {-1.65, 1.65}) {
      const Vec3 corner = worldFromBay(job.option().placement.bay, {d, r, 0});
      nearest = std::min({nearest, corner.y(), 6 - corner.y(), corner.x(), 8 - corner.x()});
    }
  }
  EXPECT_NEAR(findingOf(job, "frame_fit/beside").margin->value, nearest, 1e-9);
}

TEST(FrameFit, StandsInsideTheRoom) {
  const Job job = garage(8, 6).bayAt(8.3, 3, 0).job();
  const Finding outside = findingOf(job, "frame_fit/inside");
  EXPECT_EQ(outside.verdict, Verdict::Blocked);
  EXPECT_NEAR(outside.margin->value, -(8.3 + 0.1 - 8), 1e-9);
  EXPECT_EQ(assess(garage(8, 6).bayAt(6, 3, 0).job()).find("frame_fit/inside"), nullptr);
}

TEST(FrameFit, AsksForTheCeilingAboveIt) {
  const Job job =
      garage(8, 6).bayAt(6, 3, 0).with([](Job& j) { j.room.ceiling[0].height = notMeasured(2.4); }).job();
  const Finding asked =
      findingOf(job, "frame_fit/above/missing/" + std::to_string(job.room.ceiling[0].id.value));
  EXPECT_EQ(asked.verdict, Verdict::Unknown);
}

TEST(FrameFit, IsLessSureOfARoomThatWasGuessed) {
  const auto sigma = [](Instrument how) {
    const Job job =
        garage(8, 6).bayAt(6, 3, 0).with([&](Job& j) { j.room.ceiling[0].height.how = how; }).job();
    return findingOf(job, "frame_fit/above").margin->sigma;
  };
  EXPECT_NEAR(sigma(Instrument::Guess), std::hypot(0.050, 0.005), 1e-9);
  EXPECT_NEAR(sigma(Instrument::Laser), std::hypot(0.001, 0.005), 1e-9);
}

TEST(FrameFit, CarriesItsScreenInsideItself) {
  const Finding wide = findingOf(garage(8, 6).bayAt(6, 3, 0).withFrame(3.2, 2.5).withScreen(3.4, 2.2).job(),
                                 "frame_fit/screen");
  EXPECT_EQ(wide.verdict, Verdict::Blocked);
  EXPECT_NEAR(wide.margin->value, -0.1, 1e-12);
  EXPECT_TRUE(contains(wide.sentence, "beyond the frame on either side")) << wide.sentence;
  const Finding tall = findingOf(
      garage(8, 6).bayAt(6, 3, 0).withFrame(3.2, 2.5).withScreen(3.0, 2.6, 0.05).job(), "frame_fit/screen");
  EXPECT_NEAR(tall.margin->value, -0.15, 1e-12);
  EXPECT_TRUE(contains(tall.sentence, "above the frame")) << tall.sentence;
  EXPECT_EQ(assess(garage(8, 6).bayAt(6, 3, 0).job()).find("frame_fit/screen"), nullptr);
}

}  // namespace
}  // namespace baywright
