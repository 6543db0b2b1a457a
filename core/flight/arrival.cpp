// SPDX-License-Identifier: Apache-2.0
#include "flight/arrival.h"

#include <cmath>

#include "flight/detail/in_bounds.h"
#include "flight/detail/slice.h"

namespace baywright {
std::optional<Problem> problemWith(const CaptureInput& input) {
  const Shots& shots = input.shots;
  const Frame& frame = input.frame;
  const Screen& screen = input.screen;
  const detail::Bounds all[] = {
      {"A strike distance", -input.ball.x(), 0.3, 12, "m"},
      {"A ball's sideways offset", input.ball.y(), -20, 20, "m"},
      {"A ball's height", input.ball.z(), 0, 2, "m"},
      {"A ball speed", shots.speed, kNearFlightSpeed, 120, "m/s"},
      {"A spin", shots.spin, 0, 1500, "rad/s"},
      {"A mean launch angle", shots.meanLaunch, -0.5, 1.4, "rad"},
      {"A mean direction", shots.meanDirection, -1.2, 1.2, "rad"},
      {"A dispersion in launch angle", shots.sigmaLaunch, kLeastDispersion, 1, "rad"},
      {"A dispersion in direction", shots.sigmaDirection, kLeastDispersion, 1, "rad"},
      {"A frame width", frame.width, 0.1, 50, "m"},
      {"A frame height", frame.height, 0.1, 50, "m"},
      {"A frame depth", frame.depth, 0, 50, "m"},
      {"A depth behind the screen", frame.behindScreen, 0, 50, "m"},
      {"A frame member's thickness", frame.tube, 0, 1, "m"},
      {"A screen width", screen.width, 0.1, 50, "m"},
      {"A screen height", screen.height, 0.1, 50, "m"},
      {"A screen's lower edge", screen.bottom, 0, 50, "m"},
  };
  return detail::firstOutside(all);
}

Result<Arrival> arrivalOf(const CaptureInput& input, double launchAngle, double direction) {
  if (auto problem = problemWith(input)) return tl::unexpected(*problem);
  if (!(std::abs(launchAngle) <= kPi / 2 && std::abs(direction) <= kPi))
    return fail("The launch direction is not one.", "",
                "Give a launch angle within 90 degrees and a direction within 180 degrees.");
  const detail::FlightSpace space(input);
  return detail::Slice(space, direction).arrival(launchAngle);
}

std::optional<double> heightAtScreen(const CaptureInput& input, double launchAngle, double direction) {
  if (problemWith(input)) return std::nullopt;
  const CaptureInput bare{input.frame, input.screen, input.ball, input.shots, {}, input.surroundings};
  const detail::FlightSpace space(bare);
  const auto distance = detail::Slice(space, direction).distanceTo(0);
  if (!distance) return std::nullopt;
  const detail::PlanePath path = space.path(launchAngle);
  const auto time = path.timeAtDistance(*distance);
  if (!time) return std::nullopt;
  return path.at(*time).y();
}

Result<std::vector<LaunchSpan>> launchSpans(const CaptureInput& input, const SpanRange& range) {
  if (auto problem = problemWith(input)) return tl::unexpected(*problem);
  if (!(range.lowest < range.highest && std::abs(range.lowest) <= kPi / 2 &&
        std::abs(range.highest) <= kPi / 2 && std::abs(range.direction) <= kPi))
    return fail("The range of launch angles is empty or beyond straight up and down.", "",
                "Give a lowest angle below the highest, both within 90 degrees.");
  const detail::FlightSpace space(input);
  return detail::Slice(space, range.direction).spans(range.lowest, range.highest);
}

}  // namespace baywright
