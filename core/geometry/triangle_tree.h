// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <limits>
#include <memory>
#include <optional>

#include "base/progress.h"
#include "geometry/closest.h"
#include "geometry/mesh.h"

namespace baywright {

/// How a tree answers: by its nodes, or by looking at everything. Both give the same distance to the last
/// bit; the second is the slow truth that tests compare with.
enum class Search { Tree, Everything };

struct NearestTriangle {
  Closest closest;           ///< first is the capsule, second the triangle
  std::size_t triangle = 0;  ///< the lowest index among equally near ones
};

/// Finds the triangle of a mesh that is nearest to a capsule. Immutable and shared when copied; any number of
/// threads may ask at once. Made for scans of millions of triangles: building takes about a third of a second
/// a million.
class TriangleTree {
 public:
  /// Empty when `progress` asked to stop.
  static std::optional<TriangleTree> build(const TriangleMesh& mesh, const Progress& progress = {});

  const TriangleMesh& mesh() const;

  /// The nearest triangle whose distance is below `upperBound`, or nothing. A small bound (the answer for the
  /// last pose, the best of other capsules) makes it much faster. Distances as closest(Capsule, Triangle).
  std::optional<NearestTriangle> nearest(const Capsule& capsule,
                                         double upperBound = std::numeric_limits<double>::infinity(),
                                         Search search = Search::Tree) const;

 private:
  struct Data;
  explicit TriangleTree(std::shared_ptr<const Data> data) : data_(std::move(data)) {}

  std::shared_ptr<const Data> data_;
};

}  // namespace baywright
