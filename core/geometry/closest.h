// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/bounds.h"
#include "geometry/shapes.h"
#include "geometry/solid.h"

namespace baywright {

/// How near two shapes are, and where. Metres, in the frame of the two shapes.
///
/// `distance` is signed. Positive: the gap. Zero: they touch. Negative: they overlap, and -distance is the
/// penetration depth: the shortest shift that separates them.
/// `escape` is a unit vector: the way in which the first shape leaves the second soonest. Shifted by
/// -distance along escape, an overlapping first shape just touches; with a gap, escape points from the second
/// to the first. `onFirst` and `onSecond` are the witnesses: where the gap is narrowest, or where the shapes
/// touch after that shift (onFirst before the shift). Always onFirst - onSecond = distance * escape.
///
/// Over a very small gap escape loses digits, since it is the difference of the witnesses: by an angle of
/// some 1e-16 * size / distance. When they touch it comes from the faces and is exact again.
///
/// Where several answers are equally good (parallel faces, a point at the centre) one is given, always the
/// same. Shapes may be degenerate where shapes.h allows it. All coordinates must be finite.
struct Closest {
  double distance = 0;
  Vec3 onFirst = Vec3::Zero();
  Vec3 onSecond = Vec3::Zero();
  Vec3 escape = Vec3::UnitZ();
};

/// The same answer with first and second exchanged.
Closest reversed(const Closest& closest);

/// Bound on the numerical error of `distance` in every function below, and on how far a witness may stand off
/// its shape. `size` is the largest absolute coordinate or radius in the question. The arithmetic is some
/// thousand times better; verdicts use this bound so that doubt never rounds to `clear`. A polyhedron from
/// fromFaces adds its own ConvexPolyhedron::kFlatness. Only the witnesses of two overlapping cylinders are
/// worse: within a millionth of size.
inline constexpr double kClosestRelativeError = 1e-9;
inline double closestErrorBound(double size) {
  return kClosestRelativeError * size;
}

Closest closest(const Segment3& first, const Segment3& second);
Closest closest(const Capsule& first, const Capsule& second);

/// A triangle has no inside: the distance from the core is never negative. So the capsule's distance is at
/// least -radius, reached wherever the core passes through the triangle; escape is then the triangle's normal
/// on the side where less of the core sticks out, and shifting by the radius does not free the core.
Closest closest(const Segment3& first, const Triangle& second);
Closest closest(const Capsule& first, const Triangle& second);

/// Exact signed distance between convex bodies. A capsule's is its core's less its radius.
Closest closest(const Capsule& first, const ConvexPolyhedron& second);
Closest closest(const Capsule& first, const Cylinder& second);
Closest closest(const Capsule& first, const Solid& second);
Closest closest(const Vec3& point, const Solid& solid);

Closest closest(const ConvexPolyhedron& first, const ConvexPolyhedron& second);
Closest closest(const Cylinder& first, const ConvexPolyhedron& second);
Closest closest(const ConvexPolyhedron& first, const Cylinder& second);
Closest closest(const Cylinder& first, const Cylinder& second);
Closest closest(const Solid& first, const Solid& second);

/// Never above closest(capsule, anything that lies in the box).distance, be it a solid, a triangle or a
/// point. Costs a few nanoseconds: the bounds of the core against the box, less the radius.
double lowerBound(const Capsule& capsule, const Aabb3& box);

}  // namespace baywright
