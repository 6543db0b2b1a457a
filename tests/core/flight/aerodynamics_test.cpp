// SPDX-License-Identifier: Apache-2.0
#include "flight/aerodynamics.h"

#include <gtest/gtest.h>

#include "flight_scene.h"

namespace baywright {
namespace {

using scene::rpm;

Coefficients bearmanHarvey(double speed, double spin) {
  return coefficientsAt(BearmanHarvey{}, Ball{}, speed, spin);
}

TEST(BearmanHarvey, IsContinuousAcrossItsRowsAndColumns) {
  constexpr double step = 1e-6;
  for (double spin = 1800; spin <= 6200; spin += 100) {
    for (const double speed : {13.7, 21.6, 29.9, 38.4, 46.9, 55.2, 63.1, 71.9, 80.2, 88.1}) {
      const Coefficients below = bearmanHarvey(speed - step, rpm(spin - step));
      const Coefficients above = bearmanHarvey(speed + step, rpm(spin + step));
      EXPECT_NEAR(below.drag, above.drag, 1e-6) << speed << " m/s " << spin << " rpm";
      EXPECT_NEAR(below.lift, above.lift, 1e-6) << speed << " m/s " << spin << " rpm";
    }
  }
}

TEST(BearmanHarvey, KeepsItsEdgeBeyondTheTable) {
  EXPECT_EQ(bearmanHarvey(5, rpm(3000)).drag, bearmanHarvey(13.7, rpm(3000)).drag);
  EXPECT_EQ(bearmanHarvey(110, rpm(3000)).lift, bearmanHarvey(88.1, rpm(3000)).lift);
  EXPECT_EQ(bearmanHarvey(50, rpm(9000)).drag, bearmanHarvey(50, rpm(6000)).drag);
}

TEST(BearmanHarvey, LiftsNothingWithoutSpinAndHalfAtHalfTheLeast) {
  EXPECT_EQ(bearmanHarvey(50, 0).lift, 0);
  EXPECT_NEAR(bearmanHarvey(50, rpm(1000)).lift, 0.5 * bearmanHarvey(50, rpm(2000)).lift, 1e-12);
}

TEST(BearmanHarvey, LiftsMoreWithMoreSpin) {
  for (double speed = 14; speed < 88; speed += 3.7) {
    double last = -1;
    for (double spin = 0; spin <= 6000; spin += 250) {
      const double lift = bearmanHarvey(speed, rpm(spin)).lift;
      EXPECT_GT(lift, last) << speed << " m/s " << spin << " rpm";
      last = lift;
    }
  }
}

TEST(LinearInSpinRatio, DependsOnTheRatioAlone) {
  const Coefficients slow = coefficientsAt(LinearInSpinRatio{}, Ball{}, 30, 150);
  const Coefficients fast = coefficientsAt(LinearInSpinRatio{}, Ball{}, 60, 300);
  EXPECT_DOUBLE_EQ(slow.drag, fast.drag);
  EXPECT_DOUBLE_EQ(slow.lift, fast.lift);
  EXPECT_GT(slow.spinDecay, 0);
}

TEST(Aerodynamics, SaysWhereItsSourceEnds) {
  EXPECT_TRUE(isWithinSource(BearmanHarvey{}, Ball{}, 70, rpm(2600)));
  EXPECT_FALSE(isWithinSource(BearmanHarvey{}, Ball{}, 70, rpm(9300)));
  EXPECT_FALSE(isWithinSource(BearmanHarvey{}, Ball{}, 12, rpm(2600)));
  EXPECT_TRUE(isWithinSource(LinearInSpinRatio{}, Ball{}, 75, rpm(2686)));
  EXPECT_FALSE(isWithinSource(LinearInSpinRatio{}, Ball{}, 45, rpm(9300)));
}

}  // namespace
}  // namespace baywright
