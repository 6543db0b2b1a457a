// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "flight/rebound.h"
#include "geometry/polygon.h"
#include "job/golfer.h"

namespace baywright {

/// Places on the floor where nobody but the golfer may be while someone swings, as rings in (d, r) of the bay
/// frame. Common practice, no source: nobody in front of the ball; a shank leaves a right-hander up to 75
/// degrees to the right of the target line, a pulled or toed shot up to 45 degrees to the left (mirrored for
/// a left-hander). The room is not known here: cut the rings at its walls. The club's own reach is the
/// swing's matter.
inline constexpr double kShankAngle = 75 * kPi / 180;
inline constexpr double kPullAngle = 45 * kPi / 180;

struct DangerInput {
  ReboundInput rebound;
  Hand hand = Hand::Right;
  double sectorRadius = 6.0;    ///< metres, > 0, at most 50: how far balls are followed beside the frame
  double returningSpeed = 3.0;  ///< m/s, >= 0: a slower ball that comes back harms nobody (invented)
};
struct DangerZone {
  /// Straight from the club: across the frame from the ball to behind the screen with its travel, and beside
  /// the frame's posts a sector on either side, out to shank and pull.
  Ring direct;
  /// Coming back: convex hull of where balls within two standard deviations of the mean shot leave the
  /// screen, touch the floor and slow down to `returningSpeed`. Empty when no such ball gets to the screen.
  Ring returning;
};
Result<DangerZone> dangerZone(const DangerInput& input);

}  // namespace baywright
