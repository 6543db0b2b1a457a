// SPDX-License-Identifier: Apache-2.0
#include "flight/shots.h"

#include <algorithm>

namespace baywright {

Shots shotsFrom(const Requirements& requirements) {
  Shots shots;
  shots.speed = requirements.ballSpeed;
  shots.spin = requirements.ballSpin;
  shots.meanLaunch = requirements.meanLaunch;
  shots.sigmaLaunch = std::max(kLeastDispersion, requirements.dispersionUp);
  shots.sigmaDirection = std::max(kLeastDispersion, requirements.dispersionSide);
  return shots;
}

Surroundings surroundingsFrom(const Requirements& requirements) {
  Surroundings surroundings;
  if (const auto air = standardAir(requirements.altitude)) surroundings.air = *air;
  return surroundings;
}

Vec3 ballAtRest(const Mat& mat, const Placement& placement, Hand hand) {
  Vec3 ball = placement.strikePoint(hand);
  ball.z() = mat.thickness + kBallRadius;
  return ball;
}

}  // namespace baywright
