// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "base/problem.h"
#include "clearance/assessment.h"
#include "clearance/finding.h"
#include "clearance/obstacle.h"
#include "clearance/placed_swing.h"
#include "clearance/scan_obstacle.h"
#include "clearance/swing_margin.h"
#include "job/job.h"

namespace baywright {

/// A swing zone with what the checks need of it besides.
struct SwingSetting {
  SwingZone zone;
  const Golfer* golfer = nullptr;
  const Club* club = nullptr;
  std::optional<Problem> problem;  ///< why there is no swing
  PlacedSwing expected;
  PlacedSwing bound;
};

struct BallSetting {
  BallZone zone;
  std::optional<Problem> problem;  ///< why there is no capture
};

/// Why there is no picture although there is a projector; else the picture.
struct PictureSetting {
  std::optional<PictureZone> zone;
  std::optional<Problem> problem;
};

/// All that a check may look at: a snapshot that does not change while checks run, on any thread.
struct CheckInput {
  const Job& job;
  const Option& option;
  std::span<const RoomObstacle> obstacles;
  std::span<const ScanObstacle> scans;
  std::span<const SwingSetting> swings;
  std::span<const BallSetting> balls;
  const PictureSetting& picture;
  std::span<const DoorSweep> doors;
  std::span<const Way> ways;
};

struct CheckResult {
  std::vector<Finding> findings;
  std::vector<Quantity> figures;
};

/// What a check reads besides job, obstacles and scans; what it does not read may be left empty for it.
struct CheckNeeds {
  bool swings = false;
  bool balls = false;
  bool picture = false;
  bool ways = false;  ///< doors too

  bool operator==(const CheckNeeds&) const = default;
};
inline constexpr CheckNeeds kAllNeeds{true, true, true, true};

using Check = CheckResult (*)(const CheckInput&);

}  // namespace baywright
