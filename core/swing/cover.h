// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "swing/swing_capsule.h"

namespace baywright {

/// Capsules that together hold every pose of the path: 261 for an expected swing, 187 for a full extension.
///
/// The motion is cut into stretches, fixed shares of its legs. Over a stretch the rates of the path are
/// bounded (rates.h), so that
///   - a limb or the shaft, taken at the middle of its stretch and made thicker by the farthest that either
///   of its
///     ends gets from there, holds itself at every moment of the stretch;
///   - the club's head is held by a capsule along the chord of its stretch, thicker by at least kHeadBow.
/// The thickened shaft stops short of the head: what it leaves out is inside the head.
///
/// No gap is left between stretches. The outline that meets walls and ceilings, the head's, is about a
/// centimetre too large; the shaft is up to 0.1 m too thick across the plane of the swing and limbs up to 0.3
/// m, inside the arc of the club. For the same reason feet dip below z = 0: the floor is not something to
/// keep clear of.
std::vector<SwingCapsule> coverOf(const SwingPath& path);

/// The same for shaft and head alone, as a right-hander's whatever the path's hand.
std::vector<SwingCapsule> coverOfClub(const SwingPath& path);

/// Allowance for the bow of the club head's path over its chord. It is the same for all golfers as long as
/// the bound stays below it, which keeps figures rising steadily with stature and club.
inline constexpr double kHeadBow = 0.010;

}  // namespace baywright
