// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/frames.h"
#include "geometry/shapes.h"

namespace baywright {

/// Where a thing stands on the plan: its own x runs along `heading` (radians, counter-clockwise from world
/// x), its own y to the left of that, and its own z = 0 lies at world height `level`.
struct PlanPose {
  Vec2 origin = Vec2::Zero();
  double heading = 0;
  double level = 0;

  bool operator==(const PlanPose&) const = default;
};

/// Map that keeps all distances: p -> linear * p + offset, `linear` orthonormal. Its determinant is +1 (a
/// motion) or -1 (a motion and a mirror: the map from bay coordinates (d, r, u) is one, since r points to the
/// right).
struct RigidMap {
  Mat3 linear = Mat3::Identity();
  Vec3 offset = Vec3::Zero();

  Vec3 operator()(const Vec3& p) const { return linear * p + offset; }
  bool mirrors() const { return linear.determinant() < 0; }
};

RigidMap worldFromLocal(const PlanPose& pose);
RigidMap worldFromBay(const BayPose& pose);

Segment3 transformed(const Segment3& segment, const RigidMap& map);
Capsule transformed(const Capsule& capsule, const RigidMap& map);
Triangle transformed(const Triangle& triangle, const RigidMap& map);
Cylinder transformed(const Cylinder& cylinder, const RigidMap& map);

}  // namespace baywright
