// SPDX-License-Identifier: Apache-2.0
#include "flight/trajectory.h"

#include <algorithm>
#include <array>
#include <boost/numeric/odeint.hpp>
#include <cmath>
#include <exception>
#include <string>

#include "flight/detail/in_bounds.h"

namespace baywright {
namespace {

namespace odeint = boost::numeric::odeint;

/// Position, velocity, spin.
using State = std::array<double, 7>;

/// Steps are kept short, so that none can cross a plane and come back, and a drawn path looks smooth.
constexpr double kLongestStep = 0.02;  // s
/// Halvings that bring an event in a step of kLongestStep below a nanosecond.
constexpr int kEventHalvings = 40;

Vec3 positionOf(const State& state) {
  return {state[0], state[1], state[2]};
}
Vec3 velocityOf(const State& state) {
  return {state[3], state[4], state[5]};
}

FlightPoint pointOf(double time, const State& state) {
  return {time, positionOf(state), velocityOf(state), state[6]};
}

State launchState(const Launch& launch) {
  const Vec3 v = launchVelocity(launch);
  return {launch.from.x(), launch.from.y(), launch.from.z(), v.x(), v.y(), v.z(), launch.spin};
}

/// Dynamic pressure times area, newtons for a coefficient of one.
double forcePerCoefficient(double speed, const Surroundings& s) {
  return 0.5 * s.air.density * speed * speed * kPi * s.ball.radius * s.ball.radius;
}

struct Motion {
  const Surroundings& surroundings;
  Vec3 spinAxis;

