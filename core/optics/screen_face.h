// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>

#include "geometry/vec.h"
#include "job/kit.h"

namespace baywright {

/// The rectangle that a picture is thrown on: it lies in the plane d = 0 of the bay, centred on r = 0, and
/// faces the golfer (-d). Screen coordinates (s, t) count metres from its lower left corner as the golfer
/// sees it.
struct ScreenFace {
  Vec2 size = Vec2::Zero();  ///< width and height, metres
  double bottom = 0;         ///< height of the lower edge above the floor

  bool operator==(const ScreenFace&) const = default;

  double area() const { return size.x() * size.y(); }
  Vec2 middle() const { return 0.5 * size; }
  /// Top left, top right, bottom right, bottom left, as every array of four corners in optics.
  std::array<Vec2, 4> corners() const { return {Vec2{0, size.y()}, size, Vec2{size.x(), 0}, Vec2{0, 0}}; }
};

inline ScreenFace faceOf(const Screen& screen) {
  return {{screen.width, screen.height}, screen.bottom};
}
inline Vec3 bayFromScreen(const ScreenFace& face, const Vec2& p) {
  return {0, p.x() - 0.5 * face.size.x(), p.y() + face.bottom};
}
/// `p` is (d, r, u); its distance from the plane is dropped.
inline Vec2 screenFromBay(const ScreenFace& face, const Vec3& p) {
  return {p.y() + 0.5 * face.size.x(), p.z() - face.bottom};
}

}  // namespace baywright
