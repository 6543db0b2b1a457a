// SPDX-License-Identifier: Apache-2.0
#include "survey/assumptions.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

#include "job/dimension.h"
#include "survey/adjustment.h"

namespace baywright {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

/// An angle (radians) or a length (metres) that moves less than this for each metre along an open direction
/// has nothing to do with it.
constexpr double kMoves = 1e-3;
/// Within this of a multiple of 45 degrees a corner was meant to be there. Radians (12 degrees).
constexpr double kMeant = 12 * kPi / 180;
/// A drawn angle that is no multiple of 45 degrees is as good as the eye that drew it. Radians (3 degrees).
constexpr double kDrawnAngleSigma = 3 * kPi / 180;

/// Directions among the unknowns, as columns, along which the observations leave more than kOpen.
MatrixXd openDirections(const std::vector<Observation>& observations, const Ring& corners) {
  MatrixXd rows = SurveyFrame::design(observations, corners);
  for (Index i = 0; i < rows.rows(); ++i) rows.row(i) /= observations[static_cast<std::size_t>(i)].sigma;
  const Eigen::SelfAdjointEigenSolver<MatrixXd> solver(rows.transpose() * rows);
  const VectorXd& values = solver.eigenvalues();  // increasing
  Index open = 0;
  while (open < values.size() && values(open) < 1 / (kOpen * kOpen)) ++open;
  return solver.eigenvectors().leftCols(open);
}

bool moves(const Observation& observation, const Ring& corners, const MatrixXd& directions) {
  return (SurveyFrame::design({observation}, corners) * directions).norm() > kMoves;
}

Observation innerAngle(const SurveyNetwork& network, int corner, const Ring& start) {
  Observation made;
  made.kind = ObservationKind::Angle;
  made.at = corner;
  made.from = network.next(corner);
  made.to = network.before(corner);
  made.what = "assumed angle at " + network.names[corner];
  const double now = observed(made, start);
  const double meant = std::round(now / (kPi / 4)) * (kPi / 4);
  const bool isMeant = std::abs(now - meant) < kMeant;
  made.value = isMeant ? meant : now;
  made.sigma = isMeant ? kSquareSigma : kDrawnAngleSigma;
  return made;
}

Observation drawnLength(const SurveyNetwork& network, int wall, const Ring& drawn) {
  Observation made;
  made.from = wall;
  made.to = network.next(wall);
  made.value = observed(made, drawn);
  made.sigma = instrumentSigma(Instrument::Guess, made.value);
  made.what = "drawn length of wall " + network.names[wall];
  return made;
}

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

std::string angleNote(const std::vector<std::string>& square, const std::vector<std::string>& others) {
  std::string note = "Nothing that was read says which angle there is at ";
  std::vector<std::string> all = square;
  all.insert(all.end(), others.begin(), others.end());
  note += std::string(all.size() == 1 ? "corner " : "corners ") + listed(all) + ": ";
  if (!square.empty()) {
    note += (others.empty() ? std::string(square.size() == 1 ? "it is" : "they are")
                            : listed(square) + (square.size() == 1 ? " is" : " are")) +
            " taken as square to within half a degree";
    if (!others.empty()) note += ", ";
  }
  if (!others.empty())
    note += (square.empty() ? "" : listed(others) + " ") +
            std::string("taken as 45, 135 or 180 degrees, or as drawn");
  return note + ". A diagonal would say.";
}

bool isSquare(double angle) {
  return std::abs(std::remainder(angle - kPi / 2, kPi)) < 1e-9;
}

}  // namespace

VectorXd SurveyFrame::unknownsOf(const Ring& corners) {
  VectorXd x(2 * static_cast<Index>(corners.size()) - 3);
  x(0) = corners[1].x();
  for (std::size_t i = 2; i < corners.size(); ++i) x.segment<2>(2 * static_cast<Index>(i) - 3) = corners[i];
  return x;
}

Ring SurveyFrame::cornersOf(const VectorXd& unknowns) {
  Ring corners{{0, 0}, {unknowns(0), 0}};
  for (Index i = 1; i + 1 < unknowns.size(); i += 2) corners.push_back(unknowns.segment<2>(i));
  return corners;
}

MatrixXd SurveyFrame::design(const std::vector<Observation>& observations, const Ring& corners) {
  const Index unknowns = 2 * static_cast<Index>(corners.size()) - 3;
  MatrixXd rows(static_cast<Index>(observations.size()), unknowns);
  for (std::size_t i = 0; i < observations.size(); ++i) {
    const Eigen::RowVectorXd full = derivative(observations[i], corners);
    rows(static_cast<Index>(i), 0) = full(2);
    rows.row(static_cast<Index>(i)).tail(unknowns - 1) = full.tail(unknowns - 1);
  }
  return rows;
}

std::vector<std::string> SurveyFrame::names(const SurveyNetwork& network) {
  std::vector<std::string> names{"corner " + network.names[1]};
  for (std::size_t i = 2; i < network.names.size(); ++i) {
    names.push_back("corner " + network.names[i] + " along the first wall");
    names.push_back("corner " + network.names[i] + " across the first wall");
  }
  return names;
}

MatrixXd SurveyFrame::withDatum(const MatrixXd& covariance) {
  const Index inner = covariance.rows();
  MatrixXd all = MatrixXd::Zero(inner + 3, inner + 3);
  all(2, 2) = covariance(0, 0);
  all.bottomRightCorner(inner - 1, inner - 1) = covariance.bottomRightCorner(inner - 1, inner - 1);
  all.block(2, 4, 1, inner - 1) = covariance.block(0, 1, 1, inner - 1);
  all.block(4, 2, inner - 1, 1) = covariance.block(1, 0, inner - 1, 1);
  return all;
}

Assumptions assumptionsFor(const SurveyNetwork& network, const std::vector<Observation>& read,
                           const Ring& start, const Ring& drawn) {
  Assumptions made;
  std::vector<Observation> all = read;
  const auto assume = [&](const Observation& observation) {
    made.observations.push_back(observation);
    all.push_back(observation);
  };
  MatrixXd open = openDirections(all, start);
  if (open.cols() == 0) return made;
  std::vector<std::string> square;
  std::vector<std::string> others;
  for (int corner = 0; corner < network.size(); ++corner) {
    const Observation angle = innerAngle(network, corner, start);
    if (!moves(angle, start, open)) continue;
    assume(angle);
    (isSquare(angle.value) ? square : others).push_back(network.names[corner]);
  }
  if (!square.empty() || !others.empty()) made.notes.push_back(angleNote(square, others));

  open = openDirections(all, start);
  if (open.cols() > 0 && !drawn.empty()) {
    std::vector<std::string> walls;
    for (int wall = 0; wall < network.size(); ++wall) {
      const Observation length = drawnLength(network, wall, drawn);
      if (!moves(length, start, open)) continue;
      assume(length);
      walls.push_back(network.names[wall]);
    }
    if (!walls.empty())
      made.notes.push_back((walls.size() == 1 ? "Wall " : "Walls ") + listed(walls) +
                           (walls.size() == 1 ? " is" : " are") + " taken as drawn, as good as a guess.");
    open = openDirections(all, start);
  }
  if (open.cols() == 0) return made;
  const MatrixXd moved = SurveyFrame::withDatum(open * open.transpose());
  for (int corner = 0; corner < network.size(); ++corner)
    if (moved(2 * corner, 2 * corner) + moved(2 * corner + 1, 2 * corner + 1) > kMoves)
      made.open.push_back(network.names[corner]);
  return made;
}

}  // namespace baywright
