// SPDX-License-Identifier: Apache-2.0
#include "swing/envelope.h"

#include <gtest/gtest.h>

#include <limits>

#include "swings.h"

namespace baywright {
namespace {

constexpr const char* kFigures[] = {"highest", "behind", "toward", "away", "beyond"};

void expectNotLess(const EnvelopeFigures& more, const EnvelopeFigures& less, const std::string& what) {
  const auto a = values(more);
  const auto b = values(less);
  for (std::size_t i = 0; i < a.size(); ++i) EXPECT_GE(a[i], b[i] - 1e-9) << kFigures[i] << " " << what;
}

TEST(Envelope, IsMirroredExactlyForTheOtherHand) {
  for (const Club& club : bag()) {
    const Swing right = swingOf(golferOf(1.80), club).value();
    const Swing left = swingOf(golferOf(1.80, Hand::Left), club).value();
    for (const auto& [r, l] :
         {std::pair{&right.expected, &left.expected}, {&right.fullExtension, &left.fullExtension}}) {
      ASSERT_EQ(r->capsules.size(), l->capsules.size());
      for (std::size_t i = 0; i < r->capsules.size(); ++i) {
        SwingCapsule mirrored = r->capsules[i];
        mirrored.capsule.a.y() *= -1;
        mirrored.capsule.b.y() *= -1;
        EXPECT_EQ(mirrored, l->capsules[i]);
      }
      EXPECT_EQ(values(r->figures), values(l->figures));
      EXPECT_EQ(r->figures.highest.at.y(), -l->figures.highest.at.y());
    }
  }
}

TEST(Envelope, GrowsWithStature) {
  for (const Club& club : bag()) {
    for (double stature = 1.45; stature < 2.095; stature += 0.01) {
      const Swing shorter = swingOf(golferOf(stature), club).value();
      const Swing taller = swingOf(golferOf(stature + 0.01), club).value();
      const std::string what = club.name + " " + std::to_string(stature);
      expectNotLess(taller.expected.figures, shorter.expected.figures, what);
      expectNotLess(taller.fullExtension.figures, shorter.fullExtension.figures, "bound " + what);
    }
  }
}

TEST(Envelope, GrowsWithTheClub) {
  for (const double stature : {1.0, 1.45, 1.60, 1.755, 1.90, 2.10}) {
    for (const double lie : {56.0, 60.0, 64.0}) {
      Club club = clubOf("", 0, lie);
      for (double length = 0.75; length < 1.24; length += 0.01) {
        club.length = length;
        const Swing shorter = swingOf(golferOf(stature), club).value();
        club.length = length + 0.01;
        const Swing longer = swingOf(golferOf(stature), club).value();
        const std::string what = std::to_string(stature) + " " + std::to_string(length);
        expectNotLess(longer.expected.figures, shorter.expected.figures, what);
        expectNotLess(longer.fullExtension.figures, shorter.fullExtension.figures, "bound " + what);
      }
    }
  }
}

TEST(Envelope, IsContinuousInEveryInput) {
  const Golfer golfer = golferOf(1.70);
  const Club club = bag()[0];
  const auto base = values(swingOf(golfer, club)->expected.figures);
  Club longer = club;
  longer.length += 1e-6;
  Club flatter = club;
  flatter.lie -= 1e-6;
  for (const auto& near : {values(swingOf(golferOf(1.70 + 1e-6), club)->expected.figures),
                           values(swingOf(golfer, longer)->expected.figures),
                           values(swingOf(golfer, flatter)->expected.figures)}) {
    for (std::size_t i = 0; i < base.size(); ++i) EXPECT_NEAR(near[i], base[i], 1e-5);
  }
}

TEST(Envelope, LiesWithinTheFullExtension) {
  for (double stature = 1.0; stature <= 2.3; stature += 0.1) {
    for (double length = 0.457; length <= 1.25; length += 0.06) {
      for (const double lie : {0.7, 0.9, 1.1, 1.3}) {
        const Swing swing =
            swingOf(golferOf(stature), {.id = {}, .name = "", .length = length, .lie = lie}).value();
        expectNotLess(swing.fullExtension.figures, swing.expected.figures,
                      std::to_string(stature) + " " + std::to_string(length) + " " + std::to_string(lie));
      }
    }
  }
}

TEST(Envelope, TellsWhenAndWithWhatItReachesFarthest) {
  const EnvelopeFigures figures = swingOf(golferOf(1.80), bag()[0])->expected.figures;
  EXPECT_EQ(figures.highest.part, BodyPart::ClubHead);
  EXPECT_EQ(figures.behindGolfer.part, BodyPart::ClubHead);
  EXPECT_EQ(phaseAt(figures.awayFromTarget.moment), SwingPhase::Backswing);
  EXPECT_EQ(phaseAt(figures.towardTarget.moment), SwingPhase::FollowThrough);
  EXPECT_NEAR(figures.highest.at.z(), figures.highest.value, 1e-12);
  EXPECT_NEAR(figures.beyondBall.value, kClubHeadRadius, 0.012);
}

TEST(Envelope, HasTheSameBitsEachTime) {
  EXPECT_EQ(*swingOf(golferOf(1.83), bag()[2]), *swingOf(golferOf(1.83), bag()[2]));
}

TEST(Envelope, IsNoMoreCertainThanTheStature) {
  Golfer golfer = golferOf(1.80);
  const double tapedSigma = swingOf(golfer, bag()[0])->expected.sigma;
  EXPECT_NEAR(tapedSigma, 0.05, 0.001);
  golfer.stature = guessed(1.80);
  EXPECT_GT(swingOf(golfer, bag()[0])->expected.sigma, tapedSigma + 0.003);
}

TEST(Envelope, TakesTheStaturesUncertaintyByItsDerivative) {
  for (const double stature : {1.55, 1.70, 1.80, 1.95}) {
    for (const Club& club : {bag()[0], bag()[3]}) {
      const auto low = values(swingOf(golferOf(stature - 0.01), club)->expected.figures);
      const auto high = values(swingOf(golferOf(stature + 0.01), club)->expected.figures);
      Golfer golfer = golferOf(stature);
      golfer.stature = guessed(stature);
      const SwingEnvelope guess = swingOf(golfer, club)->expected;
      const double statureSigma = golfer.stature.uncertain().sigma;
      EXPECT_NEAR(guess.sigmaUp, std::hypot(0.05, statureSigma * (high[0] - low[0]) / 0.02), 0.008)
          << stature;
      EXPECT_NEAR(guess.sigmaLevel, std::hypot(0.05, statureSigma * (high[1] - low[1]) / 0.02), 0.008)
          << stature;
    }
  }
}

TEST(Envelope, PosesTheExpectedSwing) {
  const Swing swing = swingOf(golferOf(1.80), bag()[0]).value();
  EXPECT_EQ(poseAt(swing, 0.5), poseAt(swing.path, 0.5));
  EXPECT_NE(poseAt(swing, 0.5), poseAt(swing.fullPath, 0.5));
}

TEST(Envelope, RefusesAnUnknownStature) {
  Golfer golfer = golferOf(1.80);
  golfer.stature = notMeasured(1.80);
  const auto swing = swingOf(golfer, bag()[0]);
  ASSERT_FALSE(swing);
  EXPECT_EQ(swing.error().where, "people / Robin / stature");
  EXPECT_FALSE(swing.error().next.empty());
}

TEST(Envelope, RefusesWhatLiesOutsideItsRange) {
  const Club driver = bag()[0];
  for (const double stature :
       {0.99, 2.31, -1.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()})
    EXPECT_FALSE(swingOf(golferOf(stature), driver)) << stature;
  for (const double length : {0.45, 1.26, std::numeric_limits<double>::quiet_NaN()}) {
    Club club = driver;
    club.length = length;
    const auto swing = swingOf(golferOf(1.80), club);
    ASSERT_FALSE(swing) << length;
    EXPECT_EQ(swing.error().where, "people / Robin / Driver / length");
  }
  for (const double lie : {0.69, 1.31, std::numeric_limits<double>::quiet_NaN()}) {
    Club club = driver;
    club.lie = lie;
    const auto swing = swingOf(golferOf(1.80), club);
    ASSERT_FALSE(swing) << lie;
    EXPECT_NE(swing.error().what.find("°"), std::string::npos) << swing.error().sentence();
  }
}

TEST(Envelope, NamesTheNumberThatItRefuses) {
  EXPECT_EQ(
      swingOf(golferOf(2.5), bag()[0]).error().sentence(),
      "people / Robin / stature: A stature of 2.500 m is outside 1.000 m to 2.300 m, for which swings are "
      "known. Correct it.");
}

}  // namespace
}  // namespace baywright
