// SPDX-License-Identifier: Apache-2.0
#include "optics/light_spread.h"

#include <algorithm>

#include "optics/detail/convex.h"

namespace baywright {
namespace {

/// light = scale * (1 - fall * r^2), r^2 counted from the panel's middle and 1 at its corners. The mean of
/// r^2 over a rectangle is 1/3 whatever its aspect.
struct Parabola {
  Vec2 middle;
  double fall;
  double scale;
};

Parabola parabolaOf(const ProjectorLens& lens, const LightSpread& spread) {
  const double drop = 1 - spread.cornerShare;
  const Vec2 middle = 0.5 * lens.panel;
  return {middle, drop / middle.squaredNorm(), 1 / (1 - drop / 3)};
}

}  // namespace

double relativeLight(const ProjectorLens& lens, const LightSpread& spread, const Vec2& pixel) {
  const Parabola light = parabolaOf(lens, spread);
  return light.scale * (1 - light.fall * (pixel - light.middle).squaredNorm());
}

double lightShare(const ProjectorLens& lens, const LightSpread& spread, const Ring& part) {
  const Parabola light = parabolaOf(lens, spread);
  const double sum = signedArea(part) - light.fall * detail::secondMoment(part, light.middle);
  return std::clamp(light.scale * sum / (lens.panel.x() * lens.panel.y()), 0.0, 1.0);
}

}  // namespace baywright
