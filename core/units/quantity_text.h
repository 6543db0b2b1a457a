// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "base/problem.h"
#include "units/unit_system.h"

namespace baywright {

/// Everything but lengths and angles that a job holds. Inside `core` each is in the unit given here.
enum class QuantityKind {
  Mass,          ///< kg; typed in kg, g, lb, oz
  Speed,         ///< m/s; typed in m/s, km/h, mph, ft/s
  Spin,          ///< rad/s; typed in rpm, rad/s; may be negative
  LuminousFlux,  ///< lm
  Illuminance,   ///< lx; typed in lx, fc
  Luminance,     ///< cd/m2; typed in cd/m2, nit, fL
  Ratio,         ///< 1 is the whole; typed in percent; may be negative
};

/// The quantity in its unit of `core`. A number without a unit is in the unit that formatQuantity prints for
/// the job's system, save that light things are typed in kg or lb all the same. Upper and lower case are one.
/// Refused: a unit of some other quantity, and values that no bay has (below zero, a mass over 10 t, a speed
/// over 200 m/s, a spin over 20 000 rpm, more than 1e6 lm, lx or cd/m2, more than 1000 %). The problem's
/// `where` is "character 4", counted in code points.
Result<double> parseQuantity(std::string_view utf8, QuantityKind quantity, const UnitSystem& units);

/// For jobs in feet or inches: 6.50 lb, 103.4 mph, 2700 rpm, 4000 lm, 37.2 fc, 14.6 fL, 64.0 %.
/// For metric jobs: 8.50 kg, 46.2 m/s, 2700 rpm, 4000 lm, 400 lx, 50.0 cd/m2, 64.0 %.
/// A mass below 1 lb or 1 kg is printed as 1.62 oz or 45.9 g. What is not finite prints as "—".
std::string formatQuantity(double value, QuantityKind quantity, const UnitSystem& units);

}  // namespace baywright
