// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "flight/arrival.h"
#include "flight/detail/bounce.h"
#include "flight/rebound.h"

namespace baywright::detail {

/// One piece of the way back from the screen, in order: a parabola under gravity alone, or (the last) a
/// straight roll that slows evenly.
struct BackLeg {
  Vec3 start = Vec3::Zero();
  Vec3 velocity = Vec3::Zero();
  Vec3 acceleration = Vec3::Zero();
  double duration = 0;

  Vec3 at(double t) const { return start + t * velocity + (0.5 * t * t) * acceleration; }
  Vec3 velocityAt(double t) const { return velocity + t * acceleration; }
  bool rolls() const { return acceleration.z() == 0; }
};

/// The shot's own question to arrival.h: nothing in the way but the frame.
CaptureInput shotInput(const ReboundInput& input);

/// Whether the shot ends in the screen's plane inside the frame.
bool reachesScreen(const Arrival& arrival);

/// The ball just after the screen threw it back.
BallState thrownBack(const ReboundInput& input, const Arrival& arrival);

/// From a ball at the screen's face that moves away from it, to rest.
std::vector<BackLeg> wayBack(const ReboundInput& input, BallState state);

}  // namespace baywright::detail
