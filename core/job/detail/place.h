// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "job/detail/angle.h"
#include "job/placement.h"

/// Moves within a placement, for the active option's verbs and for translate(). Internal to `job`.
namespace baywright::detail {

inline void turnBay(Placement& placement, double angle, const Vec2& pivot) {
  BayPose& bay = placement.bay;
  bay.origin = pivot + Eigen::Rotation2Dd(angle).toRotationMatrix() * (bay.origin - pivot);
  bay.heading = wrappedAngle(bay.heading + angle);
}

inline void moveStrikePoint(Placement& placement, Hand hand, const Vec2& by) {
  placement.strikeDistance -= by.x();
  (hand == Hand::Right ? placement.strikeRightHanded : placement.strikeLeftHanded) += by.y();
}

inline void moveMat(Placement& placement, const Vec2& by) {
  placement.matCentre += by;
  placement.strikeDistance -= by.x();
  placement.strikeRightHanded += by.y();
  placement.strikeLeftHanded += by.y();
  placement.monitor += raised(by, 0);
}

}  // namespace baywright::detail
