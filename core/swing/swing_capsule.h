// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/shapes.h"
#include "swing/swing_path.h"

namespace baywright {

/// A part of golfer or club: at one moment in a pose, over a stretch of the swing in an envelope. Swing frame
/// of the golfer's own hand (envelope.h), metres.
struct SwingCapsule {
  Capsule capsule;
  double moment =
      0;  ///< 0 address, 1 finish; of a stretch the middle, the earlier one where the swing passes twice
  BodyPart part = BodyPart::Torso;

  bool operator==(const SwingCapsule&) const = default;
};

/// Radius of the grip, the thickest part of a shaft (common practice, no source).
inline constexpr double kShaftRadius = 0.014;

/// The golfer and the club at one moment, true sizes without any allowance; `moment` is clamped to 0..1.
std::vector<SwingCapsule> poseAt(const SwingPath& path, double moment);

/// Left-handers are right-handers in a mirror: exact, sign by sign.
void mirrorFor(Hand hand, std::vector<SwingCapsule>& capsules);

}  // namespace baywright
