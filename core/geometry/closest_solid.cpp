// SPDX-License-Identifier: Apache-2.0
#include "geometry/closest.h"

namespace baywright {

Closest closest(const Capsule& first, const Solid& second) {
  return std::visit([&](const auto& body) { return closest(first, body); }, second);
}

Closest closest(const Vec3& point, const Solid& solid) {
  return closest(Capsule{point, point, 0}, solid);
}

Closest closest(const ConvexPolyhedron& first, const Cylinder& second) {
  return reversed(closest(second, first));
}

Closest closest(const Solid& first, const Solid& second) {
  return std::visit([](const auto& a, const auto& b) { return closest(a, b); }, first, second);
}

}  // namespace baywright
