// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <limits>
#include <memory>
#include <optional>
#include <vector>

#include "base/problem.h"
#include "base/progress.h"
#include "geometry/closest.h"
#include "geometry/triangle_tree.h"

namespace baywright {

/// Scanned points in metres, shared by copies.
using PointCloud = std::shared_ptr<const std::vector<Eigen::Vector3f>>;

struct NearestPoint {
  Closest closest;        ///< first is the capsule, second the point
  std::size_t point = 0;  ///< the lowest index among equally near ones
};

/// Finds the point of a cloud that is nearest to a capsule: as TriangleTree.
class PointTree {
 public:
  /// Empty when `progress` asked to stop. Refused with a sentence: coordinates that are not finite.
  static Result<std::optional<PointTree>> build(PointCloud cloud, const Progress& progress = {});

  const PointCloud& cloud() const;

  /// The nearest point whose distance from the capsule is below `upperBound`, or nothing.
  std::optional<NearestPoint> nearest(const Capsule& capsule,
                                      double upperBound = std::numeric_limits<double>::infinity(),
                                      Search search = Search::Tree) const;

 private:
  struct Data;
  explicit PointTree(std::shared_ptr<const Data> data) : data_(std::move(data)) {}

  std::shared_ptr<const Data> data_;
};

}  // namespace baywright
