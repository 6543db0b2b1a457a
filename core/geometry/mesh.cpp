// SPDX-License-Identifier: Apache-2.0
#include "geometry/mesh.h"

#include <limits>
#include <string>
#include <utility>

namespace baywright {

TriangleMesh::TriangleMesh() : data_(std::make_shared<const Data>()) {}

Result<TriangleMesh> TriangleMesh::from(std::vector<Eigen::Vector3f> vertices,
                                        std::vector<Corners> triangles) {
  Data data;
  for (std::size_t i = 0; i < vertices.size(); ++i) {
    if (!vertices[i].allFinite()) {
      return fail("A coordinate is not a finite number.", "vertex " + std::to_string(i + 1));
    }
  }
  Eigen::Vector3f low = Eigen::Vector3f::Constant(std::numeric_limits<float>::infinity());
  Eigen::Vector3f high = -low;
  for (std::size_t i = 0; i < triangles.size(); ++i) {
    for (const std::uint32_t corner : triangles[i]) {
      if (corner >= vertices.size()) {
        return fail("A triangle names a vertex that does not exist.", "triangle " + std::to_string(i + 1));
      }
      low = low.cwiseMin(vertices[corner]);
      high = high.cwiseMax(vertices[corner]);
    }
  }
  data.bounds = {low.cast<double>(), high.cast<double>()};
  data.vertices = std::move(vertices);
  data.triangles = std::move(triangles);
  return TriangleMesh(std::make_shared<const Data>(std::move(data)));
}

Triangle TriangleMesh::triangle(std::size_t index) const {
  const auto& [a, b, c] = data_->triangles[index];
  const auto at = [&](std::uint32_t corner) -> Vec3 { return data_->vertices[corner].cast<double>(); };
  return {at(a), at(b), at(c)};
}

}  // namespace baywright
