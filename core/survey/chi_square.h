// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace baywright {

/// The chance that a sum of squares of `degrees` standard normal variables is `value` or more: the upper tail
/// of the chi-square distribution. 1 for value <= 0 or no degrees. Relative error below 1e-10 by the series
/// and the continued fraction of the incomplete gamma function (Abramowitz & Stegun 6.5.29, 6.5.31).
double chiSquareTail(double value, int degrees);

/// sqrt of the 95 % point of the chi-square distribution of two degrees, sqrt(-2 ln 0.05): the axes of a 95 %
/// error ellipse in standard deviations.
inline constexpr double kEllipse95 = 2.4477468306808166;

}  // namespace baywright
