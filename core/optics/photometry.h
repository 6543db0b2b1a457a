// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/vec.h"

namespace baywright {

/// Light on a diffusing screen. Lumens, lux, cd/m^2; gain relative to a perfect diffuser.
inline double illuminance(double lumens, double area) {
  return lumens / area;
}
/// Lambert: L = E g / pi.
inline double luminance(double lux, double gain) {
  return lux * gain / kPi;
}
/// Lumens on an area that give it a luminance.
inline double lumensFor(double luminance, double area, double gain) {
  return luminance * area * kPi / gain;
}
/// White over black as seen: (Ew + Ea) / (Eb + Ea) with Eb = Ew / native contrast. All in lux on the same
/// screen. 1 where the projector gives no light.
inline double contrastWith(double whiteLux, double nativeContrast, double ambientLux) {
  if (!(whiteLux > 0)) return 1;
  return (whiteLux + ambientLux) / (whiteLux / nativeContrast + ambientLux);
}
/// The ambient level at which the contrast falls to `wanted` (1 < wanted <= native).
inline double ambientAt(double whiteLux, double nativeContrast, double wanted) {
  return whiteLux * (1 - wanted / nativeContrast) / (wanted - 1);
}

}  // namespace baywright
