// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <numbers>

namespace baywright::detail {

/// Share of a standard normal distribution below x.
inline double normalBelow(double x) {
  return 0.5 * std::erfc(-x / std::numbers::sqrt2);
}

/// The x that has the share p below it, 0 < p < 1. Good to 1e-12 for p from 1e-9 to 1 - 1e-9.
double normalQuantile(double p);

}  // namespace baywright::detail
