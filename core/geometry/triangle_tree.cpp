// SPDX-License-Identifier: Apache-2.0
#include "geometry/triangle_tree.h"

#include <utility>
#include <vector>

#include "geometry/detail/box_tree.h"

namespace baywright {

struct TriangleTree::Data {
  TriangleMesh mesh;
  detail::BoxTree boxes;
};

std::optional<TriangleTree> TriangleTree::build(const TriangleMesh& mesh, const Progress& progress) {
  std::vector<detail::BoxF> boxes(mesh.triangleCount());
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    const auto& [a, b, c] = mesh.triangles()[i];
    const auto& v = mesh.vertices();
    boxes[i] = {v[a].cwiseMin(v[b]).cwiseMin(v[c]), v[a].cwiseMax(v[b]).cwiseMax(v[c])};
  }
  auto tree = detail::BoxTree::build(boxes, progress);
  if (!tree) return std::nullopt;
  return TriangleTree(std::make_shared<const Data>(Data{mesh, std::move(*tree)}));
}

const TriangleMesh& TriangleTree::mesh() const {
  return data_->mesh;
}

std::optional<NearestTriangle> TriangleTree::nearest(const Capsule& capsule, double upperBound,
                                                     Search search) const {
  std::optional<NearestTriangle> best;
  double bound = upperBound;
  // Returns how near a core must come to matter; equal distances do, for the lowest index is wanted.
  const auto measure = [&](std::size_t index) {
    const Closest c = closest(capsule, data_->mesh.triangle(index));
    if (c.distance < bound || (best && c.distance == bound && index < best->triangle)) {
      best = NearestTriangle{c, index};
      bound = c.distance;
    }
    return bound + capsule.radius;
  };
  if (search == Search::Everything) {
    for (std::size_t i = 0; i < data_->mesh.triangleCount(); ++i) measure(i);
  } else {
    data_->boxes.visitNear(capsule.core(), upperBound + capsule.radius, measure);
  }
  return best;
}

}  // namespace baywright
