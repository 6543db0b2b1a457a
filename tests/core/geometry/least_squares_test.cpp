// SPDX-License-Identifier: Apache-2.0
#include "geometry/least_squares.h"

#include <gtest/gtest.h>

#include <Eigen/LU>
#include <random>

namespace baywright {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// Line y = x(0) + x(1) t through readings at t = 0, 1, 2, ...
LeastSquaresProblem lineThrough(const VectorXd& readings, const VectorXd& sigmas) {
  LeastSquaresProblem problem;
  problem.residuals = [readings](const VectorXd& x) {
    VectorXd v(readings.size());
    for (Eigen::Index i = 0; i < v.size(); ++i) v(i) = readings(i) - (x(0) + x(1) * static_cast<double>(i));
    return v;
  };
  problem.sigmas = sigmas;
  problem.start = VectorXd::Zero(2);
  return problem;
}

TEST(LeastSquares, WeightedMeanOfTwoReadings) {
  LeastSquaresProblem problem;
  problem.residuals = [](const VectorXd& x) -> VectorXd { return Eigen::Vector2d(10 - x(0), 13 - x(0)); };
  problem.sigmas = Eigen::Vector2d(1, 2);
  problem.start = VectorXd::Zero(1);
  const auto fit = leastSquares(problem);
  ASSERT_TRUE(fit);
  // Weights 1 and 1/4: mean (10 + 13/4) / 1.25, variance 1 / 1.25; redundancies 1 - w var.
  EXPECT_NEAR(fit->solution(0), 10.6, 1e-12);
  EXPECT_NEAR(fit->covariance(0, 0), 0.8, 1e-12);
  EXPECT_NEAR(fit->redundancy(0), 0.2, 1e-12);
  EXPECT_NEAR(fit->redundancy(1), 0.8, 1e-12);
  EXPECT_EQ(fit->degreesOfFreedom, 1);
  EXPECT_NEAR(fit->weightedSquares, 0.36 + 2.4 * 2.4 / 4, 1e-12);
  EXPECT_NEAR(fit->unitWeightSigma().value(), std::sqrt(1.8), 1e-12);
}

TEST(LeastSquares, LineAgreesWithTheNormalEquations) {
  const VectorXd readings = (VectorXd(5) << 1.1, 2.9, 5.2, 6.9, 9.05).finished();
  const VectorXd sigmas = (VectorXd(5) << 0.1, 0.2, 0.1, 0.3, 0.1).finished();
  const auto fit = leastSquares(lineThrough(readings, sigmas));
  ASSERT_TRUE(fit);
  MatrixXd a(5, 2);
  for (int i = 0; i < 5; ++i) a.row(i) << 1, i;
  const MatrixXd p = sigmas.cwiseProduct(sigmas).cwiseInverse().asDiagonal();
  const MatrixXd q = (a.transpose() * p * a).inverse();
  const VectorXd x = q * a.transpose() * p * readings;
  EXPECT_NEAR((fit->solution - x).norm(), 0, 1e-10);
  EXPECT_NEAR((fit->covariance - q).norm(), 0, 1e-12);
  const MatrixXd qvvP = MatrixXd::Identity(5, 5) - a * q * a.transpose() * p;
  EXPECT_NEAR((fit->redundancy - qvvP.diagonal()).norm(), 0, 1e-10);
  EXPECT_NEAR(fit->redundancy.sum(), 3, 1e-10);
  EXPECT_NEAR((fit->residuals - (readings - a * x)).norm(), 0, 1e-10);
}

TEST(LeastSquares, FindsACornerFromThreeTapesWithAndWithoutAJacobian) {
  const std::vector<Eigen::Vector2d> marks{{0, 0}, {5, 0}, {0, 4}};
  const Eigen::Vector2d corner(2.2, 3.1);
  LeastSquaresProblem problem;
  problem.residuals = [=](const VectorXd& x) {
    VectorXd v(3);
    for (int i = 0; i < 3; ++i) {
      const auto& mark = marks[static_cast<std::size_t>(i)];
      v(i) = (corner - mark).norm() - (x - mark).norm();
    }
    return v;
  };
  problem.sigmas = VectorXd::Constant(3, 0.002);
  problem.start = Eigen::Vector2d(4, 1);
  const auto numeric = leastSquares(problem);
  ASSERT_TRUE(numeric) << numeric.error().sentence();
  EXPECT_NEAR((numeric->solution - corner).norm(), 0, 1e-11);
  EXPECT_LT(numeric->iterations, 12);

  problem.jacobian = [=](const VectorXd& x) {
    MatrixXd j(3, 2);
    for (int i = 0; i < 3; ++i) {
      const auto& mark = marks[static_cast<std::size_t>(i)];
      j.row(i) = -(x - mark).normalized().transpose();
    }
    return j;
  };
  const auto given = leastSquares(problem);
  ASSERT_TRUE(given);
  EXPECT_NEAR((given->covariance - numeric->covariance).norm(), 0, 1e-6 * given->covariance.norm());
}

// The valley of Rosenbrock (1960): undamped steps overshoot it. Minimum at (1, 1).
TEST(LeastSquares, FollowsACurvedValley) {
  LeastSquaresProblem problem;
  problem.residuals = [](const VectorXd& x) -> VectorXd {
    return Eigen::Vector2d(10 * (x(1) - x(0) * x(0)), 1 - x(0));
  };
  problem.sigmas = VectorXd::Ones(2);
  problem.start = Eigen::Vector2d(-1.2, 1);
  const auto fit = leastSquares(problem);
  ASSERT_TRUE(fit) << fit.error().sentence();
  EXPECT_NEAR((fit->solution - Eigen::Vector2d(1, 1)).norm(), 0, 1e-9);
  EXPECT_FALSE(fit->unitWeightSigma()) << "nothing is redundant";
}

// Misra1a, NIST Statistical Reference Datasets, nonlinear regression
// (https://www.itl.nist.gov/div898/strd/nls/data/misra1a.shtml): y = b1 (1 - exp(-b2 x)). Its certified
// values are b1 = 2.3894212918E+02, b2 = 5.5015643181E-04 with the standard deviations 2.7070075241E+00
// and 7.2668688436E-06, and the residual sum of squares 1.2455138894E-01.
TEST(LeastSquares, ReproducesACertifiedNonlinearFit) {
  const std::vector<std::array<double, 2>> data{
      {10.07, 77.6},  {14.73, 114.9}, {17.94, 141.1}, {23.93, 190.8}, {29.61, 239.9},
      {35.18, 289.0}, {40.02, 332.8}, {44.82, 378.4}, {50.76, 434.8}, {55.05, 477.3},
      {61.01, 536.8}, {66.40, 593.1}, {75.47, 689.1}, {81.78, 760.0}};
  LeastSquaresProblem problem;
  problem.residuals = [data](const VectorXd& b) {
    VectorXd v(static_cast<Eigen::Index>(data.size()));
    for (Eigen::Index i = 0; i < v.size(); ++i) {
      const auto& [y, x] = data[static_cast<std::size_t>(i)];
      v(i) = y - b(0) * (1 - std::exp(-b(1) * x));
    }
    return v;
  };
  problem.sigmas = VectorXd::Ones(14);
  LeastSquaresOptions options;
  options.parameterScale = 1e-6;
  for (const Eigen::Vector2d& start : {Eigen::Vector2d(500, 1e-4), Eigen::Vector2d(250, 5e-4)}) {
    problem.start = start;
    const auto fit = leastSquares(problem, options);
    ASSERT_TRUE(fit) << fit.error().sentence();
    EXPECT_NEAR(fit->solution(0) / 2.3894212918E+02, 1, 1e-8);
    EXPECT_NEAR(fit->solution(1) / 5.5015643181E-04, 1, 1e-8);
    EXPECT_NEAR(fit->weightedSquares / 1.2455138894E-01, 1, 1e-9);
    const double s = fit->unitWeightSigma().value();
    EXPECT_NEAR(s * std::sqrt(fit->covariance(0, 0)) / 2.7070075241E+00, 1, 1e-6);
    EXPECT_NEAR(s * std::sqrt(fit->covariance(1, 1)) / 7.2668688436E-06, 1, 1e-6);
  }
}

// Tapes that do not quite agree, far from the origin or read to a micrometre: what rounding leaves of the
// squares is more than the last steps gain. At the solution the residuals stand square to every derivative.
TEST(LeastSquares, SettlesWhereRoundingHidesTheLastGain) {
  std::mt19937_64 bits(3);
  const auto share = [&] { return static_cast<double>(bits() >> 11) * 0x1p-53; };
  for (const double away : {0.0, 900.0, 5e6}) {
    for (const double sigma : {1e-3, 1e-6}) {
      for (int run = 0; run < 200; ++run) {
        const Eigen::Vector2d origin(away * share(), away * share());
        std::vector<Eigen::Vector2d> marks;
        for (int i = 0; i < 3; ++i) marks.push_back(origin + Eigen::Vector2d(6 * share(), 4 * share()));
        const Eigen::Vector2d corner = origin + Eigen::Vector2d(8 + 3 * share(), 3 * share() - 5);
        LeastSquaresProblem problem;
        problem.residuals = [&](const VectorXd& x) {
          VectorXd v(3);
          for (int i = 0; i < 3; ++i) {
            const auto& mark = marks[static_cast<std::size_t>(i)];
            v(i) = (corner - mark).norm() + sigma * (i == 1 ? 1.3 : -0.4) - (x - mark).norm();
          }
          return v;
        };
        problem.jacobian = [&](const VectorXd& x) {
          MatrixXd j(3, 2);
          for (int i = 0; i < 3; ++i) j.row(i) = (marks[static_cast<std::size_t>(i)] - x).normalized();
          return j;
        };
        problem.sigmas = VectorXd::Constant(3, sigma);
        problem.start = corner + Eigen::Vector2d(0.3, -0.2);
        const auto fit = leastSquares(problem);
        ASSERT_TRUE(fit) << fit.error().sentence() << " " << away << " m away, run " << run;
        const VectorXd slope = problem.jacobian(fit->solution).transpose() * fit->residuals / sigma;
        EXPECT_LT(slope.norm(), 1e-6 + 4e-9 * away / 5e6 / sigma) << away << " m away, run " << run;
      }
    }
  }
}

TEST(LeastSquares, NamesWhatNothingDetermines) {
  LeastSquaresProblem problem;
  problem.residuals = [](const VectorXd& x) -> VectorXd {
    return Eigen::Vector3d(1 - x(0), 1.1 - x(0), 5 - x(1));
  };
  problem.sigmas = VectorXd::Ones(3);
  problem.start = VectorXd::Zero(3);
  problem.names = {"corner A, x", "corner A, y", "corner B, x"};
  const auto fit = leastSquares(problem);
  ASSERT_FALSE(fit);
  EXPECT_NE(fit.error().what.find("determine: corner B, x."), std::string::npos) << fit.error().what;

  problem.residuals = [](const VectorXd& x) -> VectorXd {
    return Eigen::Vector3d(1 - x(0), 2 - x(1) - x(2), 2.1 - x(1) - x(2));
  };
  const auto pair = leastSquares(problem);
  ASSERT_FALSE(pair);
  EXPECT_NE(pair.error().what.find("corner A, y, corner B, x"), std::string::npos) << pair.error().what;
}

TEST(LeastSquares, SaysWhyItRefuses) {
  const auto sentence = [](const LeastSquaresProblem& problem) {
    const auto fit = leastSquares(problem);
    return fit ? std::string("none") : fit.error().sentence();
  };
  LeastSquaresProblem problem = lineThrough(Eigen::Vector3d(1, 2, 3), Eigen::Vector3d(1, 0, 1));
  EXPECT_NE(sentence(problem).find("observation 2: An observation's standard deviation"), std::string::npos);
  problem = lineThrough(VectorXd::Ones(1), VectorXd::Ones(1));
  EXPECT_NE(sentence(problem).find("fewer observations (1) than unknowns (2)"), std::string::npos);
  problem = lineThrough(VectorXd::Ones(3), VectorXd::Ones(4));
  EXPECT_NE(sentence(problem).find("differ in number"), std::string::npos);
  problem = lineThrough(Eigen::Vector3d(1, std::nan(""), 3), VectorXd::Ones(3));
  EXPECT_NE(sentence(problem).find("not finite"), std::string::npos);
  EXPECT_NE(sentence({}).find("nothing to adjust"), std::string::npos);
}

TEST(LeastSquares, StopsWhenAskedTo) {
  Progress progress;
  progress.cancelled = [] { return true; };
  const auto fit = leastSquares(lineThrough(VectorXd::Ones(3), VectorXd::Ones(3)), {}, progress);
  ASSERT_FALSE(fit);
  EXPECT_NE(fit.error().what.find("cancelled"), std::string::npos);
}

TEST(LeastSquares, CovarianceIsWhatRepeatedMeasuringShows) {
  const VectorXd sigmas = (VectorXd(4) << 0.1, 0.1, 0.3, 0.2).finished();
  std::mt19937_64 bits(9);
  // A sum of twelve uniform numbers less six: near enough normal, and the same everywhere.
  const auto normal = [&] {
    double sum = -6;
    for (int i = 0; i < 12; ++i) sum += static_cast<double>(bits() >> 11) * 0x1p-53;
    return sum;
  };
  MatrixXd scatter = MatrixXd::Zero(2, 2);
  MatrixXd promised;
  constexpr int kRuns = 4000;
  for (int run = 0; run < kRuns; ++run) {
    VectorXd readings(4);
    for (Eigen::Index i = 0; i < 4; ++i) readings(i) = 1 + 2 * static_cast<double>(i) + sigmas(i) * normal();
    const auto fit = leastSquares(lineThrough(readings, sigmas));
    const VectorXd off = fit->solution - Eigen::Vector2d(1, 2);
    scatter += off * off.transpose() / kRuns;
    promised = fit->covariance;
  }
  EXPECT_NEAR((scatter - promised).norm() / promised.norm(), 0, 0.06);
}

}  // namespace
}  // namespace baywright
