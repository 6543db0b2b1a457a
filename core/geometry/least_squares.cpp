// SPDX-License-Identifier: Apache-2.0
#include "geometry/least_squares.h"

#include <Eigen/QR>
#include <algorithm>
#include <cmath>
#include <limits>

namespace baywright {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

/// A pivot below this share of the largest, with columns of unit length: some parameters can shift together
/// without moving any observation by more than the rounding of a numerical derivative.
constexpr double kUndetermined = 1e-9;
/// Damping at the first step that fails, and the factor by which it grows and shrinks (Marquardt 1963).
constexpr double kFirstDamping = 1e-4;
constexpr double kDampingFactor = 10;
/// Damping beyond which no step of any useful length is left.
constexpr double kMostDamping = 1e12;
/// Share of a parameter, and of the residuals taken together, that is rounding: a smaller step is none, a
/// smaller rise no failure.
constexpr double kRounding = 1e-13;

/// The problem with every row divided by its sigma.
class Weighted {
 public:
  Weighted(const LeastSquaresProblem& problem, double parameterScale)
      : problem_(problem), parameterScale_(parameterScale) {}

  VectorXd residuals(const VectorXd& x) const { return problem_.residuals(x).cwiseQuotient(problem_.sigmas); }

  MatrixXd jacobian(const VectorXd& x) const {
    const MatrixXd rows = problem_.jacobian ? problem_.jacobian(x) : differences(x);
    return problem_.sigmas.cwiseInverse().asDiagonal() * rows;
  }

 private:
  MatrixXd differences(const VectorXd& x) const {
    // The cube root of the rounding unit balances truncation and rounding of a central difference.
    const double share = std::cbrt(std::numeric_limits<double>::epsilon());
    MatrixXd rows(problem_.sigmas.size(), x.size());
    for (Index i = 0; i < x.size(); ++i) {
      VectorXd high = x;
      VectorXd low = x;
      const double step = share * (std::abs(x(i)) + parameterScale_);
      high(i) += step;
      low(i) -= step;
      rows.col(i) = (problem_.residuals(high) - problem_.residuals(low)) / (high(i) - low(i));
    }
    return rows;
  }

  const LeastSquaresProblem& problem_;
  double parameterScale_;
};

VectorXd columnLengths(const MatrixXd& jacobian) {
  return jacobian.colwise().norm().transpose().unaryExpr(
      [](double length) { return length > 0 ? length : 1; });
}

/// Least ||residuals + jacobian * step||^2 + damping * ||scaled step||^2.
VectorXd stepOf(const MatrixXd& jacobian, const VectorXd& residuals, double damping) {
  const Index rows = jacobian.rows();
  const Index columns = jacobian.cols();
  const VectorXd lengths = columnLengths(jacobian);
  MatrixXd system = MatrixXd::Zero(rows + columns, columns);
  system.topRows(rows) = jacobian * lengths.cwiseInverse().asDiagonal();
  system.bottomRows(columns).diagonal().setConstant(std::sqrt(damping));
  VectorXd target = VectorXd::Zero(rows + columns);
  target.head(rows) = -residuals;
  Eigen::ColPivHouseholderQR<MatrixXd> qr(system);
  qr.setThreshold(kUndetermined);
  return qr.solve(target).cwiseQuotient(lengths);
}

/// What rounding may leave of all weighted residuals together. Observations are taken to be computed from
/// numbers as large as the parameters, in a handful of operations.
double roundingOf(const LeastSquaresProblem& problem, const LeastSquaresOptions& options, const VectorXd& x) {
  constexpr double kOperations = 8;
  const double byParameters = kOperations * std::numeric_limits<double>::epsilon() * x.cwiseAbs().maxCoeff();
  return std::max(options.residualRounding, byParameters) * problem.sigmas.cwiseInverse().norm();
}

bool negligible(const VectorXd& step, const VectorXd& x, double parameterScale) {
  return (step.array().abs() <= kRounding * (x.array().abs() + parameterScale)).all();
}

Result<void> checkSizes(const LeastSquaresProblem& problem) {
  const Index parameters = problem.start.size();
  const Index observations = problem.sigmas.size();
  if (!problem.residuals || parameters == 0) return fail("There is nothing to adjust.");
  if (observations < parameters) {
    return fail("There are fewer observations (" + std::to_string(observations) + ") than unknowns (" +
                    std::to_string(parameters) + ").",
                {}, "Measure more.");
  }
  for (Index i = 0; i < observations; ++i) {
    if (!(problem.sigmas(i) > 0) || !std::isfinite(problem.sigmas(i))) {
      return fail("An observation's standard deviation must be a positive number.",
                  "observation " + std::to_string(i + 1));
    }
  }
  const VectorXd residuals = problem.residuals(problem.start);
  if (residuals.size() != observations) return fail("Residuals and standard deviations differ in number.");
  if (!residuals.allFinite()) return fail("The residuals at the starting values are not finite.");
  return {};
}

std::string nameOf(const LeastSquaresProblem& problem, Index index) {
  const auto i = static_cast<std::size_t>(index);
  return i < problem.names.size() ? problem.names[i] : "unknown " + std::to_string(i + 1);
}

/// Names of the parameters that move most along the direction that no observation sees.
std::string undetermined(const LeastSquaresProblem& problem, const VectorXd& direction) {
  const double most = direction.cwiseAbs().maxCoeff();
  std::string names;
  for (Index i = 0; i < direction.size(); ++i) {
    if (std::abs(direction(i)) < 0.5 * most) continue;
    names += (names.empty() ? "" : ", ") + nameOf(problem, i);
  }
  return names;
}

/// The shift of the parameters that the observations do not see, when the last pivot vanishes: the last
/// parameter in pivot order moves by 1, those before it make up for it.
VectorXd unseenShift(const Eigen::ColPivHouseholderQR<MatrixXd>& qr) {
  const Index last = qr.cols() - 1;
  const Index seen = std::min(qr.rank(), last);
  VectorXd shift = VectorXd::Zero(qr.cols());
  shift(seen) = 1;
  const VectorXd column = qr.matrixR().col(seen).head(seen);
  shift.head(seen) = -qr.matrixR().topLeftCorner(seen, seen).triangularView<Eigen::Upper>().solve(column);
  return qr.colsPermutation() * shift;
}

/// Covariance and redundancy by orthogonal factors of the weighted design with columns of unit length.
Result<LeastSquaresFit> judged(const LeastSquaresProblem& problem, const VectorXd& x,
                               const MatrixXd& jacobian) {
  const Index columns = jacobian.cols();
  const VectorXd lengths = columnLengths(jacobian);
  Eigen::ColPivHouseholderQR<MatrixXd> qr(jacobian * lengths.cwiseInverse().asDiagonal());
  qr.setThreshold(kUndetermined);
  if (qr.rank() < columns) {
    return fail("The observations do not determine: " + undetermined(problem, unseenShift(qr)) + ".", {},
                "Measure something more that involves them.");
  }
  LeastSquaresFit fit;
  fit.solution = x;
  fit.residuals = problem.residuals(x);
  const MatrixXd inverse = qr.matrixR()
                               .topLeftCorner(columns, columns)
                               .triangularView<Eigen::Upper>()
                               .solve(MatrixXd::Identity(columns, columns));
  const MatrixXd root = lengths.cwiseInverse().asDiagonal() * (qr.colsPermutation() * inverse);
  fit.covariance = root * root.transpose();
  const MatrixXd basis = qr.householderQ() * MatrixXd::Identity(jacobian.rows(), columns);
  fit.redundancy = (1 - basis.rowwise().squaredNorm().array()).max(0).matrix();
  fit.degreesOfFreedom = static_cast<int>(jacobian.rows() - columns);
  fit.weightedSquares = fit.residuals.cwiseQuotient(problem.sigmas).squaredNorm();
  return fit;
}

}  // namespace

