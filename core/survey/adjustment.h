// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <span>
#include <string>
#include <vector>

#include "base/problem.h"
#include "job/job.h"
#include "survey/network.h"

namespace baywright {

/// The ellipse round a corner in which it lies with a chance of 95 %, by what the instruments promise.
struct ErrorEllipse {
  double major = 0;    ///< half axis, metres
  double minor = 0;    ///< half axis, metres
  double heading = 0;  ///< of the major axis, radians from world x, in (-pi/2, pi/2]
};

ErrorEllipse errorEllipse95(const PlanCovariance& covariance);

/// One reading after the adjustment; metres, or radians for angles.
struct AdjustedReading {
  Id reading;        ///< none for what is assumed
  std::string what;  ///< "wall A", "diagonal A-C"
  ObservationKind kind = ObservationKind::Distance;
  double read = 0;
  double adjusted = 0;
  double residual = 0;  ///< adjusted - read
  double sigma = 0;     ///< of the instrument
  /// residual over its own standard deviation sigma sqrt(redundancy) (Baarda's w); 0 where nothing checks it.
  double standardised = 0;
  /// 0..1: the share of an error here that would show in its own residual. 0: nothing checks this reading.
  double redundancy = 0;
};

/// Readings contradict a floor when a sum of squares as large has a smaller chance than this.
inline constexpr double kContradicted = 0.001;
/// Two explanations are as good as each other when their sums of squares differ by less: the 95 % point of
/// the chi-square distribution of one degree.
inline constexpr double kAsGood = 3.84;

/// At least a hundredth of an error in this reading would show in its residual.
bool isChecked(const AdjustedReading& reading);

/// One corner after the adjustment, world metres.
struct AdjustedCorner {
  Id wall;  ///< that starts here
  std::string name;
  Vec2 position = Vec2::Zero();
  PlanCovariance covariance;
  ErrorEllipse ellipse;
};

/// A floor that fits its readings best. Covariances are relative to the datum: the first corner, which counts
/// as fixed, and the direction of the first wall, which counts as exact. So the first corner's is zero, and
/// the second's lies along the first wall. They are a priori: what the instruments promise, whatever the
/// residuals came out as.
struct SurveyAdjustment {
  std::vector<AdjustedCorner> corners;    ///< in the order of the walls, counter-clockwise
  std::vector<AdjustedReading> readings;  ///< in the order of the list
  std::vector<AdjustedReading> assumed;   ///< right angles and drawn lengths that were taken for granted
  Eigen::MatrixXd covariance;             ///< of all corners: x, y of the first, x, y of the second, ...
  double weightedSquares = 0;             ///< v^T P v
  int degreesOfFreedom = 0;               ///< readings and assumptions more than were needed
  double tail = 1;  ///< the chance of weightedSquares this large without any blunder (chi-square)
  bool shapeIsDoubtful = false;    ///< another shape of the floor fits the readings as well
  std::vector<std::string> notes;  ///< one sentence each: what was assumed, what is ambiguous

  Ring ring() const;
};

/// Weighted least squares over all readings, Gauss-Newton with Levenberg's damping
/// (geometry/least_squares.h).
///
/// Where to begin, and where to put the result: `drawn` holds the corners as they were so far (then the first
/// corner and the first wall's direction stay), or is empty (then the first corner is the origin and wall one
/// runs along x). Either way other starts (network_start.h) are tried when the first leads to no simple
/// counter-clockwise floor or to one that the readings contradict.
///
/// What the readings leave open by more than kOpen is closed by weak assumptions, each said in `notes`:
/// first that corners are square (or straight, or at 45 degrees) to kSquareSigma, at each corner whose angle
/// nothing determines; then, if there are drawn corners, that walls are as long as drawn, as good as a guess.
/// Where readings determine all, nothing is assumed.
///
/// Refused with a sentence: readings that do not determine some corner even so (named, with what to measure),
/// more than kMostSurveyCorners. About 2 ms for 12 corners and 40 readings.
Result<SurveyAdjustment> adjust(const SurveyNetwork& network, const Ring& drawn = {});

/// The same for a room that has its walls, with what was read in it.
Result<SurveyAdjustment> adjust(const Room& room, std::span<const Measurement> readings);

/// The room with its corners and covariances as adjusted; openings stay where they are along their walls.
/// Walls are matched by id.
Room adjustedRoom(Room room, const SurveyAdjustment& adjustment);

/// The same as an edit of a job: openings slide back into walls that became shorter, and the job is valid.
Result<Job> takeAdjustment(Job job, const SurveyAdjustment& adjustment);

/// A corner that is uncertain by more than this (one standard deviation, metres) counts as not determined.
/// Half a degree over the longest wall of a room is far less, so the assumption of a square corner helps.
inline constexpr double kOpen = 0.2;
/// Corners of rooms are square to about this: common practice, no source. Radians (half a degree).
inline constexpr double kSquareSigma = 0.5 * kPi / 180;
/// The work grows with the cube of it; a room with more corners is a drawing or a scan.
inline constexpr int kMostSurveyCorners = 100;

}  // namespace baywright
