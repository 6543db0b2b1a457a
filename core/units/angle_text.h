// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "base/problem.h"
#include "units/unit_system.h"

namespace baywright {

/// Radians from an angle or a slope as people write it. Only the decimal separator of `units` matters.
///
///     12.5°   12.5 deg   12,5 degrees (decimal ',')   12° 30′   12° 30′ 15″   12.5   0.2 rad
///     1:50   4 in 12   2 %      slopes: rise to run, so the angle is the arc tangent
///
/// A number without a unit is in degrees. A leading minus turns the whole angle round.
///
/// Refused, because it could be meant in two ways: a bare fraction (4/12), minutes after degrees with
/// decimals, sixty minutes or seconds and more. Refused as out of range: a slope that runs over nothing
/// (1:0), more than one full turn either way. The problem's `where` is "character 4", counted in code points.
Result<double> parseAngle(std::string_view utf8, const UnitSystem& units);

/// Degrees with one decimal, "12.5°" or "−3,0°": 0.1° moves the end of a 4 m wall by 7 mm. parseAngle
/// reads it back to within 0.05°, and what is then printed is the same text. Prints "—" for what is not
/// finite.
std::string formatAngle(double radians, const UnitSystem& units);

}  // namespace baywright
