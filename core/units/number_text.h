// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "base/problem.h"
#include "units/unit_system.h"

namespace baywright {

/// What stands for a figure that is not finite, or too large to have been meant.
inline constexpr std::string_view kNoFigure = "—";

/// A number without a unit, such as a screen gain or a throw ratio: "1.2", "1,2" where the decimal is a
/// comma, "1 1/2". At most a million either way.
Result<double> parseNumber(std::string_view utf8, const UnitSystem& units);

/// The number with that many decimals (0 to 6), rounded half away from zero, with a true minus sign (U+2212)
/// and never a negative zero. No marks between thousands. Prints kNoFigure from 1e9 up.
std::string formatNumber(double value, int decimals, const UnitSystem& units);

}  // namespace baywright
