// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/ring_edges.h"

#include <algorithm>
#include <optional>

namespace baywright::detail {

double nearestShare(const Segment2& segment, const Vec2& p) {
  const Vec2 along = segment.b - segment.a;
  const double squared = along.squaredNorm();
  if (!(squared > 0)) return 0;
  return std::clamp(along.dot(p - segment.a) / squared, 0.0, 1.0);
}

namespace {

std::optional<Vec2> crossing(const Segment2& first, const Segment2& second) {
  const Vec2 u = first.b - first.a;
  const Vec2 v = second.b - second.a;
  const double fromA = cross(v, first.a - second.a);
  const double fromB = cross(v, first.b - second.a);
  const double toA = cross(u, second.a - first.a);
  const double toB = cross(u, second.b - first.a);
  // A proper crossing only: touches are found by the end points.
  if (!((fromA < 0) != (fromB < 0)) || !((toA < 0) != (toB < 0)) || fromA == fromB) return std::nullopt;
  return first.a + u * (fromA / (fromA - fromB));
}

}  // namespace

PlanPair nearestPair(const Segment2& first, const Segment2& second) {
  if (const auto common = crossing(first, second)) return {0, *common, *common};
  PlanPair best;
  bool any = false;
  const auto offer = [&](const Vec2& p, const Vec2& q) {
    const double distance = (p - q).norm();
    if (any && distance >= best.distance) return;
    best = {distance, p, q};
    any = true;
  };
  const auto on = [](const Segment2& s, double share) -> Vec2 {
    return share >= 1 ? s.b : Vec2(s.a + share * (s.b - s.a));
  };
  offer(on(first, nearestShare(first, second.a)), second.a);
  offer(on(first, nearestShare(first, second.b)), second.b);
  offer(first.a, on(second, nearestShare(second, first.a)));
  offer(first.b, on(second, nearestShare(second, first.b)));
  return best;
}

}  // namespace baywright::detail
