// SPDX-License-Identifier: Apache-2.0
#include "flight/air.h"

#include <cmath>

#include "flight/detail/in_bounds.h"

namespace baywright {
namespace {

// ISO 2533:1975.
constexpr double kSeaLevelTemperature = 288.15;   // K
constexpr double kLapseRate = 0.0065;             // K/m
constexpr double kSeaLevelPressure = 101325;      // Pa
constexpr double kGasConstant = 287.05287;        // J/(kg K)
constexpr double kGravity = 9.80665;              // m/s^2
constexpr double kSutherlandFactor = 1.458e-6;    // kg/(m s sqrt(K))
constexpr double kSutherlandTemperature = 110.4;  // K

double temperatureAt(double altitude) {
  return kSeaLevelTemperature - kLapseRate * altitude;
}

double pressureAt(double altitude) {
  constexpr double exponent = kGravity / (kGasConstant * kLapseRate);
  return kSeaLevelPressure * std::pow(temperatureAt(altitude) / kSeaLevelTemperature, exponent);
}

}  // namespace

Result<Air> airAt(double altitude, double temperature) {
  const detail::Bounds all[] = {{"An altitude", altitude, -1000, 11000, "m"},
                                {"An air temperature", temperature, 216, 333, "K"}};
  if (auto problem = detail::firstOutside(all)) return tl::unexpected(*problem);
  Air air;
  air.density = pressureAt(altitude) / (kGasConstant * temperature);
  const double viscosity =
      kSutherlandFactor * temperature * std::sqrt(temperature) / (temperature + kSutherlandTemperature);
  air.kinematicViscosity = viscosity / air.density;
  return air;
}

Result<Air> standardAir(double altitude) {
  return airAt(altitude, temperatureAt(altitude));
}

}  // namespace baywright
