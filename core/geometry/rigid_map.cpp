// SPDX-License-Identifier: Apache-2.0
#include "geometry/rigid_map.h"

namespace baywright {

RigidMap worldFromLocal(const PlanPose& pose) {
  const double c = std::cos(pose.heading);
  const double s = std::sin(pose.heading);
  RigidMap map;
  map.linear << c, -s, 0, s, c, 0, 0, 0, 1;
  map.offset = raised(pose.origin, pose.level);
  return map;
}

RigidMap worldFromBay(const BayPose& pose) {
  RigidMap map;
  map.linear.col(0) = raised(pose.down(), 0);
  map.linear.col(1) = raised(pose.right(), 0);
  map.linear.col(2) = Vec3::UnitZ();
  map.offset = raised(pose.origin, 0);
  return map;
}

Segment3 transformed(const Segment3& segment, const RigidMap& map) {
  return {map(segment.a), map(segment.b)};
}

Capsule transformed(const Capsule& capsule, const RigidMap& map) {
  return {map(capsule.a), map(capsule.b), capsule.radius};
}

Triangle transformed(const Triangle& triangle, const RigidMap& map) {
  return {map(triangle.a), map(triangle.b), map(triangle.c)};
}

Cylinder transformed(const Cylinder& cylinder, const RigidMap& map) {
  return {map(cylinder.a), map(cylinder.b), cylinder.radius};
}

}  // namespace baywright
