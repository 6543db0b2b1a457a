// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace baywright::detail {

/// Where f goes from f(low) < 0 to f(high) > 0, to the last bits of the bracket: regula falsi with Illinois'
/// correction (Dowell and Jarratt 1971), and the middle whenever three steps have not halved the bracket, so
/// that flat pieces and corners of f cost at most some 150 steps. Smooth functions take about ten.
template <class Function>
double signChange(const Function& f, double low, double high) {
  double fLow = f(low);
  double fHigh = f(high);
  const double enough = 0x1p-52 * (high - low);
  double widthBefore = high - low;
  bool wasLow = false;
  bool wasHigh = false;
  for (int step = 1; high - low > enough; ++step) {
    double at = high - fHigh * (high - low) / (fHigh - fLow);
    if (step % 3 == 0) {
      if (high - low > 0.5 * widthBefore) at = 0.5 * (low + high);
      widthBefore = high - low;
    }
    if (!(at > low && at < high)) at = 0.5 * (low + high);
    if (!(at > low && at < high)) break;
    const double value = f(at);
    if (value == 0) return at;
    const bool isLow = value < 0;
    if (isLow) {
      low = at;
      fLow = value;
      if (wasLow) fHigh *= 0.5;
    } else {
      high = at;
      fHigh = value;
      if (wasHigh) fLow *= 0.5;
    }
    wasLow = isLow;
    wasHigh = !isLow;
  }
  return 0.5 * (low + high);
}

}  // namespace baywright::detail
