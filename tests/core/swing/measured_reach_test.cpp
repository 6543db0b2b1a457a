// SPDX-License-Identifier: Apache-2.0
#include "swing/measured_reach.h"

#include <gtest/gtest.h>

#include <limits>

#include "swings.h"

namespace baywright {
namespace {

constexpr Id kDriver{1};
constexpr Id kIron{2};

Golfer measured(std::optional<Dimension> highest, std::optional<Dimension> behind, Hand hand = Hand::Right) {
  Golfer golfer = golferOf(1.80, hand);
  golfer.clubs = {bag()[0], bag()[3]};
  golfer.clubs[0].id = kDriver;
  golfer.clubs[1].id = kIron;
  golfer.reach = MeasuredReach{kDriver, highest, behind};
  return golfer;
}

Swing swingWith(const Golfer& golfer, std::size_t club = 0) {
  return swingOf(golfer, golfer.clubs[club]).value();
}

TEST(MeasuredReach, IsMetToAMillimetre) {
  for (const double highest : {2.25, 2.40, 2.55, 2.70}) {
    for (const double behind : {1.85, 2.00, 2.20}) {
      const Swing swing = swingWith(measured(taped(highest), taped(behind)));
      EXPECT_TRUE(swing.measured);
      EXPECT_NEAR(swing.expected.figures.highest.value, highest, 1e-3);
      EXPECT_NEAR(swing.expected.figures.behindGolfer.value, behind, 1e-3);
    }
  }
}

TEST(MeasuredReach, IsMetByALeftHander) {
  const Swing swing = swingWith(measured(taped(2.50), taped(2.10), Hand::Left));
  EXPECT_NEAR(swing.expected.figures.highest.value, 2.50, 1e-3);
  EXPECT_NEAR(swing.expected.figures.behindGolfer.value, 2.10, 1e-3);
}

TEST(MeasuredReach, OfHeightAloneLeavesTheReachToFollow) {
  const Swing plain = swingOf(golferOf(1.80), bag()[0]).value();
  const double model = plain.expected.figures.highest.value;
  const Swing higher = swingWith(measured(taped(model + 0.10), std::nullopt));
  const Swing lower = swingWith(measured(taped(model - 0.05), std::nullopt));
  EXPECT_NEAR(higher.expected.figures.highest.value, model + 0.10, 1e-3);
  EXPECT_GT(higher.expected.figures.behindGolfer.value, plain.expected.figures.behindGolfer.value);
  EXPECT_LT(lower.expected.figures.behindGolfer.value, plain.expected.figures.behindGolfer.value);
}

TEST(MeasuredReach, OfReachAloneLeavesTheHeightToFollow) {
  const Swing plain = swingOf(golferOf(1.80), bag()[0]).value();
  const double model = plain.expected.figures.behindGolfer.value;
  const Swing wider = swingWith(measured(std::nullopt, taped(model + 0.10)));
  EXPECT_NEAR(wider.expected.figures.behindGolfer.value, model + 0.10, 1e-3);
  EXPECT_GT(wider.expected.figures.highest.value, plain.expected.figures.highest.value);
}

TEST(MeasuredReach, OfWhatTheModelSaysChangesNothing) {
  const Swing plain = swingOf(golferOf(1.80), bag()[0]).value();
  const Swing same = swingWith(measured(taped(plain.expected.figures.highest.value),
                                        taped(plain.expected.figures.behindGolfer.value)));
  const auto before = values(plain.expected.figures);
  const auto after = values(same.expected.figures);
  for (std::size_t i = 0; i < before.size(); ++i) EXPECT_NEAR(after[i], before[i], 2e-3);
}

TEST(MeasuredReach, CarriesOverToOtherClubs) {
  const Golfer plain = measured(std::nullopt, std::nullopt);
  const double modelled = swingWith(plain, 1).expected.figures.highest.value;
  const double driver = swingWith(plain, 0).expected.figures.highest.value;
  const Swing iron = swingWith(measured(taped(driver + 0.15), std::nullopt), 1);
  EXPECT_TRUE(iron.measured);
  EXPECT_GT(iron.expected.figures.highest.value, modelled + 0.08);
  EXPECT_LT(iron.expected.figures.highest.value, modelled + 0.18);
}

TEST(MeasuredReach, StillMeetsTheBall) {
  const Swing swing = swingWith(measured(taped(2.60), taped(1.90)));
  EXPECT_LT((clubAt(swing.path, placeAt(kImpactMoment)).head - Vec3(0, 0, kClubHeadRadius)).norm(), 1e-9);
}

TEST(MeasuredReach, StaysInsideTheFullExtension) {
  for (const double highest : {2.25, 2.55, 2.75}) {
    for (const double behind : {1.85, 2.10, 2.35}) {
      const Swing swing = swingWith(measured(taped(highest), taped(behind)));
      const auto expected = values(swing.expected.figures);
      const auto bound = values(swing.fullExtension.figures);
      for (std::size_t i = 0; i < bound.size(); ++i) EXPECT_GE(bound[i], expected[i]) << i;
    }
  }
}

TEST(MeasuredReach, MovesSteadilyWithTheTape) {
  double last = 0;
  for (double highest = 2.20; highest < 2.75; highest += 0.01) {
    const double behind =
        swingWith(measured(taped(highest), std::nullopt)).expected.figures.behindGolfer.value;
    EXPECT_GE(behind, last - 1e-3) << highest;
    if (last > 0) {
      EXPECT_LT(behind - last, 0.03) << highest;
    }
    last = behind;
  }
}

TEST(MeasuredReach, HasTheTapesAccuracyAndTheGolfersRepeatability) {
  const Swing both = swingWith(measured(taped(2.50), taped(2.10)));
  EXPECT_NEAR(both.expected.sigma, 0.020, 0.001);
  const Swing guess = swingWith(measured(guessed(2.50), taped(2.10)));
  EXPECT_NEAR(guess.expected.sigmaUp, 0.05, 0.001);  // a guess is no better than the model
}

TEST(MeasuredReach, InOneDirectionLeavesTheOtherUncertain) {
  const Swing swing = swingWith(measured(taped(2.50), std::nullopt));
  EXPECT_LT(swing.expected.sigmaUp, 0.025);
  EXPECT_NEAR(swing.expected.sigmaLevel, 0.05, 0.001);
  EXPECT_EQ(swing.expected.sigma, swing.expected.sigmaLevel);
  EXPECT_NEAR(swing.expected.sigmaAlong(Vec3::UnitZ()), swing.expected.sigmaUp, 1e-12);
  EXPECT_NEAR(swing.expected.sigmaAlong(Vec3::UnitY()), swing.expected.sigmaLevel, 1e-12);
}

TEST(MeasuredReach, IsLessCertainForAClubOfAnotherLength) {
  const Golfer golfer = measured(taped(2.50), taped(2.10));
  EXPECT_GT(swingWith(golfer, 1).expected.sigma, swingWith(golfer, 0).expected.sigma);
  EXPECT_LE(swingWith(golfer, 1).expected.sigma, swingOf(golferOf(1.80), bag()[3])->expected.sigma);
}

TEST(MeasuredReach, IsRefusedWhenNoSwingReachesIt) {
  for (const double highest : {1.6, 3.2}) {
    const Golfer golfer = measured(taped(highest), std::nullopt);
    const auto swing = swingOf(golfer, golfer.clubs[0]);
    ASSERT_FALSE(swing);
    EXPECT_NE(swing.error().what.find("m high"), std::string::npos) << swing.error().sentence();
    EXPECT_EQ(swing.error().where, "people / Robin / reach");
    EXPECT_FALSE(swing.error().next.empty());
  }
}

TEST(MeasuredReach, IsRefusedWhenItIsNoNumber) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const Golfer golfer = measured(taped(nan), taped(2.0));
  EXPECT_FALSE(swingOf(golfer, golfer.clubs[0]));
  const Golfer other = measured(taped(2.4), taped(nan));
  EXPECT_FALSE(swingOf(other, other.clubs[0]));
}

TEST(MeasuredReach, IsRefusedWithAClubThatIsNotInTheBag) {
  Golfer golfer = measured(taped(2.5), std::nullopt);
  golfer.reach->club = Id{77};
  const auto swing = swingOf(golfer, golfer.clubs[0]);
  ASSERT_FALSE(swing);
  EXPECT_NE(swing.error().what.find("not in the bag"), std::string::npos);
}

TEST(MeasuredReach, ThatIsNotKnownYetIsNotUsed) {
  const Golfer golfer = measured(notMeasured(2.9), notMeasured(0));
  const Swing swing = swingWith(golfer);
  EXPECT_FALSE(swing.measured);
  EXPECT_EQ(swing.expected, swingOf(golferOf(1.80), bag()[0])->expected);
}

}  // namespace
}  // namespace baywright
