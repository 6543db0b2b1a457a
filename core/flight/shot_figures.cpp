// SPDX-License-Identifier: Apache-2.0
#include "flight/shot_figures.h"

#include <cmath>

namespace baywright {

Result<ShotFigures> shotFigures(const CaptureInput& input, double launchAngle, double direction) {
  if (auto problem = problemWith(input)) return tl::unexpected(*problem);
  Launch launch;
  launch.from = input.ball;
  launch.speed = input.shots.speed;
  launch.launchAngle = launchAngle;
  launch.direction = direction;
  launch.spin = input.shots.spin;
  ShotFigures figures;

  FlightLimits toScreen;
  toScreen.atDown = 0;
  toScreen.atLevel = 0;
  const auto near = flightOf(launch, input.surroundings, toScreen);
  if (!near) return tl::unexpected(near.error());
  if (near->end == FlightEnd::Down) {
    const FlightPoint& end = near->points.back();
    const double speed = end.velocity.norm();
    figures.atScreen = {end.time, end.position.z(), speed, kineticEnergy(input.surroundings.ball, speed)};
  }
  if (launchAngle <= 0) return figures;

  FlightLimits toGround;
  toGround.atLevel = input.ball.z();
  toGround.atTime = 120;
  const auto whole = flightOf(launch, input.surroundings, toGround);
  if (!whole) return tl::unexpected(whole.error());
  const FlightPoint& end = whole->points.back();
  figures.carry = flat(end.position - input.ball).norm();
  figures.apex = whole->apex - input.ball.z();
  figures.time = end.time;
  figures.landingSpeed = end.velocity.norm();
  figures.landingAngle = std::atan2(-end.velocity.z(), flat(end.velocity).norm());
  return figures;
}

}  // namespace baywright
