// SPDX-License-Identifier: Apache-2.0
#include "clearance/shifted_swing.h"

#include <limits>

namespace baywright {
namespace {

Aabb3 shifted(const Aabb3& box, const Vec3& by) {
  return {box.low + by, box.high + by};
}
Capsule shifted(const Capsule& capsule, const Vec3& by) {
  return {capsule.a + by, capsule.b + by, capsule.radius};
}

}  // namespace

double ShiftedSwing::pairDistance(std::size_t obstacle, std::size_t capsule, const Vec3& by) const {
  return closest(shifted(swing_.capsules[capsule].capsule, by), obstacles_[obstacle]).distance;
}

double ShiftedSwing::distanceAt(const Vec2& ball, Search search) {
  const Vec3 by = raised(ball, 0);
  double best = std::numeric_limits<double>::infinity();
  if (obstacles_.empty() || swing_.capsules.empty()) return best;
  const bool skip = search == Search::Tree;
  if (skip) best = pairDistance(lastObstacle_, lastCapsule_, by);
  for (std::size_t o = 0; o < obstacles_.size(); ++o) {
    if (skip && lowerBound(shifted(swing_.bounds, by), obstacles_[o]) >= best) continue;
    for (std::size_t i = 0; i < swing_.capsules.size(); ++i) {
      if (skip && i % PlacedSwing::kGroup == 0 &&
          lowerBound(shifted(swing_.groups[i / PlacedSwing::kGroup], by), obstacles_[o]) >= best) {
        i += PlacedSwing::kGroup - 1;
        continue;
      }
      if (skip && lowerBound(shifted(swing_.capsules[i].capsule, by), obstacles_[o]) >= best) continue;
      const double distance = pairDistance(o, i, by);
      if (distance >= best) continue;
      best = distance;
      lastObstacle_ = o;
      lastCapsule_ = i;
    }
  }
  return best;
}

}  // namespace baywright
