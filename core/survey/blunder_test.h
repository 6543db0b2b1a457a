// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/uncertain.h"
#include "survey/adjustment.h"
#include "units/unit_system.h"

namespace baywright {

/// A reading that does not fit the others.
struct SuspectReading {
  Id reading;        ///< none for an assumed angle: the corner may not be square
  std::string what;  ///< "diagonal A-C"
  bool isAngle = false;
  double read = 0;          ///< metres or radians
  Uncertain probable;       ///< what all other readings make of it
  double error = 0;         ///< read - probable.value
  double standardised = 0;  ///< Baarda's w in the adjustment that named it
};

/// One blunder, and each reading that would explain it. More than one: the readings cannot tell them apart.
struct Suspicion {
  std::vector<SuspectReading> suspects;  ///< likeliest first
  /// The first of several suspects is the only one without which the room's corners are square (or at 45
  /// degrees), to kSquareSigma.
  bool isSettledBySquareness = false;
  std::string sentence;  ///< names it, its error, what it probably should be, how to go on

  /// The one that is to blame, or null where that is open.
  const SuspectReading* culprit() const {
    return suspects.size() == 1 || isSettledBySquareness ? &suspects.front() : nullptr;
  }
};

struct BlunderTest {
  double tail = 1;    ///< of the global chi-square test, before anything is taken out
  bool agree = true;  ///< no suspicion, and the global test passes at kGlobalLevel
  std::vector<Suspicion> suspicions;
  std::vector<std::string> sentences;  ///< one each, ready to show; also says when too little is checked
};

/// Tests readings against each other: the global test on v^T P v, then data snooping (W. Baarda, A testing
/// procedure for use in geodetic networks, 1968): where a standardised residual is beyond kCriticalW, the
/// most readings that agree are sought (blunder_test_consensus.h), at most kMostBlunders left over; each of
/// those is suspected, and what it probably should be is what the others make of it. Where no such set is
/// found, the reading with the largest standardised residual is taken out and the rest adjusted again, up to
/// kMostBlunders times. Readings that explain a misfit almost as well (their likelihood ratio is below the
/// 95 % point) are named together; where one of them alone would leave a room with square corners, that is
/// said.
///
/// A reading that nothing checks (redundancy 0) cannot be found out by any test. `adjustment` must come from
/// this network.
BlunderTest testForBlunders(const SurveyNetwork& network, const SurveyAdjustment& adjustment,
                            const UnitSystem& units);

/// The same for readings of which one is so wrong that they cannot be adjusted together. Nothing where no few
/// of them are to blame.
std::optional<BlunderTest> testWhereNothingFits(const SurveyNetwork& network, const UnitSystem& units);

/// The smallest error of a reading that the test finds with a chance of 80 %: delta0 sigma / sqrt(redundancy)
/// with delta0 = 4.13 for kCriticalW (Baarda 1968). Infinite where nothing checks it.
double smallestDetectable(const AdjustedReading& reading);

/// Two-sided normal test at 0.1 % (Baarda's usual level).
inline constexpr double kCriticalW = 3.29;
inline constexpr double kGlobalLevel = 0.05;
inline constexpr int kMostBlunders = 3;

}  // namespace baywright
