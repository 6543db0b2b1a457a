// SPDX-License-Identifier: Apache-2.0
#include "drawing/round_length.h"

#include "units/unit_constants.h"

namespace baywright {
namespace {

double roundDecimal(double unit, double smallest, double atLeast) {
  for (double decade = smallest;; decade *= 10) {
    for (const double step : {1.0, 2.0, 5.0}) {
      if (step * decade * unit >= atLeast * (1 - 1e-12)) return step * decade * unit;
    }
  }
}

}  // namespace

double roundLength(const UnitSystem& units, double atLeast) {
  if (!isImperial(units.length)) return roundDecimal(1, 1e-3, atLeast);
  for (const double inches : {1.0, 2.0, 6.0}) {
    if (inches * kMetresPerInch >= atLeast) return inches * kMetresPerInch;
  }
  return roundDecimal(12 * kMetresPerInch, 1, atLeast);
}

}  // namespace baywright