std::optional<double> LeastSquaresFit::unitWeightSigma() const {
  if (degreesOfFreedom <= 0) return std::nullopt;
  return std::sqrt(weightedSquares / degreesOfFreedom);
}

Result<LeastSquaresFit> leastSquares(const LeastSquaresProblem& problem, const LeastSquaresOptions& options,
                                     const Progress& progress) {
  if (const auto ok = checkSizes(problem); !ok) return tl::unexpected(ok.error());
  const Weighted weighted(problem, options.parameterScale);
  VectorXd x = problem.start;
  VectorXd residuals = weighted.residuals(x);
  MatrixXd jacobian = weighted.jacobian(x);
  double damping = 0;
  for (int iteration = 1; iteration <= options.maxIterations; ++iteration) {
    if (progress.stop()) return fail("The adjustment was cancelled.");
    if (!jacobian.allFinite()) return fail("The adjustment met a value that is not finite.");
    // Whether there is anything left to gain is judged without damping, which shortens every step.
    const VectorXd full = stepOf(jacobian, residuals, 0);
    const double rounding = roundingOf(problem, options, x);
    const bool arrived = (jacobian * full).norm() <= std::max(options.stepInSigmas, rounding) ||
                         negligible(full, x, options.parameterScale);
    const VectorXd step = damping > 0 ? stepOf(jacobian, residuals, damping) : full;
    const VectorXd next = weighted.residuals(x + step);
    const double noRise = (1 + kRounding) * residuals.norm() + rounding;
    if (next.allFinite() && next.norm() <= noRise) {
      x += step;
      residuals = next;
      jacobian = weighted.jacobian(x);
      damping = damping <= kFirstDamping ? 0 : damping / kDampingFactor;
    } else if (!arrived) {
      damping = std::max(kFirstDamping, damping * kDampingFactor);
    }
    if (damping > kMostDamping) break;
    if (!arrived) continue;
    auto fit = judged(problem, x, jacobian);
    if (fit) fit->iterations = iteration;
    return fit;
  }
  return fail("The adjustment does not settle on a solution.", {},
              "Start nearer to it, or look for a gross error in the observations.");
}

}  // namespace baywright
