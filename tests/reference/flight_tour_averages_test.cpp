// SPDX-License-Identifier: Apache-2.0
// Averages of a professional men's tour: ball speed, launch angle and spin (second-hand, public coursework;
// rounded), carries (golfmonthly.com, "How far PGA Tour players hit every club in the bag", for driver,
// 3-wood, 4- and 7-iron and pitching wedge), and the 2015 Distance Report of the R&A and USGA
// (scottishgolfview.com, June 2016).
#include <gtest/gtest.h>

#include "flight/impact.h"
#include "flight/trajectory.h"

namespace baywright {
namespace {

TEST(TourAverages, DefaultModelCarriesTheWholeBagWithinAboutFivePercent) {
  struct Row {
    const char* club;
    double mph, degrees, rpm, yards;
  };
  const Row rows[] = {{"driver", 167, 11, 2700, 275},
                      {"3-wood", 158, 9, 3600, 243},
                      {"4-iron", 137, 11, 4800, 203},
                      {"7-iron", 120, 16, 7100, 172},
                      {"pitching wedge", 102, 24, 9300, 136}};
  for (const Row& row : rows) {
    Launch launch;
    launch.speed = row.mph * 0.44704;
    launch.launchAngle = row.degrees * kPi / 180;
    launch.spin = row.rpm * kPi / 30;
    FlightLimits limits;
    limits.atLevel = 0;
    const auto flight = flightOf(launch, {}, limits);
    ASSERT_TRUE(flight);
    EXPECT_NEAR(flight->points.back().position.x() / 0.9144, row.yards, 0.055 * row.yards) << row.club;
  }
}

TEST(TourAverages, DriverRisesAboutThirtyTwoYards) {
  // "Max height of just 32 yards", same page.
  Launch launch;
  launch.speed = 167 * 0.44704;
  launch.launchAngle = 10.9 * kPi / 180;
  launch.spin = 2686 * kPi / 30;
  FlightLimits limits;
  limits.atLevel = 0;
  EXPECT_NEAR(flightOf(launch, {}, limits)->apex / 0.9144, 32, 2);
}

TEST(DistanceReport2015, SmashFactorIsThatOfASquareHitAtTheLimit) {
  // 167.7 / 113.2 mph = 1.481; Overall Distance Standard 176 / 120 = 1.467, from 2028 183 / 125 = 1.464.
  SmashInput input;
  input.loft = 10.8 * kPi / 180;
  EXPECT_NEAR(smashFactor(input), 167.7 / 113.2, 0.02 * 1.481);
  input.loft = 10 * kPi / 180;
  EXPECT_NEAR(smashFactor(input), 176.0 / 120, 0.01 * 1.467);
  input.loft = 11 * kPi / 180;
  EXPECT_NEAR(smashFactor(input), 183.0 / 125, 0.01 * 1.464);
}

TEST(CochranStobbs, SmashFactorOfADriverAtItsLimit) {
  // e 0.83, ball 46 g, head 200 g, square and centred: 1.83 / 1.23 = 1.488 (The Search for the Perfect Swing,
  // appendix; second-hand).
  SmashInput input;
  input.ball.mass = 0.046;
  EXPECT_NEAR(smashFactor(input), 1.488, 0.002);
}

}  // namespace
}  // namespace baywright
