// SPDX-License-Identifier: Apache-2.0
#include "flight/air.h"

#include <cmath>
#include <string>

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
  if (!(altitude >= -500 && altitude <= 11000))
    return fail("The altitude of " + std::to_string(altitude) +
                    " m is outside the standard atmosphere's first layer.",
                "", "Give an altitude from -500 to 11000 m.");
  if (!(temperature >= 216 && temperature <= 333))
    return fail("Air of " + std::to_string(temperature) +
                    " K is outside the range that the gas law is used for here.",
                "", "Give a temperature from 216 to 333 K.");
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
