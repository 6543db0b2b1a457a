// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/convex_polyhedron.h"
#include "geometry/polygon.h"

namespace baywright::detail {

/// Outline of a convex body seen along an axis: `viewFromBody` takes a Vec3 to a Vec2 by a linear map.
/// Counter-clockwise. Internal to `drawing`.
template <class ViewFromBody>
Ring silhouetteOf(const ConvexPolyhedron& body, const ViewFromBody& viewFromBody) {
  std::vector<Vec2> points;
  points.reserve(body.vertices().size());
  for (const Vec3& vertex : body.vertices()) points.push_back(viewFromBody(vertex));
  return convexHull(std::move(points));
}

}  // namespace baywright::detail
