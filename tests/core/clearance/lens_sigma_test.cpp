// SPDX-License-Identifier: Apache-2.0
#include "clearance/lens_sigma.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

TEST(LensSigma, OfTheWidthIsThatOfTheDistanceOverTheThrowRatio) {
  const Job job = roomyHall().withProjector(1.2, {-3.6, 0, 2.3}).job();
  const double sigma = sigmaFromLens(job.option(), [](const Picture& p) { return p.width; });
  EXPECT_NEAR(sigma, job.option().placement.sigma / 1.2, 1e-9);
}

TEST(LensSigma, AgreesWithMonteCarlo) {
  const Job job = roomyHall()
                      .withProjector(1.2, {-3.6, 0.2, 2.3})
                      .with([](Job& j) {
                        j.options[0].placement.projector.pitch = -6_deg;
                        j.options[0].placement.projector.yaw = 3_deg;
                      })
                      .job();
  const auto figure = [](const Picture& p) { return p.coverage; };
  std::mt19937 random(3);
  std::normal_distribution<double> n;
  double sum = 0;
  double squares = 0;
  const int draws = 4000;
  for (int i = 0; i < draws; ++i) {
    ProjectorMount mount = job.option().placement.projector;
    mount.lens += job.option().placement.sigma * Vec3(n(random), n(random), n(random));
    const double value = figure(*pictureOf(job.option().kit.screen, job.option().kit.projector, mount));
    sum += value;
    squares += value * value;
  }
  const double expected = std::sqrt(squares / draws - (sum / draws) * (sum / draws));
  EXPECT_NEAR(sigmaFromLens(job.option(), figure), expected, 0.06 * expected);
}

}  // namespace
}  // namespace baywright
