// SPDX-License-Identifier: Apache-2.0
#include "flight/rebound.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <utility>

#include "flight/arrival.h"
#include "flight/detail/slice.h"
#include "flight/detail/way_back.h"

namespace baywright {
namespace {

const char* nameOf(Meets meets) {
  switch (meets) {
    case Meets::Screen:
      return "the screen";
    case Meets::Surround:
      return "the edge of the screen";
    case Meets::SideFabric:
      return "the side fabric";
    case Meets::RoofFabric:
      return "the roof fabric";
    case Meets::FrameTube:
      return "a member of the frame";
    case Meets::Floor:
      return "the floor";
    case Meets::Obstacle:
      return "something in the room";
    case Meets::Nothing:
      break;
  }
  return "nothing";
}

/// Speed at which one leg passes the plane d = down toward the golfer, if it does.
std::optional<double> speedThrough(const detail::BackLeg& leg, double down) {
  if (leg.velocity.x() >= 0) return std::nullopt;
  const NearFlight path{leg.start, leg.velocity, leg.acceleration};
  if (leg.start.x() == down) return leg.velocity.norm();
  const auto time = timeToDown(path, down);
  if (leg.start.x() < down || !time || *time > leg.duration) return std::nullopt;
  return path.velocityAt(*time).norm();
}

struct Summary {
  double speedAtStrike = 0;
  double reach = 0;
};

Summary summaryOf(const std::vector<detail::BackLeg>& legs, double strikeDown) {
  Summary summary;
  for (const detail::BackLeg& leg : legs) {
    summary.speedAtStrike = std::max(summary.speedAtStrike, speedThrough(leg, strikeDown).value_or(0));
    summary.reach = std::max(summary.reach, -leg.at(leg.duration).x());
  }
  return summary;
}

struct WorstShot {
  double launchAngle = 0;
  Summary summary;
};

/// The worst of the five shots; none when none of them gets to the screen.
std::optional<WorstShot> worstShot(const ReboundInput& input) {
  const CaptureInput shot = detail::shotInput(input);
  const detail::FlightSpace space(shot);
  const detail::Slice slice(space, input.shots.meanDirection);
  std::optional<WorstShot> worst;
  for (const int sigmas : {0, -1, 1, -2, 2}) {
    const double angle = input.shots.meanLaunch + sigmas * input.shots.sigmaLaunch;
    if (!(std::abs(angle) < kPi / 2)) continue;
    const Arrival arrival = slice.arrival(angle);
    if (!detail::reachesScreen(arrival)) continue;
    const Summary summary =
        summaryOf(detail::wayBack(input, detail::thrownBack(input, arrival)), input.ball.x());
    const bool worse =
        !worst || summary.speedAtStrike > worst->summary.speedAtStrike ||
        (summary.speedAtStrike == worst->summary.speedAtStrike && summary.reach > worst->summary.reach);
    if (worse) worst = WorstShot{angle, summary};
  }
  return worst;
}

bool staysBelow(ReboundInput input, double distance, double speedLimit) {
  input.ball.x() = -distance;
  const auto worst = worstShot(input);
  return !worst || worst->summary.speedAtStrike <= speedLimit;
}

std::optional<double> smallestDistance(const ReboundInput& input, double speedLimit) {
  constexpr int kHalvings = 12;  // of kReboundStep, to 0.1 mm
  if (!staysBelow(input, kReboundFarthest, speedLimit)) return std::nullopt;
  double enough = kReboundFarthest;
  while (enough > kReboundNearest) {
    const double nearer = std::max(kReboundNearest, enough - kReboundStep);
    if (staysBelow(input, nearer, speedLimit)) {
      enough = nearer;
      continue;
    }
    double tooNear = nearer;
    for (int i = 0; i < kHalvings; ++i) {
      const double middle = 0.5 * (tooNear + enough);
      (staysBelow(input, middle, speedLimit) ? enough : tooNear) = middle;
    }
    break;
  }
  return enough;
}

/// Points along the legs, close enough together to look smooth.
std::vector<Vec3> drawn(const std::vector<detail::BackLeg>& legs, const Vec3& start) {
  constexpr double kPieceDuration = 0.04;  // s
  std::vector<Vec3> path = {start};
  for (const detail::BackLeg& leg : legs) {
    const int pieces = std::clamp(static_cast<int>(std::ceil(leg.duration / kPieceDuration)), 1, 16);
    for (int i = 1; i <= pieces; ++i) path.push_back(leg.at(leg.duration * i / pieces));
  }
  return path;
}

/// Where the ball first touches the floor: the end of the first leg that ends there going down.
Vec3 landingOf(const std::vector<detail::BackLeg>& legs, double radius) {
  constexpr double kOnFloor = 1e-6;  // metres; rounding of a leg's end
  for (const detail::BackLeg& leg : legs) {
    const Vec3 end = leg.at(leg.duration);
    if (end.z() <= radius + kOnFloor) return end;
  }
  return legs.empty() ? Vec3::Zero() : legs.back().start;
}

}  // namespace

double turfRestitution(double normalSpeed) {
  if (normalSpeed > 20) return 0.120;
  return 0.510 - 0.0375 * normalSpeed + 0.000903 * normalSpeed * normalSpeed;
}

double restitutionOf(const FloorSurface& floor, double normalSpeed) {
  return floor.restitution.value_or(turfRestitution(normalSpeed));
}

std::optional<Problem> problemWith(const ReboundInput& input) {
  const auto share = [](double value) { return value >= 0 && value <= 1; };
  if (!share(input.screen.restitution) || !share(input.ceilingRestitution) ||
      (input.alongFabric && !share(*input.alongFabric)) ||
      (input.floor.restitution && !share(*input.floor.restitution)))
    return Problem{"A restitution is the ball's speed after over before.", "", "Give a number from 0 to 1."};
  if (!(input.floor.friction >= 0 && input.floor.friction <= 5) ||
      !(input.floor.rolling >= 0.01 && input.floor.rolling <= 5))
    return Problem{"The floor has an impossible friction.", "",
                   "Give a friction from 0 to 5 and a rolling resistance from 0.01 to 5."};
  if (!(input.ceiling > 0) || !(input.surroundings.gravity > 0))
    return Problem{"The ceiling and gravity must be above zero.", "", "Give a height above the floor."};
  return problemWith(detail::shotInput(input));
}

Result<Rebound> reboundOf(const ReboundInput& input, double launchAngle, double direction) {
  if (auto problem = problemWith(input)) return tl::unexpected(*problem);
  const auto arrival = arrivalOf(detail::shotInput(input), launchAngle, direction);
  if (!arrival) return tl::unexpected(arrival.error());
  if (!detail::reachesScreen(*arrival))
    return fail(
        std::string("This shot does not get to the screen: it meets ") + nameOf(arrival->meets) + " first.",
        "", "Ask about a shot that does.");
  const detail::BallState out = detail::thrownBack(input, *arrival);
  const auto legs = detail::wayBack(input, out);
  const Summary summary = summaryOf(legs, input.ball.x());

  Rebound rebound;
  rebound.atScreen = arrival->position;
  rebound.velocityIn = arrival->velocity;
  rebound.velocityOut = out.velocity;
  rebound.energyIn = kineticEnergy(input.surroundings.ball, arrival->velocity.norm());
  rebound.landing = landingOf(legs, input.surroundings.ball.radius);
  rebound.path = drawn(legs, arrival->position);
  rebound.rest = rebound.path.back();
  rebound.reach = summary.reach;
  rebound.speedAtStrike = summary.speedAtStrike;
  return rebound;
}

Result<ReboundSafety> reboundSafety(const ReboundInput& input, double speedLimit) {
  if (auto problem = problemWith(input)) return tl::unexpected(*problem);
  if (!(speedLimit >= 0))
    return fail("The speed that a returning ball may have is not a number from zero on.", "",
                "Give it in m/s.");
  const auto worst = worstShot(input);
  if (!worst)
    return fail("No shot of the stated launch angles gets to the screen.", "",
                "Lower the launch angle or give a higher frame.");
  auto rebound = reboundOf(input, worst->launchAngle, input.shots.meanDirection);
  if (!rebound) return tl::unexpected(rebound.error());
  return ReboundSafety{std::move(*rebound), worst->launchAngle, smallestDistance(input, speedLimit)};
}

}  // namespace baywright
