// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>
#include <numbers>

namespace baywright {

using Vec2 = Eigen::Vector2d;
using Vec3 = Eigen::Vector3d;
using Mat2 = Eigen::Matrix2d;
using Mat3 = Eigen::Matrix3d;

inline constexpr double kPi = std::numbers::pi;

inline double cross(const Vec2& a, const Vec2& b) {
  return a.x() * b.y() - a.y() * b.x();
}
inline Vec2 leftOf(const Vec2& v) {
  return {-v.y(), v.x()};
}
inline Vec2 flat(const Vec3& v) {
  return v.head<2>();
}
inline Vec3 raised(const Vec2& v, double z) {
  return {v.x(), v.y(), z};
}

}  // namespace baywright
