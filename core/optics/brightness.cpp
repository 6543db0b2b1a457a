// SPDX-License-Identifier: Apache-2.0
#include "optics/brightness.h"

#include <algorithm>
#include <cmath>

#include "optics/detail/plane_map.h"
#include "optics/photometry.h"

namespace baywright {
namespace {

/// Panel positions this far off the panel are still on it, in pixels: the picture's own edge, after rounding.
constexpr double kEdgeOfPanel = 1e-6;

class LightField {
 public:
  LightField(const Picture& picture, const PictureLight& light)
      : lens_(picture.lens), light_(light), toPanel_(picture.panelFromScreen) {}

  double at(const Vec2& point) const {
    if (!(toPanel_.depth(point) > 0)) return 0;
    const Vec2 pixel = toPanel_(point);
    if (pixel.minCoeff() < -kEdgeOfPanel || (pixel - lens_.panel).maxCoeff() > kEdgeOfPanel) return 0;
    const double perPixel = light_.lumens / (lens_.panel.x() * lens_.panel.y());
    return perPixel * relativeLight(lens_, light_.spread, pixel) * toPanel_.areaScale(point);
  }

 private:
  const ProjectorLens& lens_;
  const PictureLight& light_;
  detail::PlaneMap toPanel_;
};

Vec2 between(const std::array<Vec2, 4>& target, double across, double down) {
  const Vec2 top = target[0] + across * (target[1] - target[0]);
  const Vec2 bottom = target[3] + across * (target[2] - target[3]);
  return top + down * (bottom - top);
}

}  // namespace

PictureLight lightOf(const Projector& projector, const Screen& screen, double ambient) {
  return {projector.lumens, projector.contrast, screen.gain, ambient, {}};
}

double illuminanceAt(const Picture& picture, const PictureLight& light, const Vec2& point) {
  return LightField(picture, light).at(point);
}

Brightness brightnessOf(const Picture& picture, const PictureLight& light,
                        const std::array<Vec2, 4>& target) {
  Brightness result;
  const double litArea = signedArea(picture.lit);
  result.lumensOnScreen = light.lumens * lightShare(picture.lens, light.spread, picture.litOnPanel);
  result.meanIlluminance = litArea > 0 ? illuminance(result.lumensOnScreen, litArea) : 0;
  result.meanLuminance = luminance(result.meanIlluminance, light.gain);
  const LightField field(picture, light);
  for (std::size_t i = 0; i < 9; ++i) {
    const double across = (static_cast<double>(i % 3) + 0.5) / 3;
    const double down = (static_cast<double>(i / 3) + 0.5) / 3;
    result.ninePoints[i] = field.at(between(target, across, down));
  }
  const auto [lowest, highest] = std::minmax_element(result.ninePoints.begin(), result.ninePoints.end());
  result.uniformity = *highest > 0 ? *lowest / *highest : 0;
  result.contrast = contrastWith(result.meanIlluminance, light.nativeContrast, light.ambient);
  result.contrastLowest = contrastWith(*lowest, light.nativeContrast, light.ambient);
  return result;
}

}  // namespace baywright
