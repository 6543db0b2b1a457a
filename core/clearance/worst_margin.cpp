// SPDX-License-Identifier: Apache-2.0
#include "clearance/worst_margin.h"

#include <cmath>
#include <limits>

namespace baywright {

double margins95(Uncertain margin) {
  if (margin.sigma > 0) return margin.value / margin.halfWidth95();
  return std::copysign(std::numeric_limits<double>::infinity(), margin.value);
}

bool isWorse(Uncertain a, Uncertain b) {
  if (a.value < 0 || b.value < 0) return a.value < b.value;
  // a.value / a.sigma < b.value / b.sigma without dividing by zero.
  const double left = a.value * b.sigma;
  const double right = b.value * a.sigma;
  if (left != right) return left < right;
  return a.sigma == 0 && b.sigma == 0 && a.value < b.value;
}

double searchReach(Uncertain best, double required, double largestSigma) {
  if (best.value < 0) return required + best.value;
  if (best.sigma == 0 || largestSigma == 0) return std::numeric_limits<double>::infinity();
  return required + best.value / best.sigma * largestSigma;
}

}  // namespace baywright
