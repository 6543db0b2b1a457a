// SPDX-License-Identifier: Apache-2.0
// Problems of statistics, from a job's text to its findings. JCGM 100:2008 (GUM) 5.1.2: independent parts add
// in quadrature. Normal distribution: the share within z standard deviations is erf(z / sqrt 2), 0.6827,
// 0.9545, 0.9973.
#include <cmath>

#include "textbook.h"

namespace baywright::reference {
namespace {

using namespace testing;

JobBuilder emptyHall() {
  JobBuilder builder = garage(12, 9);
  builder.withCeiling(5).bayAt(10, 4.5, 0).strikingFrom(3).withoutProjector().withoutMonitor();
  return builder;
}

// A height that was guessed, 50 mm, and a frame that is known to 120 mm: 130 mm (5-12-13), and 1.96 times
// that decides.
TEST(StatisticsProblem, TwoPartsInQuadrature) {
  const auto answer = [](double ceiling) {
    return Textbook(emptyHall().withCeiling(ceiling).with([&](Job& j) {
             j.room.ceiling[0].height = guessed(ceiling);
             j.options[0].kit.frame.tolerance = 0.12;
           }))
        .finding("frame_fit/above");
  };
  EXPECT_NEAR(answer(2.9).margin->sigma, 0.13, 1e-9);
  const double needed = 2.5 + 0.076 + 1.959964 * 0.13;
  EXPECT_EQ(answer(needed + 0.001).verdict, Verdict::Clear);
  EXPECT_EQ(answer(needed - 0.001).verdict, Verdict::Tight);
  EXPECT_EQ(answer(2.57).verdict, Verdict::Blocked);
}

// A class II tape may err by 0.3 + 0.2 L mm, L in whole metres rounded up (2014/32/EU, annex X), evenly:
// divided by sqrt 3 (GUM 4.3.7); with 2 mm for reading it.
TEST(StatisticsProblem, TapedHeight) {
  const Finding above = Textbook(emptyHall().withCeiling(2.9).with([](Job& j) {
                          j.room.ceiling[0].height = taped(2.9);
                          j.options[0].kit.frame.tolerance = 0;
                        })).finding("frame_fit/above");
  EXPECT_NEAR(above.margin->sigma, std::hypot(0.0009 / std::sqrt(3.0), 0.002), 1e-6);
}

// The ball's centre must stay a radius inside the screen: at 3 m that is atan((1.5 - r) / 3) to either side.
TEST(StatisticsProblem, ShareCaughtBetweenTheSides) {
  const double limit = std::atan((1.5 - 0.5 * 1.680 * 0.0254) / 3);
  for (const double z : {1.0, 2.0, 3.0}) {
    const Textbook answer(emptyHall().with([&](Job& j) {
      j.requirements.dispersionUp = 0.001;
      j.requirements.dispersionSide = limit / z;
    }));
    EXPECT_NEAR(answer["ball.right.share.screen"], std::erf(z / std::sqrt(2.0)), 3e-4) << z;
  }
}

// Between the lower and the upper edge: the launch angles that just touch them are read off the heights that
// the program gives for single shots; the share between them is the normal distribution's.
TEST(StatisticsProblem, ShareCaughtBetweenTopAndBottom) {
  const double radius = 0.5 * 1.680 * 0.0254;
  const auto heightAt = [](double launch) {
    return Textbook(
        emptyHall().with([&](Job& j) { j.requirements.meanLaunch = launch; }))["ball.right.height_at_screen"];
  };
  const auto launchFor = [&](double height) {
    double low = -0.1;
    double high = 1.0;
    for (int i = 0; i < 24; ++i) (heightAt(0.5 * (low + high)) < height ? low : high) = 0.5 * (low + high);
    return 0.5 * (low + high);
  };
  const double lowest = launchFor(0.05 + radius);
  const double highest = launchFor(0.05 + 2.25 - radius);
  const double mean = 0.45;
  const double sigma = 0.20;
  const auto below = [&](double angle) {
    return 0.5 * (1 + std::erf((angle - mean) / (sigma * std::sqrt(2.0))));
  };
  const Textbook answer(emptyHall().with([&](Job& j) {
    j.requirements.meanLaunch = mean;
    j.requirements.dispersionUp = sigma;
    j.requirements.dispersionSide = 0.001;
  }));
  EXPECT_NEAR(answer["ball.right.share.screen"], below(highest) - below(lowest), 2e-3);
}

// Shares of one dispersion add up.
TEST(StatisticsProblem, SharesAddUpToOne) {
  const Textbook answer(emptyHall().with([](Job& j) { j.requirements.dispersionUp = 0.3; }));
  double sum = 0;
  for (const Quantity& figure : answer.assessment.quantities) {
    if (figure.name.starts_with("ball.right.share.")) sum += figure.value;
  }
  EXPECT_NEAR(sum, 1, 1e-6);
}

}  // namespace
}  // namespace baywright::reference
