// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "swing/schedule.h"

namespace baywright {

/// Moments of a swing run from 0 at address to 1 at the finish, as shares of its duration: the top is at one
/// half and impact at two thirds, three times as long back as down (27 and 9 frames of film at 30 a second:
/// Novosel and Garrity, Tour Tempo, 2004), then as long as twice the downswing to the finish. The backswing
/// starts and stops gently, the downswing gathers speed, the follow-through loses it.
inline constexpr double kTopMoment = 1.0 / 2;
inline constexpr double kImpactMoment = 2.0 / 3;

/// A place on a leg: `share` is 0 at the ball, 1 at the top or at the finish.
struct LegPlace {
  SwingLeg leg = SwingLeg::Backswing;
  double share = 0;

  bool operator==(const LegPlace&) const = default;
};

/// `moment` is clamped to 0..1.
LegPlace placeAt(double moment);

/// The inverse; `share` is clamped to 0..1.
double momentOf(LegPlace place);

enum class SwingPhase { Address, Takeaway, Backswing, Top, Downswing, Impact, FollowThrough, Finish };

/// What a golfer calls the moment.
SwingPhase phaseAt(double moment);

}  // namespace baywright
