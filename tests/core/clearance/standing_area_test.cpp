// SPDX-License-Identifier: Apache-2.0
#include "clearance/standing_area.h"

#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

double areaOf(const Job& job) {
  const auto areas = standingAreas(job);
  EXPECT_EQ(areas.size(), 1u);
  return areas.empty() ? -1 : areas.front().value;
}

// In an empty rectangle under a high ceiling the ball may lie in the rectangle less what the swing reaches
// each way with its clearance, and on the far side no nearer to the wall than either.
TEST(StandingArea, OfARectangleIsTheRectangleLessTheReaches) {
  const Job job = garage(9, 8).withCeiling(6).withGolfer(1.8).withClub().bayAt(8, 4, 0).job();
  const Assessment assessment = assess(job);
  const std::string swing = "swing." + std::to_string(job.golfers[0].id.value) + "." +
                            std::to_string(job.golfers[0].clubs[0].id.value) + ".";
  const auto reach = [&](const char* name) {
    return std::max(0.0, figureOf(assessment, swing + name) + job.requirements.swingClearance);
  };
  const double along = 9 - reach("toward_target") - reach("away");
  const double across = 8 - reach("behind") - reach("beyond_ball");
  EXPECT_NEAR(areaOf(job), along * across, 0.02 * (along + across) * kStandingCell);
  EXPECT_EQ(standingAreas(job).front().name, swing + "standing_area");
  EXPECT_EQ(standingAreas(job).front().unit, "m2");
}

TEST(StandingArea, IsNothingUnderALowCeilingAndTurnsWithTheBay) {
  EXPECT_EQ(areaOf(garage(9, 8).withCeiling(2.0).withGolfer(1.8).withClub().bayAt(8, 4, 0).job()), 0);
  const Job along = garage(9, 4.5).withCeiling(4).withGolfer(1.8).withClub().bayAt(8, 2.2, 0).job();
  Job across = along;
  across.options[0].placement.bay.heading = kPi / 2;
  EXPECT_GT(std::abs(areaOf(along) - areaOf(across)), 0.1);
}

TEST(StandingArea, IsLeftOutForWhoDoesNotSwing) {
  Job job = garage(9, 8).withCeiling(3).withGolfer(1.8).withClub().job();
  job.golfers[0].swings = false;
  EXPECT_TRUE(standingAreas(job).empty());
  EXPECT_TRUE(standingAreas(newJob()).empty());
}

TEST(StandingArea, IsKnownInAHallOfAnySize) {
  const Job job = garage(400, 300).withCeiling(6).withGolfer(1.8).withClub().bayAt(200, 150, 0).job();
  EXPECT_NEAR(areaOf(job), 400 * 300 - 700 * 3.2, 400);  // less some 3 m all along each pair of walls
}

}  // namespace
}  // namespace baywright
