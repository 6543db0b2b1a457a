// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "swing/swing_path.h"

namespace baywright {

/// How a swing is bent to what a fitter taped.
///
/// First the cock of the wrists is set so that the club reaches as much farther from (or less far from) the
/// hub, up the plane, as the taped points say: that is how golfers of one size differ most. Then the middle
/// of the arc is shifted, up and back, by what is left, while the club is away from the ball. Both change the
/// whole swing, so that whatever was not taped follows.
struct ReachFit {
  double cock = 1;               ///< of the wrists, as a multiple of the usual
  Vec3 arcShift = Vec3::Zero();  ///< right-hander's swing frame, metres
  double arc = 1;                ///< hub to club head of the taped club, metres

  bool operator==(const ReachFit&) const = default;

  /// For another club of the same golfer: the same wrists, the shift in proportion to the arc.
  Vec3 shiftFor(double otherArc) const { return otherArc / arc * arcShift; }
};

/// What was taped with the club, metres: highest point above the floor, farthest point behind the golfer
/// level from the ball.
struct ReachGoal {
  std::optional<double> highest;
  std::optional<double> behind;
};

/// The arc may be shifted this far at most; a golfer whose arms and back do more than that is a slip of the
/// tape.
inline constexpr double kLongestArcShift = 0.45;

/// Nothing when no swing of this golfer with this club meets the goal to 1 mm. `modelled` is the swing as the
/// model has it.
std::optional<ReachFit> fitReach(const SwingPathInput& modelled, const ReachGoal& goal);

}  // namespace baywright
