// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

namespace baywright {

/// How many scales of the scatter the biweight reaches: 95 % efficient for normal errors (Huber & Ronchetti,
/// Robust Statistics).
inline constexpr double kTukey = 4.685;

/// Tukey's weight of a residual, 1 at none and 0 from `reach` on; both in the same unit, reach > 0.
inline double biweight(double residual, double reach) {
  const double u = residual / reach;
  return std::abs(u) >= 1 ? 0 : (1 - u * u) * (1 - u * u);
}

}  // namespace baywright
