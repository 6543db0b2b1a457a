// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "flight/trajectory.h"

namespace baywright {

/// The first metres of a flight as a parabola: the acceleration at launch (gravity, drag and lift) is kept
/// for the whole flight. Position at time t is start + velocity t + acceleration t^2 / 2. Bay frame, metres,
/// seconds.
///
/// For balls from 20 to 90 m/s it lies within kNearFlightError of the integrated path as long as the ball
/// has flown no farther than kNearFlightReach; tests hold it to that. A straight ray is 10 to 50 mm off
/// there.
struct NearFlight {
  Vec3 start = Vec3::Zero();
  Vec3 velocity = Vec3::Zero();
  Vec3 acceleration = Vec3::Zero();

  Vec3 at(double time) const { return start + time * velocity + (0.5 * time * time) * acceleration; }
  Vec3 velocityAt(double time) const { return velocity + time * acceleration; }
};

inline constexpr double kNearFlightError = 0.010;
inline constexpr double kNearFlightReach = 5.0;

NearFlight nearFlight(const Launch& launch, const Surroundings& surroundings);

/// Earliest time > 0 at which the parabola crosses the plane d = down; none if it turns before.
std::optional<double> timeToDown(const NearFlight& flight, double down);

}  // namespace baywright
