// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "clearance/obstacles.h"
#include "clearance/placed_swing.h"
#include "geometry/triangle_tree.h"

namespace baywright {

/// One swing that is tried at many places of the floor, always in the same direction.
class ShiftedSwing {
 public:
  /// `swing` as placed with the ball over the world's origin.
  ShiftedSwing(PlacedSwing swing, Obstacles obstacles)
      : swing_(std::move(swing)), obstacles_(std::move(obstacles)) {}

  /// Least signed distance of the swing from any obstacle with the ball over `ball`; infinite without
  /// obstacles. Near places asked one after the other are fastest. Search::Everything gives the same number
  /// to the last bit.
  double distanceAt(const Vec2& ball, Search search = Search::Tree);

 private:
  double pairDistance(std::size_t obstacle, std::size_t capsule, const Vec3& by) const;

  PlacedSwing swing_;
  Obstacles obstacles_;
  std::size_t lastObstacle_ = 0;  ///< the pair that was nearest last time is likely to be near again
  std::size_t lastCapsule_ = 0;
};

}  // namespace baywright
