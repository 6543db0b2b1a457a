// SPDX-License-Identifier: Apache-2.0
#include "drawing/worsening.h"

#include <algorithm>
#include <limits>

namespace baywright {
namespace {

/// Margins lost, in units of the uncertainty; below this nothing moved (rounding).
constexpr double kLeastLoss = 1e-6;

double lossBetween(const Finding* before, const Finding& now) {
  if (!before) return std::numeric_limits<double>::infinity();
  if (!before->margin || !now.margin)
    return before->verdict < now.verdict ? std::numeric_limits<double>::infinity() : 0;
  // Where nothing is uncertain a millimetre takes its place.
  const double sigma = std::max(now.margin->sigma, 1e-3);
  return (before->margin->value - now.margin->value) / sigma;
}

}  // namespace

const Finding* worsening(const Assessment& before, const Assessment& now) {
  const Finding* worst = nullptr;
  double worstLoss = 0;
  for (const Finding& finding : now.findings) {
    if (finding.verdict == Verdict::Clear) continue;
    const double loss = lossBetween(before.find(finding.key), finding);
    if (loss <= kLeastLoss) continue;
    const bool isWorse =
        !worst || finding.verdict > worst->verdict || (finding.verdict == worst->verdict && loss > worstLoss);
    if (!isWorse) continue;
    worst = &finding;
    worstLoss = loss;
  }
  return worst;
}

}  // namespace baywright
