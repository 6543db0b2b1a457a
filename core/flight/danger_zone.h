// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "flight/rebound.h"
#include "geometry/polygon.h"
#include "job/golfer.h"

namespace baywright {

/// Places on the floor where nobody but the golfer may be while someone swings, in the bay frame (d, r).
/// Common practice, no source: nobody in front of the ball; a shank leaves a right-hander up to 75 degrees to
/// the right of the target line, a toe or pulled shot up to 45 degrees to the left (mirrored for a
/// left-hander).
inline constexpr double kShankAngle = 1.309;
inline constexpr double kPullAngle = 0.785;

struct DangerInput {
  ReboundInput rebound;
  Hand hand = Hand::Right;
  double sectorRadius = 6.0;  ///< how far the sector is drawn; the room ends it sooner
};
struct DangerZone {
  Ring direct;   ///< sector in front of the ball, between shank and pull, and all between ball and screen
                 ///< across the frame
  Ring rebound;  ///< where balls come back to, over the dispersion, from the screen to where they stop or
                 ///< pass the limit of speed
};
/// `speedLimit`: below it a returning ball is harmless (m/s). Rings are simple and counter-clockwise in (d,
/// r).
Result<DangerZone> dangerZone(const DangerInput& input, double speedLimit);

}  // namespace baywright
