// SPDX-License-Identifier: Apache-2.0
#include "geometry/point_tree.h"

#include <algorithm>
#include <string>
#include <utility>

#include "geometry/detail/box_tree.h"
#include "geometry/detail/nearest_pair.h"

namespace baywright {

struct PointTree::Data {
  PointCloud cloud;
  detail::BoxTree boxes;
};

Result<std::optional<PointTree>> PointTree::build(PointCloud cloud, const Progress& progress) {
  std::vector<detail::BoxF> boxes;
  boxes.reserve(cloud->size());
  for (const Eigen::Vector3f& p : *cloud) {
    if (!p.allFinite()) {
      return fail("A coordinate is not a finite number.", "point " + std::to_string(boxes.size() + 1));
    }
    boxes.push_back({p, p});
  }
  auto tree = detail::BoxTree::build(boxes, progress);
  if (!tree) return std::nullopt;
  return PointTree(std::make_shared<const Data>(Data{std::move(cloud), std::move(*tree)}));
}

const PointCloud& PointTree::cloud() const {
  return data_->cloud;
}

std::optional<NearestPoint> PointTree::nearest(const Capsule& capsule, double upperBound,
                                               Search search) const {
  const std::vector<Eigen::Vector3f>& points = *data_->cloud;
  const Segment3 core = capsule.core();
  const auto distanceTo = [&](std::size_t index) {
    const Vec3 p = points[index].cast<double>();
    return (p - detail::nearestOn(core, p)).norm() - capsule.radius;
  };
  std::optional<std::size_t> best;
  double bound = upperBound;
  const auto measure = [&](std::size_t index) {
    const double distance = distanceTo(index);
    if (distance < bound || (best && distance == bound && index < *best)) {
      best = index;
      bound = distance;
    }
    return bound + capsule.radius;
  };
  if (search == Search::Everything) {
    for (std::size_t i = 0; i < points.size(); ++i) measure(i);
  } else {
    data_->boxes.visitNear(core, upperBound + capsule.radius, measure);
  }
  if (!best) return std::nullopt;
  const Vec3 p = points[*best].cast<double>();
  return NearestPoint{closest(capsule, Capsule{p, p, 0}), *best};
}

}  // namespace baywright
