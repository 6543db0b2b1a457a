// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

#include "clearance/check.h"

namespace baywright {

/// What one check of swings is about.
struct SwingQuestion {
  std::string_view check;
  bool (*concerns)(const RoomObstacle&);
  bool scans = false;  ///< scanned surfaces too
};

/// One finding for each swing and category of obstacle (quantities.h) that is there: its tightest place. For
/// what was not measured a finding that asks for it, unless the swing is clear of whatever it may turn out to
/// be.
CheckResult swingFindings(const CheckInput& input, const SwingQuestion& question);

/// Category of an obstacle in keys and figure names: "wall", "beam".
std::string_view categoryOf(const RoomObstacle& obstacle);

/// "Driver, Robin".
std::string swingSubject(const SwingSetting& setting);

}  // namespace baywright
