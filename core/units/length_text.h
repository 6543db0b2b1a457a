// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "base/problem.h"
#include "base/uncertain.h"
#include "units/unit_system.h"

namespace baywright {

/// No room, and nothing in it, is longer than this.
inline constexpr double kLongestLength = 1000;  // metres

/// Metres from a length as people write it.
///
///     7' 6 1/2"   7ft 6.5in   7′ 6½″   7 feet 6 inches   7'6   7'-6 1/2"   12-6 1/2
///     90.5"   90 1/2 in   12.5'   2.30 m   2,30 m (decimal ',')   230cm   2300 mm   -40 mm
///
/// A unit that is typed always wins. A number without one is in the job's unit, and in a FeetInches job it is
/// in inches, as on a tape: 90 is 7' 6". A bare number after feet is inches, and a bare hyphen between two
/// numbers parts feet from inches in jobs that are measured in feet or inches. A leading minus turns the
/// whole length round: -7' 6" is minus seven and a half feet.
///
/// Refused, because it could be meant in two ways: the other decimal separator and grouped thousands (1.234),
/// a bare fraction where the job is not in inches (6 1/2 in a metre job), a hyphen before a fraction without
/// feet (6-1/2), twelve inches or more after feet, inches after feet with decimals, two numbers side by side
/// (2 300). Refused as out of range: more than kLongestLength either way. The problem's `where` is "character
/// 4", counted in code points.
Result<double> parseLength(std::string_view utf8, const UnitSystem& units);

/// As parseLength, for the size of a thing: zero and less are refused too.
Result<double> parseSize(std::string_view utf8, const UnitSystem& units);

/// The length in the job's unit, rounded half away from zero to its displayStep:
///
///     7′ 6 1/2″   2 1/2″   7.54 ft   90 1/2″   2.300 m   230.0 cm   2300 mm
///
/// parseLength reads it back to within half a step, and what is then printed is the same text. A value that
/// is not finite, or beyond 1e5 m, prints as "—".
std::string formatLength(double metres, const UnitSystem& units);

/// As formatLength with "+" or "−" in front, for offsets and margins; what rounds to zero has no sign.
std::string formatLengthSigned(double metres, const UnitSystem& units);

/// "64 mm ± 5 mm": the value and the half-width of its 95 % interval, which is rounded up to the next
/// displayStep so that it is never understated. A length without uncertainty is printed alone.
std::string formatUncertain(Uncertain metres, const UnitSystem& units);

/// The metres between two lengths that print as neighbours: a fraction of an inch, 0.01 ft, or a millimetre.
double displayStep(const UnitSystem& units);

}  // namespace baywright