  void operator()(const State& state, State& rate, double) const {
    const Vec3 velocity = velocityOf(state);
    const double spin = std::max(0.0, state[6]);
    const Vec3 acceleration = accelerationOf({velocity, spin, spinAxis}, surroundings);
    std::copy_n(velocity.data(), 3, rate.begin());
    std::copy_n(acceleration.data(), 3, rate.begin() + 3);
    const double speed = velocity.norm();
    rate[6] = 0;
    if (speed > 0) {
      const Ball& ball = surroundings.ball;
      const double decay = coefficientsAt(surroundings.aerodynamics, ball, speed, spin).spinDecay;
      rate[6] = -forcePerCoefficient(speed, surroundings) * 2 * ball.radius * decay / ball.inertia();
    }
  }
};

/// Of the limits that a step may cross, whether the ball has passed one.
struct PassedDown {
  double plane;
  bool startsBefore;
  bool operator()(const State& state) const { return startsBefore ? state[0] >= plane : state[0] <= plane; }
};
struct PassedLevel {
  double level;
  bool operator()(const State& state) const { return state[2] < level && state[5] < 0; }
};
struct PassedApex {
  bool operator()(const State& state) const { return state[5] <= 0; }
};

/// The first time in the stepper's last step at which `passed` holds, given that it holds at the end of it.
template <class Stepper, class Passed>
double firstTime(Stepper& stepper, const Passed& passed, double from, double to) {
  State state;
  for (int i = 0; i < kEventHalvings; ++i) {
    const double middle = 0.5 * (from + to);
    stepper.calc_state(middle, state);
    (passed(state) ? to : from) = middle;
  }
  return to;
}

struct StepEnd {
  double time;
  std::optional<FlightEnd> reached;
};

/// Whether and where the last step met a limit; the earlier of two.
template <class Stepper>
StepEnd endOfStep(Stepper& stepper, const FlightLimits& limits, const State& start) {
  const double from = stepper.previous_time();
  StepEnd end{stepper.current_time(), std::nullopt};
  const auto consider = [&](const auto& passed, FlightEnd kind) {
    if (!passed(stepper.current_state())) return;
    const double time = firstTime(stepper, passed, from, stepper.current_time());
    if (!end.reached || time < end.time) end = {time, kind};
  };
  if (limits.atDown) consider(PassedDown{*limits.atDown, start[0] < *limits.atDown}, FlightEnd::Down);
  if (limits.atLevel) consider(PassedLevel{*limits.atLevel}, FlightEnd::Level);
  if (stepper.current_time() >= limits.atTime && (!end.reached || end.time > limits.atTime))
    end = {limits.atTime, FlightEnd::Time};
  return end;
}

Flight integrated(const Launch& launch, const Surroundings& surroundings, const FlightLimits& limits) {
  const Motion motion{surroundings, spinAxisOf(launch)};
  const State start = launchState(launch);
  auto stepper = odeint::make_dense_output(kFlightTolerance, kFlightTolerance, kLongestStep,
                                           odeint::runge_kutta_dopri5<State>());
  stepper.initialize(start, 0.0, std::min(1e-3, 0.5 * limits.atTime));

  Flight flight;
  flight.points.push_back(pointOf(0, start));
  flight.apex = start[2];
  for (;;) {
    stepper.do_step(motion);
    const StepEnd end = endOfStep(stepper, limits, start);
    State state;
    if (flight.points.back().velocity.z() > 0 && PassedApex{}(stepper.current_state())) {
      const double top = firstTime(stepper, PassedApex{}, stepper.previous_time(), stepper.current_time());
      stepper.calc_state(std::min(top, end.time), state);
      flight.apex = std::max(flight.apex, state[2]);
    }
    stepper.calc_state(end.time, state);
    flight.points.push_back(pointOf(end.time, state));
    flight.apex = std::max(flight.apex, state[2]);
    if (end.reached) {
      flight.end = *end.reached;
      return flight;
    }
  }
}

std::optional<Problem> problemWith(const Launch& launch, const Surroundings& s, const FlightLimits& limits) {
  if (!launch.from.allFinite() || !std::isfinite(launch.axisTilt))
    return Problem{"The ball's place or its spin axis is not a number.", "", "Give finite numbers."};
  const detail::Bounds all[] = {
      {"A ball speed", launch.speed, 0.1, 120, "m/s"},
      {"A launch angle", launch.launchAngle, -kPi / 2, kPi / 2, "rad"},
      {"A direction", launch.direction, -kPi, kPi, "rad"},
      {"A spin", launch.spin, 0, 1500, "rad/s"},
      {"A time of flight", limits.atTime, 1e-6, 120, "s"},
      {"A ball's mass", s.ball.mass, 1e-4, 1, "kg"},
      {"A ball's radius", s.ball.radius, 1e-3, 0.2, "m"},
      {"An air density", s.air.density, 0, 10, "kg/m3"},
      {"A gravity", s.gravity, 0, 100, "m/s2"},
  };
  return detail::firstOutside(all);
}

}  // namespace

Vec3 launchVelocity(const Launch& launch) {
  const double level = std::cos(launch.launchAngle);
  return launch.speed * Vec3(level * std::cos(launch.direction), level * std::sin(launch.direction),
                             std::sin(launch.launchAngle));
}

Vec3 spinAxisOf(const Launch& launch) {
  const Vec3 forward = launchVelocity(launch).normalized();
  const Vec3 right(-std::sin(launch.direction), std::cos(launch.direction), 0);
  const Vec3 up = forward.cross(right);
  return std::cos(launch.axisTilt) * right - std::sin(launch.axisTilt) * up;
}

Vec3 accelerationOf(const BallMotion& motion, const Surroundings& surroundings) {
  Vec3 acceleration(0, 0, -surroundings.gravity);
  const double speed = motion.velocity.norm();
  if (!(speed > 0)) return acceleration;
  const Coefficients c = coefficientsAt(surroundings.aerodynamics, surroundings.ball, speed, motion.spin);
  const double scale = forcePerCoefficient(speed, surroundings) / surroundings.ball.mass;
  const Vec3 forward = motion.velocity / speed;
  acceleration -= scale * c.drag * forward;
  const Vec3 side = forward.cross(motion.spinAxis);
  const double length = side.norm();
  if (length > 0) acceleration += scale * c.lift / length * side;
  return acceleration;
}

Result<Flight> flightOf(const Launch& launch, const Surroundings& surroundings, const FlightLimits& limits) {
  if (auto problem = problemWith(launch, surroundings, limits)) return tl::unexpected(*problem);
  try {
    return integrated(launch, surroundings, limits);
  } catch (const std::exception& e) {
    return fail(std::string("The flight could not be integrated: ") + e.what());
  }
}

}  // namespace baywright
