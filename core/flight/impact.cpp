// SPDX-License-Identifier: Apache-2.0
#include "flight/impact.h"

#include <cmath>

namespace baywright {

double smashFactor(const SmashInput& input) {
  return (1 + input.restitution) / (1 + input.ball.mass / input.headMass) * std::cos(input.loft);
}

Impact impactOf(const ImpactInput& input) {
  const double alongNormal = input.headSpeed * std::cos(input.loft);
  const double alongFace = input.headSpeed * std::sin(input.loft);
  const double massRatio = input.ball.mass / input.headMass;
  const double inertia = input.ball.inertia();
  const double grip = input.ball.mass * input.ball.radius * input.ball.radius / inertia;

  Impact impact;
  impact.restitution = 0.86 - 0.0029 * alongNormal;
  const double ballNormal = (1 + impact.restitution) * alongNormal / (1 + massRatio);
  const double ballFace = alongFace / (1 + massRatio + grip);
  impact.ballSpeed = std::hypot(ballNormal, ballFace);
  impact.launchAngle = input.loft - std::atan2(ballFace, ballNormal);
  impact.spin = input.ball.mass * ballFace * input.ball.radius / inertia;
  return impact;
}

}  // namespace baywright
