// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "geometry/polygon.h"
#include "geometry/shapes.h"
#include "optics/brightness.h"

namespace baywright {

/// The part of the lit screen that has at least so much light.
struct LightBand {
  double lux = 0;
  Ring region;  ///< (s, t), counter-clockwise, convex
  /// Where the light is just that, from edge to edge of the lit part; none where all of it has more.
  std::optional<Segment2> contour;
};

/// The lit part in bands of light, for drawing: the first is all of it, at its lowest light, and each lies
/// within the one before. Of an evenly lit panel (LightSpread) light falls off as the cube of a linear
/// function of the place on the screen (PlaneMap::areaScale), so that lines of equal light are straight, and
/// this is exact.
struct LightBands {
  double lowest = 0;   ///< lux on the lit part
  double highest = 0;  ///< likewise
  double step = 0;  ///< between bands, in `unit`s: 1, 2 or 5 times a power of ten; 0 when there is one band
  std::vector<LightBand> bands;
};

/// At most kMostLightBands. Levels are whole steps of `unit` lux, 1 or a foot-candle's 10.76. A picture that
/// is even to kEvenLight has one band; one that misses the screen has none.
LightBands lightBands(const Picture& picture, const PictureLight& light, double unit = 1);

inline constexpr int kMostLightBands = 7;
/// Two points of light that differ by less than this share look the same (common practice, no source).
inline constexpr double kEvenLight = 0.02;

/// Lux in a foot-candle: a lumen on a square foot of 0.3048 m.
inline constexpr double kLuxPerFootCandle = 1 / (0.3048 * 0.3048);

}  // namespace baywright
