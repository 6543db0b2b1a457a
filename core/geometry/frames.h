// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

#include "geometry/vec.h"

namespace baywright {

/// The frames of the program. A function that takes a point from one to the other is called toFrom, as in
/// worldFromBay(pose, p); a point is renamed when it changes frame.
/// - world: x right and y up on the plan, z up from the finished floor at the survey datum; metres
/// - bay: origin on the floor under the middle of the screen's face; d from golfer to screen, r to the right
///   when facing the screen, u up; written (d, r, u) in a Vec3, a left-handed triple
/// - swing: the bay's axes with the origin under the ball, on what the golfer stands on
/// - screen: (s, t), s to the right as the golfer sees it from the screen's left edge, t up from the lower
/// one
/// - panel: native pixels of the projector, x right and y down from the picture's top left corner
/// - lens: at the projector's lens, x along the optical axis, y to the right and z up in the picture;
///   left-handed as the bay is
///
/// Pose of a bay: where its origin stands on the floor and which way d points. heading is in radians,
/// counter-clockwise from world x, any real value.
struct BayPose {
  Vec2 origin = Vec2::Zero();
  double heading = 0;

  bool operator==(const BayPose&) const = default;

  Vec2 down() const { return {std::cos(heading), std::sin(heading)}; }    ///< unit vector of d in the world
  Vec2 right() const { return {std::sin(heading), -std::cos(heading)}; }  ///< unit vector of r in the world
};

/// `p` is (d, r, u).
inline Vec3 worldFromBay(const BayPose& pose, const Vec3& p) {
  const Vec2 xy = pose.origin + p.x() * pose.down() + p.y() * pose.right();
  return {xy.x(), xy.y(), p.z()};
}
inline Vec3 bayFromWorld(const BayPose& pose, const Vec3& p) {
  const Vec2 offset = flat(p) - pose.origin;
  return {offset.dot(pose.down()), offset.dot(pose.right()), p.z()};
}

}  // namespace baywright
