// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/polygon.h"
#include "optics/lens.h"

namespace baywright {

/// How light is spread on the panel. The model: every pixel of the panel sends out the same light, so that a
/// picture square to the axis is evenly lit whatever the shift (makers shape the lamp for that; no cos^4
/// fall-off). Real ones are darker toward the corners: `cornerShare` is the light of a corner pixel over that
/// of the middle, with a parabola between; the total stays the same. 1: even. What a maker states as
/// uniformity (ISO/IEC 21118) is measured and not the same figure.
struct LightSpread {
  double cornerShare = 1;  ///< > 0, <= 1

  bool operator==(const LightSpread&) const = default;
};

/// Light of one pixel over the average pixel's.
double relativeLight(const ProjectorLens& lens, const LightSpread& spread, const Vec2& pixel);

/// Share of the panel's light that leaves through a convex part of it, 0..1; exact. `part` in native pixels,
/// counter-clockwise by its numbers as Picture::litOnPanel, on the panel.
double lightShare(const ProjectorLens& lens, const LightSpread& spread, const Ring& part);

}  // namespace baywright
