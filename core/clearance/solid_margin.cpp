// SPDX-License-Identifier: Apache-2.0
#include "clearance/solid_margin.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "clearance/worst_margin.h"

namespace baywright {
namespace {

/// Never above the distance between body and obstacle; minus infinity where their boxes overlap.
double quickBound(const ConvexPolyhedron& body, const RoomObstacle& obstacle) {
  const Aabb3& a = body.bounds();
  const Aabb3& b = obstacle.bounds;
  const double gap = (a.low - b.high).cwiseMax(b.low - a.high).cwiseMax(0.0).norm();
  return gap > 0 ? gap : -std::numeric_limits<double>::infinity();
}

/// Never below solidMarginSigma, wherever the witness lies.
double largestSigma(const PutBody& put, const RoomObstacle& obstacle) {
  const Aabb3& bounds = put.body.bounds();
  const Vec2 arm =
      (flat(bounds.high) - put.pivot).cwiseAbs().cwiseMax((flat(bounds.low) - put.pivot).cwiseAbs());
  const double place = put.placeSigma * (obstacle.inBay ? std::sqrt(2.0) : 1.0);
  return std::hypot(std::hypot(largestSigma(obstacle), put.ownSigma),
                    std::hypot(place, put.headingSigma * arm.norm()));
}

}  // namespace

double solidMarginSigma(const PutBody& put, const RoomObstacle& obstacle, const Closest& closest) {
  const Vec3& along = closest.escape;
  const double other = sigmaAlong(obstacle, closest.onSecond, along);
  const double place = put.placeSigma * flat(along).norm();
  const double otherPlace = obstacle.inBay ? put.placeSigma : 0;
  const double turn = put.headingSigma * cross(flat(closest.onFirst) - put.pivot, flat(along));
  return std::sqrt(other * other + put.ownSigma * put.ownSigma + place * place + otherPlace * otherPlace +
                   turn * turn);
}

std::optional<SolidMargin> tightest(const PutBody& put, std::span<const RoomObstacle> obstacles,
                                    std::span<const std::size_t> which) {
  std::vector<std::pair<double, std::size_t>> order;
  for (const std::size_t index : which) order.emplace_back(quickBound(put.body, obstacles[index]), index);
  std::sort(order.begin(), order.end());
  std::optional<SolidMargin> worst;
  const Solid body = put.body;
  for (const auto& [bound, index] : order) {
    if (worst && bound > searchReach(worst->margin, put.required, largestSigma(put, obstacles[index])))
      continue;
    SolidMargin found;
    found.obstacle = index;
    found.closest = closest(body, obstacles[index].solid);
    found.margin.value = found.closest.distance - put.required;
    found.margin.sigma = solidMarginSigma(put, obstacles[index], found.closest);
    const bool same = worst && !isWorse(found.margin, worst->margin) && !isWorse(worst->margin, found.margin);
    if (!worst || isWorse(found.margin, worst->margin) || (same && index < worst->obstacle)) worst = found;
  }
  return worst;
}

}  // namespace baywright
