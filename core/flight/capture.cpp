// SPDX-License-Identifier: Apache-2.0
#include "flight/capture.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <span>
#include <utility>

#include "flight/detail/normal.h"
#include "flight/detail/slice.h"

namespace baywright {
namespace {

/// Shots farther than this many standard deviations from the mean are left out: 2e-9 of them.
constexpr double kTail = 6;
/// Launch angles are followed no farther than this from level, radians.
constexpr double kSteepest = 1.5;
/// The sides of obstacles farther out than this do not split the planes: 6e-5 of the shots.
constexpr double kObstacleTail = 4;
/// A panel with less weight than this has no planes at all.
constexpr double kNoWeight = 1e-12;

struct Node {
  double at;  ///< -1..1
  double weight;
};
// Gauss-Legendre rules of 2, 3 and 6 points (Abramowitz & Stegun, table 25.4).
constexpr Node kTwo[] = {{-0.577350269189626, 1}, {0.577350269189626, 1}};
constexpr Node kThree[] = {
    {-0.774596669241483, 0.555555555555556}, {0, 0.888888888888889}, {0.774596669241483, 0.555555555555556}};
constexpr Node kSix[] = {{-0.932469514203152, 0.171324492379170}, {-0.661209386466265, 0.360761573048139},
                         {-0.238619186083197, 0.467913934572691}, {0.238619186083197, 0.467913934572691},
                         {0.661209386466265, 0.360761573048139},  {0.932469514203152, 0.171324492379170}};

/// As many planes as a panel of that weight deserves.
std::span<const Node> ruleFor(double weight) {
  if (weight < 0.01) return kTwo;
  if (weight < 0.2) return kThree;
  return kSix;
}

struct WeightedDirection {
  double direction;
  double weight;
};

/// Directions at which what a shot can meet changes all at once: past the screen's edge, a side wall, a post.
std::vector<double> sideDirections(const CaptureInput& input) {
  const double radius = input.surroundings.ball.radius;
  const double half = input.frame.width / 2;
  const double mouth = detail::mouthOf(input.frame);
  std::vector<double> directions;
  const auto add = [&](double across, double down) {
    if (down <= input.ball.x()) return;
    for (const double side : {-1.0, 1.0})
      directions.push_back(std::atan2(side * across - input.ball.y(), down - input.ball.x()));
  };
  add(input.screen.width / 2 - radius, 0);
  add(half - radius, 0);
  add(half - input.frame.tube - radius, mouth);
  add(half + radius, mouth);
  return directions;
}

std::vector<Vec3> cornersOf(const Solid& body) {
  if (const auto* solid = std::get_if<ConvexPolyhedron>(&body)) return solid->vertices();
  const Aabb3 box = boundsOf(body);
  std::vector<Vec3> corners;
  for (const double d : {box.low.x(), box.high.x()})
    for (const double r : {box.low.y(), box.high.y()}) corners.emplace_back(d, r, box.low.z());
  return corners;
}

/// The directions between which an obstacle stands, grown by the ball: exact for upright sides to some
/// milliradians.
std::pair<double, double> sidesOf(const Obstacle& obstacle, const CaptureInput& input) {
  std::pair<double, double> sides{kPi, -kPi};
  for (const Vec3& corner : cornersOf(obstacle.body)) {
    const Vec2 offset = flat(corner) - flat(input.ball);
    const double angle = std::atan2(offset.y(), offset.x());
    const double growth = std::atan2(input.surroundings.ball.radius, offset.norm());
    sides.first = std::min(sides.first, angle - growth);
    sides.second = std::max(sides.second, angle + growth);
  }
  return sides;
}

/// Shares of the shots to the left of each direction in which what they meet may change at once; sorted.
std::vector<double> splitsOf(const CaptureInput& input) {
  std::vector<double> splits = {detail::normalBelow(-kTail), 0.5, detail::normalBelow(kTail)};
  const auto add = [&](double direction, double tail) {
    const double deviations = (direction - input.shots.meanDirection) / input.shots.sigmaDirection;
    if (std::abs(deviations) < tail) splits.push_back(detail::normalBelow(deviations));
  };
  for (const double direction : sideDirections(input)) add(direction, kTail);
  for (const Obstacle& obstacle : input.obstacles) {
    const Aabb3 box = boundsOf(obstacle.body);
    const bool behindScreen = box.low.x() > 0 && box.high.z() < input.frame.height;
    if (behindScreen || box.high.x() < input.ball.x()) continue;
    const auto [left, right] = sidesOf(obstacle, input);
    add(left, kObstacleTail);
    add(right, kObstacleTail);
  }
  std::ranges::sort(splits);
  return splits;
}

/// Planes are laid out in the share of shots to the left of them, so that equal lengths weigh the same.
std::vector<WeightedDirection> weightedDirections(const CaptureInput& input) {
  const Shots& shots = input.shots;
  const std::vector<double> splits = splitsOf(input);
  std::vector<WeightedDirection> directions;
  for (std::size_t i = 1; i < splits.size(); ++i) {
    const double width = splits[i] - splits[i - 1];
    if (width < kNoWeight) continue;
    for (const Node& node : ruleFor(width)) {
      const double share = splits[i - 1] + 0.5 * (node.at + 1) * width;
      directions.push_back({shots.meanDirection + shots.sigmaDirection * detail::normalQuantile(share),
                            0.5 * node.weight * width});
    }
  }
  return directions;
}

/// The launch angle of a span that most shots have. Kept off its ends, where the outcome is in doubt.
double likeliestIn(const LaunchSpan& span, double mean) {
  constexpr double kDoubt = 2e-6;  // twice what bisection leaves
  const double margin = std::min(kDoubt, 0.25 * (span.to - span.from));
  return std::clamp(mean, span.from + margin, span.to - margin);
}

double squaredDeviations(const Shots& shots, double launchAngle, double direction) {
  const double up = (launchAngle - shots.meanLaunch) / shots.sigmaLaunch;
  const double side = (direction - shots.meanDirection) / shots.sigmaDirection;
  return up * up + side * side;
}

/// Adds a hit to what its obstacle already has; the likelier shot stays.
void add(std::vector<ObstacleHit>& hits, const ObstacleHit& hit, const Shots& shots) {
  const auto known = std::ranges::find(hits, hit.id, &ObstacleHit::id);
  if (known == hits.end()) {
    hits.push_back(hit);
    return;
  }
  const double share = known->share + hit.share;
  if (squaredDeviations(shots, hit.launchAngle, hit.direction) <
      squaredDeviations(shots, known->launchAngle, known->direction))
    *known = hit;
  known->share = share;
}

/// The launch angle at which a shot crosses the screen's plane at a height, on its way up or along; none if
/// it is too slow.
std::optional<double> launchToReach(const detail::FlightSpace& space, double distance, double height) {
  constexpr int kTries = 40;
  constexpr double kCloseEnough = 1e-7;  // metres
  double angle = std::atan2(height - space.input().ball.z(), distance);
  for (int i = 0; i < kTries; ++i) {
    const detail::PlanePath path = space.path(angle);
    const auto time = path.timeAtDistance(distance);
    if (!time) return std::nullopt;
    const double missing = height - path.at(*time).y();
    if (std::abs(missing) < kCloseEnough) return angle;
    // A straight ray turned by this much would end where it should.
    angle += missing * std::cos(angle) * std::cos(angle) / distance;
    if (std::abs(angle) > kSteepest) return std::nullopt;
  }
  return std::nullopt;
}

}  // namespace

Result<Capture> captureOf(const CaptureInput& input) {
  if (auto problem = problemWith(input)) return tl::unexpected(*problem);
  const Shots& shots = input.shots;
  const detail::FlightSpace space(input);
  const double lowest = std::max(-kSteepest, shots.meanLaunch - kTail * shots.sigmaLaunch);
  const double highest = std::min(kSteepest, shots.meanLaunch + kTail * shots.sigmaLaunch);
  const auto below = [&](double angle) {
    return detail::normalBelow((angle - shots.meanLaunch) / shots.sigmaLaunch);
  };

  Capture capture;
  double all = 0;
  for (const WeightedDirection& weighted : weightedDirections(input)) {
    const detail::Slice slice(space, weighted.direction);
    for (const LaunchSpan& span : slice.spans(lowest, highest)) {
      const double share = weighted.weight * (below(span.to) - below(span.from));
      capture.share[static_cast<std::size_t>(span.middle.meets)] += share;
      all += share;
      if (span.middle.meets != Meets::Obstacle) continue;
      const double angle = likeliestIn(span, shots.meanLaunch);
      add(capture.hits, {span.middle.obstacle, share, angle, weighted.direction, slice.arrival(angle)},
          shots);
    }
  }
  // What the tails left out belongs to everything alike.
  for (double& share : capture.share) share /= all;
  for (ObstacleHit& hit : capture.hits) hit.share /= all;
  std::ranges::stable_sort(capture.hits, std::greater{}, &ObstacleHit::share);
  return capture;
}

Result<std::vector<Vec2>> captureWindow(const CaptureInput& input) {
  if (auto problem = problemWith(input)) return tl::unexpected(*problem);
  constexpr int kPieces = 32;
  const double radius = input.surroundings.ball.radius;
  const double half = input.screen.width / 2 - radius;
  const double low = input.screen.bottom + radius;
  const double high = input.screen.bottom + input.screen.height - radius;
  const CaptureInput bare{input.frame, input.screen, input.ball, input.shots, {}, input.surroundings};
  const detail::FlightSpace space(bare);
  const double down = -input.ball.x();
  const double left = std::atan2(-half - input.ball.y(), down);
  const double right = std::atan2(half - input.ball.y(), down);

  std::vector<Vec2> lower, upper;
  for (int i = 0; i <= kPieces; ++i) {
    const double direction = left + (right - left) * i / kPieces;
    const double distance = down / std::cos(direction);
    const auto bottom = launchToReach(space, distance, low);
    const auto top = launchToReach(space, distance, high);
    if (!bottom || !top)
      return fail("A ball of this speed does not reach the whole screen.", "",
                  "Move the screen nearer or give a faster ball.");
    lower.emplace_back(direction, *bottom);
    upper.emplace_back(direction, *top);
  }
  lower.insert(lower.end(), upper.rbegin(), upper.rend());
  return lower;
}

}  // namespace baywright
