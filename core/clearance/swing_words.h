// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "clearance/swing_margin.h"
#include "job/golfer.h"
#include "units/unit_system.h"

namespace baywright {

/// What a sentence about a swing's tightest place says.
struct SwingStatement {
  const std::string& subject;
  const std::string& obstacle;
  Hand hand;
  double clearance;
  const SwingMargin& expected;
  const SwingMargin& bound;  ///< of full extension
};

/// "Driver, Robin: the club head comes within 86 mm of the beam at the top of the backswing, 2.31 m above the
/// floor; with the 150 mm to keep it is 64 mm short." The full extension is mentioned where it has the worse
/// verdict.
std::string swingSentence(const SwingStatement& statement, const UnitSystem& units);

}  // namespace baywright
