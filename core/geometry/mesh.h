// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <memory>
#include <utility>
#include <vector>

#include "base/problem.h"
#include "geometry/bounds.h"

namespace baywright {

/// A scanned surface: triangles over shared vertices, in metres. It never changes, and copies share it, so a
/// job that holds one stays cheap to copy. Triangles may overlap, face any way, and have no area.
class TriangleMesh {
 public:
  using Corners = std::array<std::uint32_t, 3>;

  /// The empty mesh.
  TriangleMesh();
  /// Refused with a sentence: indices out of range, coordinates that are not finite.
  static Result<TriangleMesh> from(std::vector<Eigen::Vector3f> vertices, std::vector<Corners> triangles);

  std::size_t vertexCount() const { return data_->vertices.size(); }
  std::size_t triangleCount() const { return data_->triangles.size(); }
  const std::vector<Eigen::Vector3f>& vertices() const { return data_->vertices; }
  const std::vector<Corners>& triangles() const { return data_->triangles; }
  Triangle triangle(std::size_t index) const;
  const Aabb3& bounds() const { return data_->bounds; }

  /// The same data, not merely equal data.
  bool operator==(const TriangleMesh& other) const { return data_ == other.data_; }

 private:
  struct Data {
    std::vector<Eigen::Vector3f> vertices;
    std::vector<Corners> triangles;
    Aabb3 bounds;
  };
  explicit TriangleMesh(std::shared_ptr<const Data> data) : data_(std::move(data)) {}

  std::shared_ptr<const Data> data_;
};

}  // namespace baywright
