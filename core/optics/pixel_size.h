// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "optics/picture.h"

namespace baywright {

/// Size of native pixels where they fall on the screen, metres: over all of a part of the panel, the shortest
/// and longest pixel edge, along rows or columns. Exact extremes of the pinhole's map, not sampled.
struct PixelSize {
  double smallest = 0;
  double largest = 0;
};

/// `part` is a convex polygon in native pixels, in any winding, at least one corner: picture.litOnPanel, or
/// the whole panel.
PixelSize pixelSize(const Picture& picture, std::span<const Vec2> part);

/// One minute of arc, what a normal eye resolves (basis of ANSI/HFES 100); radians.
inline constexpr double kAcuity = kPi / (180.0 * 60.0);

/// How fine the picture looks from a place.
struct Acuity {
  double pixelAngle = 0;      ///< radians that one pixel of the given size takes up, seen square on
  double distance = 0;        ///< from the eye to the nearest point of the screen
  double finestDistance = 0;  ///< from here on pixels blend (pixelAngle == kAcuity)
};

/// `eye` in the bay frame, d < 0. The largest pixel is taken to lie nearest to the eye: never too fine.
Acuity acuityAt(const ScreenFace& face, const PixelSize& pixel, const Vec3& eye);

}  // namespace baywright
