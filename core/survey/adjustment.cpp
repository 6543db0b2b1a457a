// SPDX-License-Identifier: Apache-2.0
#include "survey/adjustment.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/least_squares.h"
#include "geometry/polygon_validity.h"
#include "job/edit_room.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "job/validate.h"
#include "survey/assumptions.h"
#include "survey/chi_square.h"
#include "survey/network_start.h"

namespace baywright {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

/// Two floors are different when a corner differs by more, metres.
constexpr double kOtherShape = 0.1;
/// A hundred thousandth of an instrument's sigma is nanometres. Finer steps drown in the rounding of the sum
/// of squares, and a solver that asks for them may never be content.
constexpr double kSettled = 1e-5;
/// Starts that are followed to compare where they lead.
constexpr int kCompared = 4;
/// A redundancy below this is rounding: nothing checks the reading.
constexpr double kUnchecked = 1e-6;

/// One start followed to its end, in the survey's own frame.
struct Solution {
  std::vector<Observation> observations;  ///< read ones first, then assumed ones
  std::vector<std::string> notes;
  LeastSquaresFit fit;
  Ring corners;
  bool isFloor = false;  ///< counter-clockwise without crossings
  double tail = 1;

  /// Nothing was assumed but that corners are square.
  bool assumesSquareOnly() const {
    return std::all_of(observations.begin(), observations.end(), [](const Observation& o) {
      return !o.isAssumed() || (o.kind == ObservationKind::Angle && o.sigma == kSquareSigma &&
                                std::abs(std::remainder(o.value - kPi / 2, kPi)) < 1e-9);
    });
  }
};

Problem notDetermined(const std::vector<std::string>& corners) {
  std::string names;
  for (const std::string& name : corners) names += (names.empty() ? "" : ", ") + name;
  return {"The readings do not determine " + std::string(corners.size() == 1 ? "corner " : "corners ") +
              names + ".",
          "readings", "Measure the walls there, or a diagonal to each."};
}

Result<Solution> follow(const SurveyNetwork& network, const Ring& start, const Ring& drawn) {
  Solution made;
  made.observations = settled(network.observations, start);
  const Assumptions assumptions = assumptionsFor(network, made.observations, start, drawn);
  if (!assumptions.open.empty()) return tl::unexpected(notDetermined(assumptions.open));
  made.notes = assumptions.notes;
  made.observations.insert(made.observations.end(), assumptions.observations.begin(),
                           assumptions.observations.end());

  const auto& observations = made.observations;
  LeastSquaresProblem problem;
  problem.start = SurveyFrame::unknownsOf(start);
  problem.names = SurveyFrame::names(network);
  problem.sigmas.resize(static_cast<Index>(observations.size()));
  for (std::size_t i = 0; i < observations.size(); ++i)
    problem.sigmas(static_cast<Index>(i)) = observations[i].sigma;
  problem.residuals = [&](const VectorXd& x) {
    const Ring corners = SurveyFrame::cornersOf(x);
    VectorXd residuals(static_cast<Index>(observations.size()));
    for (std::size_t i = 0; i < observations.size(); ++i)
      residuals(static_cast<Index>(i)) = misclosure(observations[i], corners);
    return residuals;
  };
  // d residuals / d x of residuals observed - computed, as least_squares.h wants them.
  problem.jacobian = [&](const VectorXd& x) {
    return MatrixXd(-SurveyFrame::design(observations, SurveyFrame::cornersOf(x)));
  };
  LeastSquaresOptions options;
  options.stepInSigmas = kSettled;
  auto fit = leastSquares(problem, options);
  if (!fit) return tl::unexpected(fit.error());
  made.fit = std::move(*fit);
  made.corners = SurveyFrame::cornersOf(made.fit.solution);
  made.isFloor = signedArea(made.corners) > 0 && selfCrossings({made.corners, {}}).empty();
  made.tail = chiSquareTail(made.fit.weightedSquares, made.fit.degreesOfFreedom);
  return made;
}

double farthest(const Ring& a, const Ring& b) {
  double most = 0;
  for (std::size_t i = 0; i < a.size(); ++i) most = std::max(most, (a[i] - b[i]).norm());
  return most;
}

struct Choice {
  std::optional<Solution> best;
  std::optional<Problem> problem;  ///< of the first start that led nowhere
  bool isDoubtful = false;

