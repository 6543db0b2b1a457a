// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "base/problem.h"
#include "base/progress.h"

namespace baywright {

/// What to adjust: find x so that the weighted sum of squares of residuals(x) = observed - computed(x) is
/// least. Residual i has the standard deviation sigma(i) > 0 and is independent of the others.
struct LeastSquaresProblem {
  /// residuals(x), always of the size of `sigmas`.
  std::function<Eigen::VectorXd(const Eigen::VectorXd&)> residuals;
  /// d residuals / d x, one row an observation. Empty: central differences are used.
  std::function<Eigen::MatrixXd(const Eigen::VectorXd&)> jacobian;
  Eigen::VectorXd sigmas;
  Eigen::VectorXd start;
  /// Names for sentences, one a parameter ("corner C, x"); may be empty.
  std::vector<std::string> names;
};

struct LeastSquaresOptions {
  int maxIterations = 100;
  /// Done when a step would move every computed observation, taken together, by less than this many of their
  /// sigmas, or by less than their rounding.
  double stepInSigmas = 1e-9;
  /// Typical size of a parameter that may be zero, in its own unit: a metre for coordinates. Only the steps
  /// of numerical differences depend on it.
  double parameterScale = 1;
  /// What rounding may leave of one residual, in the observations' own unit: a picometre is what doubles lose
  /// over some kilometres. A step that gains less is the last one, and a rise of the squares by less is no
  /// failure. Where the parameters are so large that their own rounding is more, that is taken.
  double residualRounding = 1e-12;
};

/// The adjusted parameters and how far to trust them. Below, P = diag(1 / sigmas^2) and A holds the
/// derivatives of what is computed.
struct LeastSquaresFit {
  Eigen::VectorXd solution;
  Eigen::VectorXd residuals;  ///< observed - computed, in the observations' units
  /// A-priori covariance (A^T P A)^-1: what the sigmas promise, whatever the residuals came out as.
  Eigen::MatrixXd covariance;
  /// Redundancy numbers, diagonal of Q_vv P, each 0..1: the share of an observation's error that shows in its
  /// own residual. 0: nothing checks it. They sum to degreesOfFreedom. (Baarda; e.g. Ghilani, Adjustment
  /// Computations, 5th ed., section 21.3.)
  Eigen::VectorXd redundancy;
  int degreesOfFreedom = 0;    ///< observations - parameters
  double weightedSquares = 0;  ///< v^T P v; about degreesOfFreedom when the sigmas are honest
  int iterations = 0;

  /// sqrt(v^T P v / dof): about 1 when the sigmas are honest; empty when nothing is redundant.
  std::optional<double> unitWeightSigma() const;
};

/// Gauss-Newton with Levenberg's damping when a step would not improve. Refused with a sentence: sizes that
/// do not fit, sigmas that are not positive, fewer observations than parameters, a parameter that the
/// observations do not determine (named), no convergence in maxIterations, residuals that are not finite at
/// the start.
Result<LeastSquaresFit> leastSquares(const LeastSquaresProblem& problem,
                                     const LeastSquaresOptions& options = {}, const Progress& progress = {});

}  // namespace baywright
