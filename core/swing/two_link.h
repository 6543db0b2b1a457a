// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

#include "geometry/vec.h"

namespace baywright {

/// The planar two-link swing: arms of length `arm` turn about a hub, the club of length `club` about the
/// hands, both in a plane that is inclined by `slope` to the floor and holds the target line (Cochran and
/// Stobbs's double pendulum; review: Penner, Rep. Prog. Phys. 66, 131, 2003). Metres, radians; right-hander's
/// swing frame (envelope.h).
///
/// Angles are measured in the plane from straight down, positive away from the target: arms at 90 degrees are
/// level and point away from the target. The club's angle is that of the arms plus the cock of the wrists.

/// Unit vector of a link at `angle` in a plane of `slope`.
inline Vec3 linkDirection(double angle, double slope) {
  const double up = -std::cos(angle);
  return {-std::sin(angle), -up * std::cos(slope), up * std::sin(slope)};
}

struct TwoLink {
  double arm = 0;
  double club = 0;
  double slope = 0;

  /// Where the hub must be for the straightened links to touch the origin.
  Vec3 hub() const { return -(arm + club) * linkDirection(0, slope); }

  /// The club's end, with arms and club at their angles about a hub that stays.
  Vec3 clubEnd(double armAngle, double clubAngle) const {
    return hub() + arm * linkDirection(armAngle, slope) + club * linkDirection(clubAngle, slope);
  }

  /// Greatest height that the club's end can have: both links straight up the plane.
  double heightBound() const { return 2 * (arm + club) * std::sin(slope); }
};

}  // namespace baywright
