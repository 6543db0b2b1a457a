// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>

#include "job/kit.h"
#include "optics/light_spread.h"
#include "optics/picture.h"

namespace baywright {

/// What the light is, and what it has to stand up to.
struct PictureLight {
  double lumens = 0;
  double nativeContrast = 2000;
  double gain = 1;
  double ambient = 0;  ///< lux of room light on the screen
  LightSpread spread;
};
PictureLight lightOf(const Projector& projector, const Screen& screen, double ambient);

/// The screen's face seen with a white picture, room light not added unless said.
struct Brightness {
  double lumensOnScreen = 0;
  double meanIlluminance = 0;  ///< lux over the lit part of the screen
  double meanLuminance = 0;    ///< cd/m^2, likewise
  /// Illuminance at the middles of the nine equal parts of the target (ISO/IEC 21118 annex B, ISO 11315-1),
  /// row by row from the top left. Zero where the picture does not reach.
  std::array<double, 9> ninePoints{};
  double uniformity = 0;      ///< lowest over highest of the nine, 0..1
  double contrast = 1;        ///< of meanIlluminance against the ambient level
  double contrastLowest = 1;  ///< of the darkest of the nine points
};

/// `target`: the rectangle the picture is to fill, (s, t), top left first as CornerFit::target.
/// Lumens on the screen are what falls on it before corners are moved; moving them makes the rest black and
/// leaves the lit part as bright as it was.
Brightness brightnessOf(const Picture& picture, const PictureLight& light, const std::array<Vec2, 4>& target);

/// Lux at a point of the screen's plane (s, t); zero off the picture.
double illuminanceAt(const Picture& picture, const PictureLight& light, const Vec2& point);

}  // namespace baywright