  void offer(Result<Solution> made) {
    if (!made) {
      if (!problem) problem = made.error();
      return;
    }
    if (!best) {
      best = std::move(*made);
      return;
    }
    if (made->isFloor != best->isFloor) {
      if (made->isFloor) best = std::move(*made);
      return;
    }
    const double gain = best->fit.weightedSquares - made->fit.weightedSquares;
    const bool isOther = farthest(made->corners, best->corners) > kOtherShape;
    // Assumptions follow from where one starts, so they say nothing about which start is right: then the
    // likelier one stays unless the readings contradict it.
    const bool areRead = made->notes.empty() && best->notes.empty();
    if (!areRead && (best->tail > kContradicted || made->tail <= kContradicted)) {
      const bool asGood =
          made->tail > kContradicted && made->assumesSquareOnly() && best->assumesSquareOnly();
      if (isOther && asGood && made->isFloor) isDoubtful = true;
      return;
    }
    if (isOther && areRead && made->isFloor && std::abs(gain) < kAsGood) isDoubtful = true;
    if (areRead && gain <= kAsGood) return;
    best = std::move(*made);
    isDoubtful = false;
  }
  bool isGood() const { return best && best->isFloor && best->tail > kContradicted; }
};

/// Where the survey's own frame lies in the world.
struct Datum {
  Vec2 corner = Vec2::Zero();
  Vec2 along{1, 0};

  Vec2 world(const Vec2& local) const { return corner + local.x() * along + local.y() * leftOf(along); }
  Vec2 local(const Vec2& p) const { return {along.dot(p - corner), leftOf(along).dot(p - corner)}; }
};

Datum datumOf(const Ring& drawn) {
  if (drawn.size() < 2 || !((drawn[1] - drawn[0]).norm() > 0)) return {};
  return {drawn[0], (drawn[1] - drawn[0]).normalized()};
}

MatrixXd turned(const MatrixXd& covariance, const Vec2& along) {
  Mat2 turn;
  turn.col(0) = along;
  turn.col(1) = leftOf(along);
  MatrixXd result(covariance.rows(), covariance.cols());
  for (Index i = 0; i < covariance.rows(); i += 2)
    for (Index j = 0; j < covariance.cols(); j += 2)
      result.block<2, 2>(i, j) = turn * covariance.block<2, 2>(i, j) * turn.transpose();
  return result;
}

AdjustedReading readingOf(const Solution& solution, std::size_t index) {
  const Observation& o = solution.observations[index];
  const auto i = static_cast<Index>(index);
  AdjustedReading made;
  made.reading = o.reading;
  made.what = o.what;
  made.kind = o.kind;
  made.read = o.value;
  made.residual = -solution.fit.residuals(i);
  made.adjusted = o.value + made.residual;
  made.sigma = o.sigma;
  made.redundancy = solution.fit.redundancy(i);
  if (made.redundancy > kUnchecked)
    made.standardised = made.residual / (o.sigma * std::sqrt(made.redundancy));
  return made;
}

SurveyAdjustment answer(const SurveyNetwork& network, const Solution& solution, const Datum& datum) {
  SurveyAdjustment made;
  made.covariance = turned(SurveyFrame::withDatum(solution.fit.covariance), datum.along);
  for (int i = 0; i < network.size(); ++i) {
    AdjustedCorner corner;
    corner.wall = network.corners[i];
    corner.name = network.names[i];
    corner.position = datum.world(solution.corners[i]);
    const auto block = made.covariance.block<2, 2>(2 * i, 2 * i);
    corner.covariance = {block(0, 0), block(0, 1), block(1, 1)};
    corner.ellipse = errorEllipse95(corner.covariance);
    made.corners.push_back(corner);
  }
  for (std::size_t i = 0; i < solution.observations.size(); ++i)
    (solution.observations[i].isAssumed() ? made.assumed : made.readings).push_back(readingOf(solution, i));
  made.weightedSquares = solution.fit.weightedSquares;
  made.degreesOfFreedom = solution.fit.degreesOfFreedom;
  made.tail = solution.tail;
  made.notes = solution.notes;
  if (!solution.isFloor)
    made.notes.push_back("The walls cross each other. A reading is badly wrong, or walls are out of order.");
  return made;
}

}  // namespace

