// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

namespace baywright {

/// A value with its standard uncertainty (one standard deviation, same unit, never negative).
/// Sums and scaling follow first-order propagation for independent inputs: uc = sqrt(sum ci^2 ui^2),
/// JCGM 100:2008 (GUM) section 5.1.2. Dependent inputs must be combined where they arise.
struct Uncertain {
  double value = 0;
  double sigma = 0;

  bool operator==(const Uncertain&) const = default;

  /// Half-width of the 95 % interval, coverage factor for a normal distribution.
  double halfWidth95() const { return 1.959963984540054 * sigma; }
};

inline double combinedSigma(double a, double b) { return std::hypot(a, b); }

inline Uncertain operator+(Uncertain a, Uncertain b) {
  return {a.value + b.value, combinedSigma(a.sigma, b.sigma)};
}
inline Uncertain operator-(Uncertain a, Uncertain b) {
  return {a.value - b.value, combinedSigma(a.sigma, b.sigma)};
}
inline Uncertain operator*(double factor, Uncertain a) {
  return {factor * a.value, std::abs(factor) * a.sigma};
}

}  // namespace baywright
