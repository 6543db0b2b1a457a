// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <span>
#include <vector>

#include "geometry/vec.h"

namespace baywright::testing {

/// Volume enclosed by a closed mesh whose fronts look outward; negative when they look inward.
inline double volumeOf(const std::vector<Eigen::Vector3f>& vertices,
                       const std::vector<std::uint32_t>& indices) {
  double volume = 0;
  for (std::size_t i = 0; i + 2 < indices.size(); i += 3) {
    const Vec3 a = vertices[indices[i]].cast<double>();
    const Vec3 b = vertices[indices[i + 1]].cast<double>();
    const Vec3 c = vertices[indices[i + 2]].cast<double>();
    volume += a.dot(b.cross(c)) / 6;
  }
  return volume;
}

/// Edges, known by the places of their ends, that are not gone along once in each direction: none in a closed
/// mesh.
inline int openEdges(const std::vector<Eigen::Vector3f>& vertices,
                     const std::vector<std::uint32_t>& indices) {
  using Place = std::array<long, 3>;
  const auto place = [&](std::uint32_t i) {
    const Eigen::Vector3f& p = vertices[i];
    return Place{std::lround(p.x() * 1e4f), std::lround(p.y() * 1e4f), std::lround(p.z() * 1e4f)};
  };
  std::map<std::pair<Place, Place>, int> balance;
  for (std::size_t i = 0; i + 2 < indices.size(); i += 3) {
    for (std::size_t k = 0; k < 3; ++k) {
      const Place a = place(indices[i + k]);
      const Place b = place(indices[i + (k + 1) % 3]);
      if (a == b) continue;  // a corner drawn out to nothing, as at a pole
      if (a < b) ++balance[{a, b}];
      if (b < a) --balance[{b, a}];
    }
  }
  int open = 0;
  for (const auto& [edge, count] : balance) open += count != 0;
  return open;
}

/// Triangles whose corners' normals do not look the way the front does.
inline int turnedNormals(const std::vector<Eigen::Vector3f>& vertices,
                         const std::vector<Eigen::Vector3f>& normals,
                         const std::vector<std::uint32_t>& indices) {
  int turned = 0;
  for (std::size_t i = 0; i + 2 < indices.size(); i += 3) {
    const Eigen::Vector3f a = vertices[indices[i]];
    const Eigen::Vector3f front = (vertices[indices[i + 1]] - a).cross(vertices[indices[i + 2]] - a);
    if (front.norm() < 1e-9f) continue;
    const Eigen::Vector3f sum = normals[indices[i]] + normals[indices[i + 1]] + normals[indices[i + 2]];
    turned += front.dot(sum) <= 0;
  }
  return turned;
}

}  // namespace baywright::testing
