// SPDX-License-Identifier: Apache-2.0
#include "flight/near_flight.h"

#include <cmath>

namespace baywright {

NearFlight nearFlight(const Launch& launch, const Surroundings& surroundings, double reach) {
  const Vec3 axis = spinAxisOf(launch);
  NearFlight flight{launch.from, launchVelocity(launch), Vec3::Zero()};
  const auto accelerationAt = [&](const Vec3& velocity) {
    return accelerationOf({velocity, launch.spin, axis}, surroundings);
  };
  const Vec3 atLaunch = accelerationAt(flight.velocity);
  const double third = reach / (3 * launch.speed);
  flight.acceleration = accelerationAt(flight.velocity + third * atLaunch);
  return flight;
}

std::optional<double> timeToDown(const NearFlight& flight, double down) {
  const double gap = down - flight.start.x();
  const double v = flight.velocity.x();
  const double discriminant = v * v + 2 * flight.acceleration.x() * gap;
  if (discriminant < 0) return std::nullopt;
  // Stable form of the root of a t^2 / 2 + v t - gap = 0 that is nearest to gap / v; a may be zero.
  const double denominator = v + std::copysign(std::sqrt(discriminant), v);
  if (denominator == 0) return std::nullopt;
  const double time = 2 * gap / denominator;
  return time > 0 ? std::optional(time) : std::nullopt;
}

}  // namespace baywright
