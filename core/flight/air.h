// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"

namespace baywright {

/// Dry air at rest. The default is the International Standard Atmosphere (ISO 2533:1975) at sea level, 15
/// degrees Celsius.
struct Air {
  double density = 1.225;                 ///< kg/m^3
  double kinematicViscosity = 1.4607e-5;  ///< m^2/s

  bool operator==(const Air&) const = default;
};

/// ISA at a geopotential altitude in metres, -1000 to 11000: T = 288.15 K - 0.0065 K/m h,
/// p = 101325 Pa (T / 288.15 K)^5.2559, density = p / (287.05287 J/(kg K) T). Viscosity by Sutherland's law
/// with the constants of ISO 2533. Refused outside the range.
Result<Air> standardAir(double altitude);

/// The pressure of ISA at that altitude with the air's real temperature in kelvin, 216 to 333: a heated room
/// in the mountains. Humidity is left out: at 30 degrees Celsius saturated air is 1.7 % lighter (value from
/// memory).
Result<Air> airAt(double altitude, double temperature);

}  // namespace baywright
