// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "swing/swing_capsule.h"

namespace baywright {

/// How far swept space reaches in one direction, and where, when and with what it does so.
struct Extreme {
  double value = 0;        ///< metres from the origin of the swing frame along the direction
  Vec3 at = Vec3::Zero();  ///< the point of the surface
  double moment = 0;
  BodyPart part = BodyPart::Torso;

  bool operator==(const Extreme&) const = default;
};

struct EnvelopeFigures {
  Extreme highest;         ///< above the surface the golfer stands on
  Extreme behindGolfer;    ///< from the ball to the golfer's side: -y for a right-hander
  Extreme towardTarget;    ///< from the ball, +x
  Extreme awayFromTarget;  ///< from the ball, -x
  Extreme beyondBall;      ///< from the ball to the side away from the golfer: +y for a right-hander

  bool operator==(const EnvelopeFigures&) const = default;
};

/// Of capsules in the swing frame of `hand`; the first of equals. All zero when there are none.
EnvelopeFigures figuresOf(std::span<const SwingCapsule> capsules, Hand hand);

}  // namespace baywright
