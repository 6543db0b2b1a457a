// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "job/job.h"

namespace baywright {

enum class ChangeKind {
  MoveBay,
  TurnBay,
  MoveStrikePoint,
  LowerFrame,
  MoveProjector,
  MoveMonitor,
  ShorterClub,
  MoveBystander,
  DimLights,
  AimProjector,
};

/// One change that clears a finding and blocks nothing else: the job after it, assessed, says so.
struct Change {
  ChangeKind kind = ChangeKind::MoveBay;
  double amount = 0;     ///< metres; radians for TurnBay, lux for DimLights, 1 for AimProjector
  std::string sentence;  ///< "Move the bay 70 mm to the left, facing the screen."
  Job job;               ///< after the change
};

}  // namespace baywright
