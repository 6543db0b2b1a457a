// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "geometry/convex_polyhedron.h"
#include "geometry/polygon.h"
#include "geometry/shapes.h"
#include "geometry/solid.h"

namespace baywright::detail {

/// Triangles in the making, world metres; fronts turn counter-clockwise. Corners are not shared between
/// faces, so that edges stay sharp. Internal to `drawing`.
class MeshBuilder {
 public:
  /// A flat convex face, counter-clockwise seen from its front.
  void addFace(std::span<const Vec3> corners);
  /// Any simple region on the plan, raised to `surface`; its front looks up or down. What cannot be
  /// triangulated is left out.
  enum class Front { Up, Down };
  void addRegion(const Polygon& region, const SlopedPlane& surface, Front front);
  void addBody(const ConvexPolyhedron& body);
  void addCylinder(const Cylinder& cylinder);
  void addSolid(const Solid& solid);
  /// Smoothly shaded.
  void addCapsule(const Capsule& capsule);

  std::vector<Eigen::Vector3f> vertices;
  std::vector<Eigen::Vector3f> normals;
  std::vector<std::uint32_t> indices;

 private:
  std::uint32_t addVertex(const Vec3& at, const Vec3& normal);
  /// Rings of equally many points, each joined to the next; `normalAt(ring, index)`.
  void addRings(const std::vector<std::vector<Vec3>>& rings,
                const std::vector<std::vector<Vec3>>& normalRings);
};

}  // namespace baywright::detail
