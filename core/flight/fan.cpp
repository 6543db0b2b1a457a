// SPDX-License-Identifier: Apache-2.0
#include "flight/fan.h"

#include <algorithm>

#include "flight/detail/slice.h"

namespace baywright {
namespace {

/// Points along one flight, from the ball to where it meets something.
std::vector<Vec3> pathOf(const detail::FlightSpace& space, double launchAngle, double direction) {
  constexpr int kPieces = 12;
  const Arrival end = detail::Slice(space, direction).arrival(launchAngle);
  const detail::PlanePath path = space.path(launchAngle);
  const Vec2 along(std::cos(direction), std::sin(direction));
  std::vector<Vec3> points;
  for (int i = 0; i <= kPieces; ++i) {
    const Vec2 p = path.at(end.time * i / kPieces);
    points.push_back(raised(flat(space.input().ball) + p.x() * along, p.y()));
  }
  return points;
}

/// Out along one path and back along the other, which starts at the same ball.
template <class Flatten>
std::vector<Vec2> between(const std::vector<Vec3>& out, const std::vector<Vec3>& back, Flatten flatten) {
  std::vector<Vec2> outline;
  for (const Vec3& p : out) outline.push_back(flatten(p));
  for (std::size_t i = back.size() - 1; i > 0; --i) outline.push_back(flatten(back[i]));
  return outline;
}

}  // namespace

ShotRange rangeOf(const Shots& shots, double sigmas) {
  return {shots.meanLaunch - sigmas * shots.sigmaLaunch, shots.meanLaunch + sigmas * shots.sigmaLaunch,
          shots.meanDirection - sigmas * shots.sigmaDirection,
          shots.meanDirection + sigmas * shots.sigmaDirection};
}

ShotRange rangeOf(const std::vector<Vec2>& window) {
  if (window.empty()) return {};
  Vec2 low = window.front();
  Vec2 high = window.front();
  for (const Vec2& p : window) {
    low = low.cwiseMin(p);
    high = high.cwiseMax(p);
  }
  return {low.y(), high.y(), low.x(), high.x()};
}

Result<Fan> fanOf(const CaptureInput& input, const ShotRange& range) {
  if (auto problem = problemWith(input)) return tl::unexpected(*problem);
  const auto steep = [](double angle) { return !(std::abs(angle) <= kPi / 2); };
  if (steep(range.launchLow) || steep(range.launchHigh) || steep(range.directionLeft) ||
      steep(range.directionRight))
    return fail("The bundle of shots opens wider than straight up, down or sideways.", "",
                "Give angles within 90 degrees.");
  if (range.launchLow > range.launchHigh || range.directionLeft > range.directionRight)
    return fail("The bundle of shots is turned inside out.", "", "Give the lower and the left bound first.");
  const detail::FlightSpace space(input);
  const double launch = std::clamp(input.shots.meanLaunch, range.launchLow, range.launchHigh);
  const double direction = std::clamp(input.shots.meanDirection, range.directionLeft, range.directionRight);
  Fan fan;
  fan.plan = between(pathOf(space, launch, range.directionLeft), pathOf(space, launch, range.directionRight),
                     [](const Vec3& p) { return flat(p); });
  fan.elevation =
      between(pathOf(space, range.launchLow, direction), pathOf(space, range.launchHigh, direction),
              [](const Vec3& p) { return Vec2(p.x(), p.z()); });
  return fan;
}

}  // namespace baywright
