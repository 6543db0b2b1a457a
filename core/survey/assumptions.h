// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "survey/network.h"

namespace baywright {

/// The design of an adjustment in its own frame: corner 0 is the origin, corner 1 lies on the x axis. The
/// unknowns are x of corner 1 and x, y of the corners after it.
struct SurveyFrame {
  static Eigen::Index unknowns(const SurveyNetwork& network) { return 2 * network.size() - 3; }
  static Eigen::VectorXd unknownsOf(const Ring& corners);
  static Ring cornersOf(const Eigen::VectorXd& unknowns);
  /// One row an observation: d observed / d unknowns.
  static Eigen::MatrixXd design(const std::vector<Observation>& observations, const Ring& corners);
  /// "corner C, x", in the order of the unknowns.
  static std::vector<std::string> names(const SurveyNetwork& network);
  /// The unknowns' covariance for all corners, with zeros for what the datum fixes.
  static Eigen::MatrixXd withDatum(const Eigen::MatrixXd& covariance);
};

/// What must be taken for granted so that every corner is determined, and what it is called in a note.
struct Assumptions {
  std::vector<Observation> observations;
  std::vector<std::string> notes;
  std::vector<std::string> open;  ///< names of the corners that even so are not determined
};

/// The weak observations that adjustment.h describes. `start` and `drawn` are in the frame's coordinates;
/// `drawn` is empty where nobody drew the floor, else its lengths are better than nothing. Internal to
/// `survey`.
Assumptions assumptionsFor(const SurveyNetwork& network, const std::vector<Observation>& read,
                           const Ring& start, const Ring& drawn);

}  // namespace baywright
