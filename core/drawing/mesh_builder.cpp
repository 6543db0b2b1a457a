// SPDX-License-Identifier: Apache-2.0
#include "drawing/mesh_builder.h"

#include <cmath>

#include "geometry/triangulation.h"

namespace baywright::detail {
namespace {

// Round things get this many sides: a column of 0.3 m then stands off its circle by 3 mm.
constexpr int kSides = 16;
// From the rim of a capsule's cap to its pole.
constexpr int kCapRings = 3;

// Two unit vectors square to `axis` and to each other, right-handed with it.
std::pair<Vec3, Vec3> across(const Vec3& axis) {
  const Vec3 helper = std::abs(axis.z()) < 0.9 ? Vec3::UnitZ() : Vec3::UnitX();
  const Vec3 u = helper.cross(axis).normalized();
  return {u, axis.cross(u)};
}

std::vector<Vec3> ringOf(const Vec3& centre, const Vec3& u, const Vec3& v, double radius) {
  std::vector<Vec3> ring;
  for (int i = 0; i < kSides; ++i) {
    const double angle = 2 * kPi * i / kSides;
    ring.push_back(centre + radius * (std::cos(angle) * u + std::sin(angle) * v));
  }
  return ring;
}

}  // namespace

std::uint32_t MeshBuilder::addVertex(const Vec3& at, const Vec3& normal) {
  vertices.push_back(at.cast<float>());
  normals.push_back(normal.cast<float>());
  return static_cast<std::uint32_t>(vertices.size() - 1);
}

void MeshBuilder::addFace(std::span<const Vec3> corners) {
  if (corners.size() < 3) return;
  Vec3 normal = Vec3::Zero();  // Newell's sum, so that a repeated corner does no harm
  for (std::size_t i = 0; i < corners.size(); ++i)
    normal += corners[i].cross(corners[(i + 1) % corners.size()]);
  if (normal.norm() <= 0) return;
  normal.normalize();
  const auto first = static_cast<std::uint32_t>(vertices.size());
  for (const Vec3& corner : corners) addVertex(corner, normal);
  for (std::uint32_t i = 1; i + 1 < corners.size(); ++i)
    indices.insert(indices.end(), {first, first + i, first + i + 1});
}

void MeshBuilder::addRegion(const Polygon& region, const SlopedPlane& surface, Front front) {
  const auto cut = triangulated(region);
  if (!cut) return;
  const double sign = front == Front::Up ? 1 : -1;
  const Vec3 normal = sign * Vec3(-surface.gradient.x(), -surface.gradient.y(), 1).normalized();
  const auto first = static_cast<std::uint32_t>(vertices.size());
  for (const Vec2& corner : cut->corners) addVertex(raised(corner, surface.heightAt(corner)), normal);
  for (const auto& triangle : cut->triangles) {
    const auto corner = [&](int i) {
      return first + static_cast<std::uint32_t>(triangle[static_cast<std::size_t>(i)]);
    };
    if (front == Front::Up) {
      indices.insert(indices.end(), {corner(0), corner(1), corner(2)});
    } else {
      indices.insert(indices.end(), {corner(0), corner(2), corner(1)});
    }
  }
}

void MeshBuilder::addBody(const ConvexPolyhedron& body) {
  for (const ConvexPolyhedron::Face& face : body.faces()) {
    std::vector<Vec3> corners;
    for (const int corner : body.corners(face))
      corners.push_back(body.vertices()[static_cast<std::size_t>(corner)]);
    addFace(corners);
  }
}

void MeshBuilder::addCylinder(const Cylinder& cylinder) {
  const Vec3 axis = (cylinder.b - cylinder.a).normalized();
  const auto [u, v] = across(axis);
  const auto low = ringOf(cylinder.a, u, v, cylinder.radius);
  const auto high = ringOf(cylinder.b, u, v, cylinder.radius);
  const auto outward = ringOf(Vec3::Zero(), u, v, 1);
  addRings({low, high}, {outward, outward});
  addFace(high);
  addFace(std::vector<Vec3>(low.rbegin(), low.rend()));
}

void MeshBuilder::addSolid(const Solid& solid) {
  if (const auto* body = std::get_if<ConvexPolyhedron>(&solid)) addBody(*body);
  if (const auto* cylinder = std::get_if<Cylinder>(&solid)) addCylinder(*cylinder);
}

void MeshBuilder::addCapsule(const Capsule& capsule) {
  const Vec3 core = capsule.b - capsule.a;
  const Vec3 axis = core.norm() > 0 ? Vec3(core.normalized()) : Vec3::UnitZ();
  const auto [u, v] = across(axis);
  std::vector<std::vector<Vec3>> rings, outward;
  for (const auto& [centre, from, to] :
       {std::tuple{capsule.a, -kCapRings, 0}, std::tuple{capsule.b, 0, kCapRings}}) {
    for (int i = from; i <= to; ++i) {
      const double latitude = kPi / 2 * i / kCapRings;
      const Vec3 pole = std::sin(latitude) * axis;
      outward.push_back(ringOf(pole, u, v, std::cos(latitude)));
      rings.push_back(outward.back());
      for (Vec3& p : rings.back()) p = centre + capsule.radius * p;
    }
  }
  addRings(rings, outward);
}

void MeshBuilder::addRings(const std::vector<std::vector<Vec3>>& rings,
                           const std::vector<std::vector<Vec3>>& normalRings) {
  const auto first = static_cast<std::uint32_t>(vertices.size());
  for (std::size_t r = 0; r < rings.size(); ++r) {
    for (std::size_t i = 0; i < rings[r].size(); ++i) addVertex(rings[r][i], normalRings[r][i]);
  }
  constexpr auto sides = static_cast<std::uint32_t>(kSides);
  for (std::uint32_t r = 0; r + 1 < rings.size(); ++r) {
    for (std::uint32_t i = 0; i < sides; ++i) {
      const std::uint32_t a = first + r * sides + i;
      const std::uint32_t b = first + r * sides + (i + 1) % sides;
      indices.insert(indices.end(), {a, b, b + sides, a, b + sides, a + sides});
    }
  }
}

}  // namespace baywright::detail
