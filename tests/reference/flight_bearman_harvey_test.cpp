// SPDX-License-Identifier: Apache-2.0
// P. W. Bearman and J. K. Harvey, "Golf Ball Aerodynamics", Aeronautical Quarterly 27 (1976) 112-122, figs 7
// and 8, as tabulated in the course tkt4140, Numerical Methods with Computer Laboratory (NTNU; github
// lrhgit/tkt4140, Eks14golf).
#include <gtest/gtest.h>

#include "flight/trajectory.h"

namespace baywright {
namespace {

constexpr double kRpm = kPi / 30;

TEST(BearmanHarvey1976, CoefficientsOfThreeRowsOfTheTable) {
  struct Row {
    double rpm;
    double drag[10];
    double lift[10];
  };
  const double speeds[10] = {13.7, 21.6, 29.9, 38.4, 46.9, 55.2, 63.1, 71.9, 80.2, 88.1};
  const Row rows[] = {{2000,
                       {.3624, .2885, .2765, .2529, .2472, .2481, .2467, .2470, .2470, .2470},
                       {.1040, .1846, .2460, .1984, .1762, .1538, .1418, .1360, .1280, .1276}},
                      {3000,
                       {.4203, .3658, .3169, .2822, .2655, .2578, .2560, .2550, .2538, .2538},
                       {.3624, .3362, .3049, .2475, .2073, .1856, .1702, .1584, .1485, .1464}},
                      {4000,
                       {.4288, .4003, .3490, .3084, .2852, .2710, .2659, .2630, .2605, .2605},
                       {.4005, .3640, .3347, .2862, .2384, .2149, .1977, .1807, .1690, .1582}}};
  for (const Row& row : rows) {
    for (int i = 0; i < 10; ++i) {
      const Coefficients c = coefficientsAt(BearmanHarvey{}, {}, speeds[i], row.rpm * kRpm);
      EXPECT_NEAR(c.drag, row.drag[i], 1e-9) << row.rpm << " rpm, " << speeds[i] << " m/s";
      EXPECT_NEAR(c.lift, row.lift[i], 1e-9) << row.rpm << " rpm, " << speeds[i] << " m/s";
    }
  }
}

TEST(BearmanHarvey1976, InterpolatesBetweenRows) {
  // 50 m/s, 3500 rpm: worked out by hand from the four neighbours.
  const Coefficients c = coefficientsAt(BearmanHarvey{}, {}, 50, 3500 * kRpm);
  EXPECT_NEAR(c.drag, 0.2710, 2e-4);
  EXPECT_NEAR(c.lift, 0.2145, 2e-4);
}

TEST(BearmanHarvey1976, RangesOfTheCoursesExample) {
  // Course example (fig. 1.14): 50 m/s, 3500 rpm, air 1.20 kg/m^3, sphere of 41 mm and 1275 kg/m^3, g 9.81.
  // The figure shows curves; the ranges are those of its equations and settings, solved by an independent
  // fourth-order Runge-Kutta program with steps of 1 ms.
  struct Row {
    double degrees, range, apex, time, speed;
  };
  const Row rows[] = {{15, 151.95, 17.77, 5.149, 24.7},
                      {20, 157.55, 25.65, 5.845, 25.1},
                      {25, 157.99, 33.53, 6.404, 25.9},
                      {30, 154.66, 41.17, 6.859, 26.8}};
  Surroundings surroundings;
  surroundings.ball = {1275 * kPi / 6 * 0.041 * 0.041 * 0.041, 0.0205};
  surroundings.air.density = 1.20;
  surroundings.gravity = 9.81;
  for (const Row& row : rows) {
    Launch launch;
    launch.speed = 50;
    launch.launchAngle = row.degrees * kPi / 180;
    launch.spin = 3500 * kRpm;
    FlightLimits limits;
    limits.atLevel = 0;
    const auto flight = flightOf(launch, surroundings, limits);
    ASSERT_TRUE(flight);
    const FlightPoint& end = flight->points.back();
    EXPECT_NEAR(end.position.x(), row.range, 0.02);
    EXPECT_NEAR(flight->apex, row.apex, 0.01);
    EXPECT_NEAR(end.time, row.time, 0.001);
    EXPECT_NEAR(end.velocity.norm(), row.speed, 0.06);
  }
}

}  // namespace
}  // namespace baywright
