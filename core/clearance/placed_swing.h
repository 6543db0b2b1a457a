// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/bounds.h"
#include "geometry/rigid_map.h"
#include "swing/envelope.h"

namespace baywright {

/// An envelope where it stands in the world, its capsules gathered in groups that follow each other in the
/// motion, so that most of them need not be looked at one by one.
struct PlacedSwing {
  static constexpr std::size_t kGroup = 8;

  std::vector<SwingCapsule> capsules;  ///< world
  std::vector<Aabb3> groups;           ///< group i holds the capsules from i * kGroup on
  Aabb3 bounds;
  RigidMap worldFromSwing;
  double sigmaLargest = 0;  ///< of the envelope's surface in any direction

  Vec3 origin() const { return worldFromSwing.offset; }
};

PlacedSwing placed(const SwingEnvelope& envelope, const RigidMap& worldFromSwing);
/// The same swing elsewhere.
PlacedSwing shifted(PlacedSwing swing, const Vec3& shift);

}  // namespace baywright
