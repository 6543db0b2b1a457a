// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cmath>

#include "geometry/homography.h"
#include "geometry/polygon.h"

namespace baywright::detail {

/// A homography on the side of its line at infinity where `depth` is positive: the maps of a Picture are
/// scaled so that this is the side in front of the lens. Cheaper than mapped() for thousands of points that
/// are known to be there.
class PlaneMap {
 public:
  explicit PlaneMap(const Homography& map) : m_(map.matrix), determinant_(map.matrix.determinant()) {}

  double depth(const Vec2& p) const { return m_(2, 0) * p.x() + m_(2, 1) * p.y() + m_(2, 2); }
  Vec2 operator()(const Vec2& p) const {
    const Vec3 q = m_ * Vec3{p.x(), p.y(), 1};
    return {q.x() / q.z(), q.y() / q.z()};
  }
  /// Area of a small patch at p after over before.
  double areaScale(const Vec2& p) const {
    const double w = depth(p);
    return std::abs(determinant_ / (w * w * w));
  }
  /// A ring's image in the opposite order, so that it stays counter-clockwise: panel y runs down, screen t
  /// up.
  Ring turnedOver(const Ring& ring) const {
    Ring image;
    image.reserve(ring.size());
    for (auto p = ring.rbegin(); p != ring.rend(); ++p) image.push_back((*this)(*p));
    return image;
  }

 private:
  Mat3 m_;
  double determinant_;
};

}  // namespace baywright::detail
