// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "job/job.h"

namespace baywright {

enum class SurveyRemarkKind {
  Wrong,     ///< cannot be as it stands
  Doubtful,  ///< may be as it stands, but look again
  Missing,   ///< not measured, or only guessed
};

/// One thing to look at before a room is trusted.
struct SurveyRemark {
  SurveyRemarkKind kind = SurveyRemarkKind::Missing;
  std::string key;           ///< stable: "crossing/3/7", the check and the ids
  std::vector<Id> subjects;  ///< walls, openings, fixtures, ceiling parts, readings
  std::string sentence;      ///< with how to go on
};

/// Everything that is wrong, doubtful or missing about a room, in that order; empty for a room that needs
/// nothing more. Looked at:
///   walls       that cross, that nearly meet (kNearlyMeet), that are hardly walls (kShortWall), corners that
///               hardly turn (kHardlyTurns)
///   readings    that do not fit each other or the walls as drawn, that name nothing, that nothing checks
///   ceiling     heights that are not measured or guessed, floor without a ceiling over it
///   openings    wider than their wall, past its end, over each other, higher than the ceiling, not measured
///   guesses     that are left in fixtures and walls
/// Works on rooms that are not valid (validate.h) too. A pure function, a few milliseconds for 12 corners.
std::vector<SurveyRemark> checkSurvey(const Job& job);

/// Ends of walls this near to another wall were meant to touch it: half a stud wall. Metres.
inline constexpr double kNearlyMeet = 0.05;
/// Walls shorter than this are slips or a pipe's casing. Metres.
inline constexpr double kShortWall = 0.10;
/// Corners that turn by less than this (2 degrees) are no corners. Radians.
inline constexpr double kHardlyTurns = 0.035;
/// A wall that is known worse than this (one standard deviation, metres) is still to be measured: a scan
/// knows it better, a drawing shows only what somebody meant to build.
inline constexpr double kGuessedWall = 0.011;

}  // namespace baywright
