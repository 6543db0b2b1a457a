// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "flight/ball.h"
#include "geometry/vec.h"

namespace baywright::detail {

/// A moving, spinning ball in the bay frame. A point of its skin at `offset` from the centre moves with
/// velocity + spin x offset, coordinates multiplied as they stand; since (d, r, u) is left-handed, `spin`
/// points the other way from the textbook's. Backspin of a ball that flies along d is (0, -w, 0).
struct BallState {
  Vec3 position = Vec3::Zero();
  Vec3 velocity = Vec3::Zero();
  Vec3 spin = Vec3::Zero();
};

/// Kinetic energy of flight and spin, joules.
double energyOf(const BallState& state, const Ball& ball);

/// What the ball meets: unit normal toward the ball, restitution along it, Coulomb friction along the surface
/// (infinite: it always grips).
struct Surface {
  Vec3 normal = Vec3::UnitZ();
  double restitution = 0;
  double friction = 0;
};

/// The ball after it met the surface: a rigid solid sphere that either grips, so that the skin is at rest at
/// the contact when it leaves, or slides throughout (Penner 2002, "The run of a golf ball"; the critical
/// friction is 2 (v + r w) / (7 (1 + e) v_n)). Loses energy whenever restitution is below one. Unchanged when
/// it moves away.
BallState bounced(const BallState& state, const Surface& surface, const Ball& ball);

}  // namespace baywright::detail