ErrorEllipse errorEllipse95(const PlanCovariance& c) {
  const double mean = (c.xx + c.yy) / 2;
  const double half = std::hypot((c.xx - c.yy) / 2, c.xy);
  ErrorEllipse ellipse;
  ellipse.major = kEllipse95 * std::sqrt(std::max(mean + half, 0.0));
  ellipse.minor = kEllipse95 * std::sqrt(std::max(mean - half, 0.0));
  ellipse.heading = half > 0 ? 0.5 * std::atan2(2 * c.xy, c.xx - c.yy) : 0;
  return ellipse;
}

Ring SurveyAdjustment::ring() const {
  Ring ring;
  for (const AdjustedCorner& corner : corners) ring.push_back(corner.position);
  return ring;
}

Result<SurveyAdjustment> adjust(const SurveyNetwork& network, const Ring& drawn) {
  if (network.size() < 3) return fail("A floor has at least three walls.", "room", "Name the others too.");
  if (network.size() > kMostSurveyCorners)
    return fail("A room with more than " + std::to_string(kMostSurveyCorners) +
                    " corners cannot be adjusted from single readings.",
                "room", "Bring a drawing or a scan of it.");
  const Datum datum = datumOf(drawn);
  Choice choice;
  Ring local;
  if (static_cast<int>(drawn.size()) == network.size()) {
    for (const Vec2& corner : drawn) local.push_back(datum.local(corner));
    if (signedArea(local) > 0) choice.offer(follow(network, local, local));
  }
  if (!choice.isGood()) {
    // The first few in any case, for another shape may fit as well; the others as long as nothing fits.
    int followed = 0;
    for (const Ring& start : startingCorners(network)) {
      if (++followed > kCompared && choice.isGood()) break;
      choice.offer(follow(network, start, local));
    }
  }
  if (!choice.best) return tl::unexpected(*choice.problem);
  SurveyAdjustment made = answer(network, *choice.best, datum);
  made.shapeIsDoubtful = choice.isDoubtful;
  if (choice.isDoubtful)
    made.notes.push_back(
        "Another shape of the floor fits these readings as well. Compare the sketch, and read one diagonal "
        "or angle more where it differs.");
  return made;
}

Result<SurveyAdjustment> adjust(const Room& room, std::span<const Measurement> readings) {
  const auto network = networkOf(room.walls, readings);
  if (!network) return tl::unexpected(network.error());
  const Ring drawn = outline(room);
  return adjust(*network, signedArea(drawn) > 0 ? drawn : Ring{});
}

Room adjustedRoom(Room room, const SurveyAdjustment& adjustment) {
  for (const AdjustedCorner& corner : adjustment.corners) {
    Wall* wall = findById(room.walls, corner.wall);
    if (!wall) continue;
    wall->start = corner.position;
    wall->startCovariance = corner.covariance;
  }
  return room;
}

Result<Job> takeAdjustment(Job job, const SurveyAdjustment& adjustment) {
  if (adjustment.corners.size() != job.room.walls.size())
    return fail("The walls changed since they were adjusted.", "room", "Adjust again.");
  job.room = adjustedRoom(std::move(job.room), adjustment);
  std::vector<Wall> walls = job.room.walls;
  auto made = setRoomOutline(std::move(job), outline(Room{{}, walls, {}, {}, {}}), Instrument::Tape);
  if (!made) return made;
  made->room.walls = std::move(walls);
  return validated(std::move(*made));
}

bool isChecked(const AdjustedReading& reading) {
  constexpr double kHardly = 0.01;
  return reading.redundancy >= kHardly;
}

}  // namespace baywright
