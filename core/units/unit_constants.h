// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <numbers>

namespace baywright {

/// Sizes of units in SI. All are exact by definition: inch, foot, pound and mile by the international yard
/// and pound agreement of 1959 (NIST Handbook 44, appendix C); the rest follow from them. The foot-lambert is
/// 1/pi candela per square foot, the footcandle one lumen per square foot.
inline constexpr double kMetresPerInch = 0.0254;
inline constexpr double kMetresPerFoot = 0.3048;
inline constexpr double kKilogramsPerPound = 0.45359237;
inline constexpr double kKilogramsPerOunce = kKilogramsPerPound / 16;
inline constexpr double kMetresPerSecondPerMph = 0.44704;
inline constexpr double kMetresPerSecondPerKmh = 1 / 3.6;
inline constexpr double kRadiansPerDegree = std::numbers::pi / 180;
inline constexpr double kRadiansPerSecondPerRpm = std::numbers::pi / 30;
inline constexpr double kLuxPerFootcandle = 1 / (kMetresPerFoot * kMetresPerFoot);
inline constexpr double kNitsPerFootLambert = kLuxPerFootcandle / std::numbers::pi;

}  // namespace baywright
