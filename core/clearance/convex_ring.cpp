// SPDX-License-Identifier: Apache-2.0
#include "clearance/convex_ring.h"

namespace baywright {

HalfPlane behindEdge(const Ring& ring, std::size_t edge) {
  const Vec2& from = ring[edge];
  const Vec2& to = ring[(edge + 1) % ring.size()];
  const Vec2 normal = -leftOf((to - from).normalized());
  return {normal, normal.dot(from)};
}

Ring clipped(const Ring& convex, const HalfPlane& keep) {
  Ring kept;
  for (std::size_t i = 0; i < convex.size(); ++i) {
    const Vec2& from = convex[i];
    const Vec2& to = convex[(i + 1) % convex.size()];
    const double before = keep.normal.dot(from) - keep.offset;
    const double after = keep.normal.dot(to) - keep.offset;
    if (before <= 0) kept.push_back(from);
    if ((before < 0 && after > 0) || (before > 0 && after < 0)) {
      kept.push_back(from + before / (before - after) * (to - from));
    }
  }
  return kept.size() < 3 ? Ring{} : kept;
}

Ring commonOf(std::span<const HalfPlane> halfPlanes, const Vec2& middle, double reach) {
  Ring ring = {middle + Vec2(-reach, -reach), middle + Vec2(reach, -reach), middle + Vec2(reach, reach),
               middle + Vec2(-reach, reach)};
  for (const HalfPlane& keep : halfPlanes) ring = clipped(ring, keep);
  return ring;
}

}  // namespace baywright
