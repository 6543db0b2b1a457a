// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "flight/detail/slice.h"

namespace baywright::detail {
namespace {

/// Sides of the bar that encloses a cylinder; it is 2 % wider at its edges.
constexpr int kBarSides = 16;

void addFaces(GrownObstacle& grown, const ConvexPolyhedron& body, double growth) {
  for (const ConvexPolyhedron::Face& face : body.faces())
    grown.faces.emplace_back(face.normal, face.offset + growth);
}

void addFaces(GrownObstacle& grown, const Cylinder& body, double growth) {
  const Vec3 axis = (body.b - body.a).normalized();
  const Vec3 side = axis.unitOrthogonal();
  const Vec3 other = axis.cross(side);
  for (int i = 0; i < kBarSides; ++i) {
    const double turn = 2 * kPi * i / kBarSides;
    const Vec3 normal = std::cos(turn) * side + std::sin(turn) * other;
    grown.faces.emplace_back(normal, normal.dot(body.a) + body.radius + growth);
  }
  grown.faces.emplace_back(axis, axis.dot(body.b) + growth);
  grown.faces.emplace_back(-axis, -axis.dot(body.a) + growth);
}

GrownObstacle grownFrom(const Obstacle& obstacle, double growth) {
  GrownObstacle grown{obstacle.id, {}, boundsOf(obstacle.body)};
  std::visit([&](const auto& body) { addFaces(grown, body, growth); }, obstacle.body);
  // The enclosing bar stands out of the cylinder's own bounds by 2 % of its radius.
  double margin = growth;
  if (const auto* bar = std::get_if<Cylinder>(&obstacle.body)) margin += 0.02 * bar->radius;
  grown.bounds.low.array() -= margin;
  grown.bounds.high.array() += margin;
  return grown;
}

/// Roots of a t^2 + b t + c, lower first; none when complex. `a` may be zero.
std::optional<std::pair<double, double>> roots(double a, double b, double c) {
  const double discriminant = b * b - 4 * a * c;
  if (discriminant < 0) return std::nullopt;
  const double q = -0.5 * (b + std::copysign(std::sqrt(discriminant), b));
  if (q == 0) return std::pair(0.0, 0.0);
  if (a == 0) return std::pair(c / q, c / q);
  const double first = q / a;
  const double second = c / q;
  return first < second ? std::pair(first, second) : std::pair(second, first);
}

}  // namespace

std::optional<double> PlanePath::timeAtDistance(double s) const {
  const double discriminant = velocity.x() * velocity.x() + 2 * acceleration.x() * s;
  const double denominator = velocity.x() + std::sqrt(std::max(0.0, discriminant));
  if (discriminant < 0 || denominator <= 0) return std::nullopt;
  return 2 * s / denominator;
}

std::optional<double> PlanePath::timeUpThrough(double z) const {
  const auto times = roots(0.5 * acceleration.y(), velocity.y(), height - z);
  if (!times) return std::nullopt;
  for (const double t : {times->first, times->second})
    if (t >= 0 && velocity.y() + t * acceleration.y() > 0) return t;
  return std::nullopt;
}

std::optional<double> PlanePath::timeDownThrough(double z) const {
  if (height <= z && velocity.y() <= 0) return 0;
  const auto times = roots(0.5 * acceleration.y(), velocity.y(), height - z);
  if (!times) return std::nullopt;
  for (const double t : {times->first, times->second})
    if (t >= 0 && velocity.y() + t * acceleration.y() < 0) return t;
  return std::nullopt;
}

double mouthOf(const Frame& frame) {
  return std::min(0.0, frame.behindScreen - frame.depth);
}

FlightSpace::FlightSpace(const CaptureInput& input) : input_(input) {
  const Surroundings& around = input.surroundings;
  const Ball& ball = around.ball;
  obstacles_.reserve(input.obstacles.size());
  for (const Obstacle& obstacle : input.obstacles) obstacles_.push_back(grownFrom(obstacle, ball.radius));

  areaOverMass_ = 0.5 * around.air.density * kPi * ball.radius * ball.radius / ball.mass;
  const double speed = input.shots.speed;
  third_ = -input.ball.x() / (3 * speed);
  atLaunch_ = coefficientsAt(around.aerodynamics, ball, speed, input.shots.spin);
  const double slower = speed * (1 - areaOverMass_ * atLaunch_.drag * speed * third_);
  onTheWay_ = coefficientsAt(around.aerodynamics, ball, slower, input.shots.spin);
}

PlanePath FlightSpace::path(double launchAngle) const {
  const auto accelerationAt = [&](const Vec2& velocity, const Coefficients& c) -> Vec2 {
    const double scale = areaOverMass_ * velocity.norm();
    return scale * (-c.drag * velocity + c.lift * leftOf(velocity)) - Vec2(0, input_.surroundings.gravity);
  };
  PlanePath path;
  path.height = input_.ball.z();
  path.velocity = input_.shots.speed * Vec2(std::cos(launchAngle), std::sin(launchAngle));
  const Vec2 atLaunch = accelerationAt(path.velocity, atLaunch_);
  path.acceleration = accelerationAt(path.velocity + third_ * atLaunch, onTheWay_);
  return path;
}

}  // namespace baywright::detail
