// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/vec.h"

namespace baywright {

/// Plain shapes, in metres, all in one frame. Any field may hold any finite number; the notes say what the
/// degenerate cases mean. They have no invariant and no behaviour: closest.h and bounds.h ask them questions.

/// Straight piece on the plan from a to b. a == b is a point.
struct Segment2 {
  Vec2 a = Vec2::Zero();
  Vec2 b = Vec2::Zero();

  bool operator==(const Segment2&) const = default;
};

/// Straight piece in space from a to b. a == b is a point.
struct Segment3 {
  Vec3 a = Vec3::Zero();
  Vec3 b = Vec3::Zero();

  bool operator==(const Segment3&) const = default;
};

/// All points within `radius` (>= 0) of the segment a-b: a limb, a shaft, a swept ball. a == b is a ball,
/// radius zero a bare segment.
struct Capsule {
  Vec3 a = Vec3::Zero();
  Vec3 b = Vec3::Zero();
  double radius = 0;

  bool operator==(const Capsule&) const = default;

  Segment3 core() const { return {a, b}; }
};

/// Flat piece of a scanned surface. It has no inside; its corners may lie on a line or coincide.
struct Triangle {
  Vec3 a = Vec3::Zero();
  Vec3 b = Vec3::Zero();
  Vec3 c = Vec3::Zero();

  bool operator==(const Triangle&) const = default;
};

/// Solid round bar with flat ends: axis from a to b (a != b), radius > 0. A column, a duct, a pipe.
struct Cylinder {
  Vec3 a = Vec3::Zero();
  Vec3 b = Vec3::Zero();
  double radius = 0;

  bool operator==(const Cylinder&) const = default;
};

}  // namespace baywright
