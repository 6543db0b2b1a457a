// SPDX-License-Identifier: Apache-2.0
// Rooms in which golfers are known to swing and rooms in which they are known not to. All of it is common
// practice, no source, except the statures: 5th and 95th percentile of ANSUR II (2012), men 1.648 and 1.870,
// women 1.525 and 1.740 m.
#include <gtest/gtest.h>

#include "swing/envelope.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;
constexpr double kFoot = 0.3048;
constexpr double kClearance = 0.15;

Swing swing(double stature, double inches, double lieDegrees) {
  Golfer golfer;
  golfer.stature = taped(stature);
  return swingOf(golfer, {.id = {}, .name = "", .length = inches * 0.0254, .lie = lieDegrees * kDegree})
      .value();
}
Swing driver(double stature) {
  return swing(stature, 45.5, 58);
}
Swing sevenIron(double stature) {
  return swing(stature, 37, 62.5);
}
Swing wedge(double stature) {
  return swing(stature, 35.5, 64);
}

double headroom(const Swing& of) {
  return of.expected.figures.highest.value + kClearance;
}
double wall(const Swing& of) {
  return of.expected.figures.behindGolfer.value + kClearance;
}

TEST(CommonPractice, ATallAdultsDriverWantsNineFeetOfCeiling) {
  for (const double stature : {1.88, 1.91, 1.95}) {
    EXPECT_LE(headroom(driver(stature)), 9 * kFoot) << stature;
    EXPECT_GE(headroom(driver(stature)), 8.5 * kFoot) << stature;
  }
}

TEST(CommonPractice, AnAverageMansDriverFitsUnderEightAndAHalfFeetButNotUnderEight) {
  EXPECT_LE(headroom(driver(1.755)), 8.5 * kFoot);
  EXPECT_GT(headroom(driver(1.755)), 8.0 * kFoot);
}

TEST(CommonPractice, AnAverageManCanSwingAWedgeUnderEightFeet) {
  EXPECT_LE(headroom(wedge(1.755)), 8.0 * kFoot);
}

TEST(CommonPractice, NobodyHitsATenFootCeiling) {
  EXPECT_LE(driver(2.00).fullExtension.figures.highest.value, 10 * kFoot);
}

TEST(CommonPractice, SevenAndAHalfFeetToTheWallBehindIsComfortableForADriver) {
  for (const double stature : {1.648, 1.755, 1.870, 1.95}) {
    EXPECT_LE(wall(driver(stature)), 7.5 * kFoot) << stature;
    EXPECT_GE(wall(driver(stature)), 6.5 * kFoot) << stature;
  }
}

TEST(CommonPractice, FiguresOfWomenAndMenLieInTheirBands) {
  struct Band {
    double stature;
    double lowest, highest;  ///< of the highest point with a driver
    double nearest, widest;  ///< of the reach behind with a driver
  };
  for (const Band& band : {Band{1.525, 2.10, 2.30, 1.70, 2.00},
                           {1.648, 2.20, 2.40, 1.80, 2.10},
                           {1.740, 2.30, 2.45, 1.90, 2.15},
                           {1.870, 2.40, 2.55, 1.95, 2.20},
                           {2.000, 2.45, 2.65, 2.00, 2.25}}) {
    const EnvelopeFigures figures = driver(band.stature).expected.figures;
    EXPECT_GE(figures.highest.value, band.lowest) << band.stature;
    EXPECT_LE(figures.highest.value, band.highest) << band.stature;
    EXPECT_GE(figures.behindGolfer.value, band.nearest) << band.stature;
    EXPECT_LE(figures.behindGolfer.value, band.widest) << band.stature;
  }
}

TEST(CommonPractice, IronsNeedLessRoomThanADriver) {
  for (const double stature : {1.525, 1.755, 2.00}) {
    EXPECT_LT(headroom(sevenIron(stature)), headroom(driver(stature)) - 0.05) << stature;
    EXPECT_LT(wall(sevenIron(stature)), wall(driver(stature)) - 0.25) << stature;
    EXPECT_LT(headroom(wedge(stature)), headroom(sevenIron(stature))) << stature;
  }
}

TEST(CommonPractice, AClubReachesAboutItsLengthAndAnArmToEitherSide) {
  // Arms of 0.65 to 0.72 m and a club of 1.16 m less the hands on it.
  const EnvelopeFigures figures = driver(1.80).expected.figures;
  EXPECT_NEAR(figures.towardTarget.value, 1.75, 0.15);
  EXPECT_NEAR(figures.awayFromTarget.value, 1.75, 0.15);
  EXPECT_LT(figures.beyondBall.value, 0.10);
}

}  // namespace
}  // namespace baywright
