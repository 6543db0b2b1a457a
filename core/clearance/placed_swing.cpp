// SPDX-License-Identifier: Apache-2.0
#include "clearance/placed_swing.h"

#include <algorithm>

namespace baywright {

PlacedSwing placed(const SwingEnvelope& envelope, const RigidMap& worldFromSwing) {
  PlacedSwing swing;
  swing.worldFromSwing = worldFromSwing;
  swing.sigmaLargest = std::max({envelope.sigma, envelope.sigmaUp, envelope.sigmaLevel});
  swing.capsules.reserve(envelope.capsules.size());
  for (std::size_t i = 0; i < envelope.capsules.size(); ++i) {
    SwingCapsule capsule = envelope.capsules[i];
    capsule.capsule = transformed(capsule.capsule, worldFromSwing);
    if (i % PlacedSwing::kGroup == 0) swing.groups.emplace_back();
    swing.groups.back() = joined(swing.groups.back(), boundsOf(capsule.capsule));
    swing.capsules.push_back(capsule);
  }
  for (const Aabb3& group : swing.groups) swing.bounds = joined(swing.bounds, group);
  return swing;
}

PlacedSwing shifted(PlacedSwing swing, const Vec3& shift) {
  const auto move = [&](Aabb3& box) {
    box.low += shift;
    box.high += shift;
  };
  for (SwingCapsule& part : swing.capsules) {
    part.capsule.a += shift;
    part.capsule.b += shift;
  }
  for (Aabb3& group : swing.groups) move(group);
  move(swing.bounds);
  swing.worldFromSwing.offset += shift;
  return swing;
}

}  // namespace baywright
