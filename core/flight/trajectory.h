// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "base/problem.h"
#include "flight/aerodynamics.h"
#include "flight/air.h"
#include "flight/ball.h"
#include "geometry/vec.h"

namespace baywright {

/// How a ball leaves the club, in the bay frame (d, r, u). Metres, m/s, radians, rad/s.
struct Launch {
  Vec3 from = Vec3::Zero();  ///< centre of the ball
  double speed = 0;          ///< 0.1 to 120
  double launchAngle = 0;    ///< above the horizon, -pi/2 to pi/2
  double direction = 0;      ///< right of d, positive to the right, -pi to pi
  double spin = 0;           ///< backspin, 0 to 1500
  double axisTilt = 0;       ///< 0 is pure backspin; positive tilts the lift, and so the path, to the right
};

Vec3 launchVelocity(const Launch& launch);

/// What a ball flies through. Gravity in m/s^2 (standard gravity 9.80665, ISO 80000-3).
struct Surroundings {
  Ball ball;
  Air air;
  Aerodynamics aerodynamics = BearmanHarvey{};
  double gravity = 9.80665;
};

/// The acceleration of a ball with that velocity and spin; `spinAxis` is a unit vector: lift points along
/// velocity x spinAxis, as coordinates are multiplied in (d, r, u).
struct BallMotion {
  Vec3 velocity = Vec3::Zero();
  double spin = 0;
  Vec3 spinAxis = Vec3::UnitY();
};
Vec3 accelerationOf(const BallMotion& motion, const Surroundings& surroundings);
/// The axis at launch; air keeps it.
Vec3 spinAxisOf(const Launch& launch);

/// Where to stop: the first that comes.
struct FlightLimits {
  std::optional<double> atDown;   ///< the plane d = const, crossed in either sense
  std::optional<double> atLevel;  ///< the plane u = const, crossed downward
  double atTime = 30;             ///< seconds, > 0, at most 120
};
enum class FlightEnd { Down, Level, Time };

struct FlightPoint {
  double time = 0;
  Vec3 position = Vec3::Zero();
  Vec3 velocity = Vec3::Zero();
  double spin = 0;
};
/// First and last point are launch and end; between them the integrator's own steps.
struct Flight {
  std::vector<FlightPoint> points;
  FlightEnd end = FlightEnd::Time;
  double apex = 0;  ///< greatest u on the way, metres
};

/// Integrates the motion with the Dormand-Prince pair of orders 5 and 4, step by step to a relative and
/// absolute error of kFlightTolerance, and finds the end on the dense output; over a driver's whole carry the
/// end is good to 0.1 mm of the model, which is some thousand times better than the coefficients are known.
/// This is the truth that near_flight.h is measured by, for drawing and for long flights.
inline constexpr double kFlightTolerance = 1e-9;
Result<Flight> flightOf(const Launch& launch, const Surroundings& surroundings, const FlightLimits& limits);

}  // namespace baywright
