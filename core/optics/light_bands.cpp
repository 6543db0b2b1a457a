// SPDX-License-Identifier: Apache-2.0
#include "optics/light_bands.h"

#include <algorithm>
#include <cmath>

#include "optics/detail/plane_map.h"

namespace baywright {
namespace {

/// The smallest of 1, 2, 5, 10, ... with at most so many steps over a span.
double roundStep(double span, int most) {
  const double least = span / most;
  const double decade = std::pow(10, std::floor(std::log10(least)));
  for (const double factor : {1.0, 2.0, 5.0}) {
    if (factor * decade >= least) return factor * decade;
  }
  return 10 * decade;
}

/// Where the depth along the beam is at most a limit: nearer is brighter.
LightBand bandWithin(const Ring& lit, const detail::PlaneMap& toPanel, double depth) {
  LightBand band;
  std::vector<Vec2> cuts;
  for (std::size_t i = 0; i < lit.size(); ++i) {
    const Vec2& a = lit[i];
    const Vec2& b = lit[(i + 1) % lit.size()];
    const double atA = toPanel.depth(a) - depth;
    const double atB = toPanel.depth(b) - depth;
    if (atA <= 0) band.region.push_back(a);
    if ((atA <= 0) == (atB <= 0)) continue;
    cuts.push_back(a + atA / (atA - atB) * (b - a));
    band.region.push_back(cuts.back());
  }
  if (cuts.size() == 2) band.contour = Segment2{cuts[0], cuts[1]};
  return band;
}

}  // namespace

LightBands lightBands(const Picture& picture, const PictureLight& light, double unit) {
  LightBands bands;
  const Ring& lit = picture.lit;
  if (lit.size() < 3 || !(unit > 0)) return bands;
  const detail::PlaneMap toPanel(picture.panelFromScreen);
  const double perPixel = light.lumens / (picture.lens.panel.x() * picture.lens.panel.y());
  const auto luxAt = [&](const Vec2& p) { return perPixel * toPanel.areaScale(p); };
  bands.lowest = bands.highest = luxAt(lit.front());
  for (const Vec2& corner : lit) {
    bands.lowest = std::min(bands.lowest, luxAt(corner));
    bands.highest = std::max(bands.highest, luxAt(corner));
  }
  bands.bands.push_back({bands.lowest, lit, {}});
  if (!(bands.highest * (1 - kEvenLight) > bands.lowest)) return bands;
  bands.step = roundStep((bands.highest - bands.lowest) / unit, kMostLightBands - 1);
  // Light at depth w is c / w^3, with c from any one corner.
  const double depth = toPanel.depth(lit.front());
  const double constant = luxAt(lit.front()) * depth * depth * depth;
  for (double level = std::floor(bands.lowest / unit / bands.step) + 1;
       level * bands.step * unit < bands.highest; ++level) {
    const double lux = level * bands.step * unit;
    LightBand band = bandWithin(lit, toPanel, std::cbrt(constant / lux));
    if (band.region.size() < 3) break;
    band.lux = lux;
    bands.bands.push_back(std::move(band));
  }
  return bands;
}

}  // namespace baywright
