// SPDX-License-Identifier: Apache-2.0
#include "clearance/worst_margin.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baywright {

double margins95(Uncertain margin) {
  if (margin.sigma > 0) return margin.value / margin.halfWidth95();
  return std::copysign(std::numeric_limits<double>::infinity(), margin.value);
}

bool isWorse(Uncertain a, Uncertain b) {
  if (a.value < 0 || b.value < 0) return a.value < b.value;
  const bool aIsTight = a.value < a.halfWidth95();
  const bool bIsTight = b.value < b.halfWidth95();
  if (aIsTight != bIsTight) return aIsTight;
  if (!aIsTight) return a.value < b.value;
  // a.value / a.sigma < b.value / b.sigma, both sigmas above zero.
  return a.value * b.sigma < b.value * a.sigma;
}

double searchReach(Uncertain best, double required, double largestSigma) {
  if (best.value < 0) return required + best.value;
  const double tight = Uncertain{0, largestSigma}.halfWidth95();
  if (best.value >= best.halfWidth95()) return required + std::max(best.value, tight);
  return required + std::min(tight, best.value / best.sigma * largestSigma);
}

}  // namespace baywright
