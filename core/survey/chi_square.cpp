// SPDX-License-Identifier: Apache-2.0
#include "survey/chi_square.h"

#include <cmath>

namespace baywright {
namespace {

/// Terms beyond this share of the sum are rounding.
constexpr double kRounding = 1e-15;
/// More terms than any argument within double range needs for a thousand degrees.
constexpr int kMostTerms = 10000;
/// Keeps a continued fraction from dividing by nothing (Lentz).
constexpr double kTiny = 1e-300;

/// Lower incomplete gamma over gamma, by its series; for x < a + 1.
double lowerBySeries(double a, double x) {
  double term = 1 / a;
  double sum = term;
  for (int n = 1; n < kMostTerms && std::abs(term) > kRounding * std::abs(sum); ++n) {
    term *= x / (a + n);
    sum += term;
  }
  return sum * std::exp(a * std::log(x) - x - std::lgamma(a));
}

/// Upper incomplete gamma over gamma, by its continued fraction; for x >= a + 1.
double upperByFraction(double a, double x) {
  double b = x + 1 - a;
  double c = 1 / kTiny;
  double d = 1 / b;
  double product = d;
  for (int n = 1; n < kMostTerms; ++n) {
    const double numerator = -n * (n - a);
    b += 2;
    d = numerator * d + b;
    if (std::abs(d) < kTiny) d = kTiny;
    c = b + numerator / c;
    if (std::abs(c) < kTiny) c = kTiny;
    d = 1 / d;
    product *= c * d;
    if (std::abs(c * d - 1) < kRounding) break;
  }
  return product * std::exp(a * std::log(x) - x - std::lgamma(a));
}

}  // namespace

double chiSquareTail(double value, int degrees) {
  if (!(value > 0) || degrees <= 0) return 1;
  const double a = degrees / 2.0;
  const double x = value / 2;
  return x < a + 1 ? 1 - lowerBySeries(a, x) : upperByFraction(a, x);
}

}  // namespace baywright
