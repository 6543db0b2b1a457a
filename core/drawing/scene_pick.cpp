// SPDX-License-Identifier: Apache-2.0
#include "drawing/scene_pick.h"

namespace baywright {
namespace {

bool isOpaque(const SceneSolid& solid) {
  return solid.opacity > 0.999;
}

/// Distance along the ray to the triangle's front (Moller and Trumbore 1997); nothing when it passes.
std::optional<double> meetFront(const Vec3& from, const Vec3& along, const Vec3& a, const Vec3& b,
                                const Vec3& c) {
  const Vec3 ab = b - a;
  const Vec3 ac = c - a;
  const Vec3 p = along.cross(ac);
  const double determinant = ab.dot(p);
  if (!(determinant > 0)) return std::nullopt;
  const Vec3 offset = from - a;
  const double u = offset.dot(p);
  if (u < 0 || u > determinant) return std::nullopt;
  const Vec3 q = offset.cross(ab);
  const double v = along.dot(q);
  if (v < 0 || u + v > determinant) return std::nullopt;
  const double distance = ac.dot(q) / determinant;
  if (distance <= 0) return std::nullopt;
  return distance;
}

}  // namespace

std::optional<ScenePick> pickSolid(const std::vector<SceneSolid>& solids, const Vec3& from,
                                   const Vec3& along) {
  std::optional<ScenePick> nearest;
  for (const SceneSolid& solid : solids) {
    if (!isOpaque(solid)) continue;
    const auto corner = [&](std::size_t i) { return Vec3(solid.vertices[solid.indices[i]].cast<double>()); };
    for (std::size_t i = 0; i + 2 < solid.indices.size(); i += 3) {
      const auto distance = meetFront(from, along, corner(i), corner(i + 1), corner(i + 2));
      if (distance && (!nearest || *distance < nearest->distance)) {
        nearest = ScenePick{solid.id, from + *distance * along, *distance};
      }
    }
  }
  return nearest;
}

Eigen::AlignedBox3d sceneBounds(const std::vector<SceneSolid>& solids) {
  Eigen::AlignedBox3d box;
  for (const SceneSolid& solid : solids) {
    if (!isOpaque(solid)) continue;
    for (const Eigen::Vector3f& vertex : solid.vertices) box.extend(vertex.cast<double>());
  }
  return box;
}

}  // namespace baywright
