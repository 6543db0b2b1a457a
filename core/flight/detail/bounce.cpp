// SPDX-License-Identifier: Apache-2.0
#include "flight/detail/bounce.h"

namespace baywright::detail {

double energyOf(const BallState& state, const Ball& ball) {
  return 0.5 * ball.mass * state.velocity.squaredNorm() + 0.5 * ball.inertia() * state.spin.squaredNorm();
}

BallState bounced(const BallState& state, const Surface& surface, const Ball& ball) {
  const double approach = -state.velocity.dot(surface.normal);
  if (approach < 0) return state;
  const Vec3 contact = -ball.radius * surface.normal;
  const Vec3 skin = state.velocity + state.spin.cross(contact);
  const Vec3 slip = skin - skin.dot(surface.normal) * surface.normal;

  // Velocity change that stops the skin of a sphere of inertia I at its contact; 2/7 of the slip when I = 2/5
  // m r^2.
  const double grip = 1 / (1 + ball.mass * ball.radius * ball.radius / ball.inertia());
  Vec3 change = -grip * slip;
  const double most = surface.friction * (1 + surface.restitution) * approach;
  if (const double wanted = change.norm(); wanted > most) change *= most / wanted;

  BallState after = state;
  after.velocity += (1 + surface.restitution) * approach * surface.normal + change;
  after.spin += ball.mass / ball.inertia() * contact.cross(change);
  return after;
}

}  // namespace baywright::detail
