// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "flight/trajectory.h"

namespace baywright {

/// The first metres of a flight as a parabola: position at time t is start + velocity t + acceleration t^2 /
/// 2, with the acceleration (gravity, drag and lift) that the ball has a third of its way along. That choice
/// makes the parabola right to third order in time at the end of `reach`. Bay frame, metres, seconds.
///
/// For balls of kNearFlightSpeed or more it lies within kNearFlightError of the integrated path up to a reach
/// of kNearFlightReach (0.3 mm at 70 m/s); followed to 15 m beyond, within 40 mm at 70 m/s. Tests hold it to
/// that. A straight ray is 10 to 50 mm off over 3 m.
struct NearFlight {
  Vec3 start = Vec3::Zero();
  Vec3 velocity = Vec3::Zero();
  Vec3 acceleration = Vec3::Zero();

  Vec3 at(double time) const { return start + time * velocity + (0.5 * time * time) * acceleration; }
  Vec3 velocityAt(double time) const { return velocity + time * acceleration; }
};

inline constexpr double kNearFlightError = 0.005;
inline constexpr double kNearFlightReach = 5.0;
inline constexpr double kNearFlightSpeed = 15.0;

/// `reach`: how far the ball flies to where the path matters most, metres.
NearFlight nearFlight(const Launch& launch, const Surroundings& surroundings, double reach);

/// Earliest time > 0 at which the parabola crosses the plane d = down; none if it turns before.
std::optional<double> timeToDown(const NearFlight& flight, double down);

}  // namespace baywright
