// SPDX-License-Identifier: Apache-2.0
#include "survey/line_align.h"

#include <array>
#include <cmath>

#include "survey/plan_scan_fit.h"

namespace baywright {

namespace {

// Metric scales of ISO 5455, and inches to the foot as architects' scales have them (common practice, no
// source).
constexpr std::array kUsualScales = {1.0,   2.0,   4.0,   5.0,   8.0,   10.0,  12.0,  16.0,  20.0,
                                     24.0,  25.0,  32.0,  48.0,  50.0,  64.0,  75.0,  96.0,  100.0,
                                     125.0, 128.0, 192.0, 200.0, 250.0, 384.0, 500.0, 1000.0};

}  // namespace

Result<ScaleSuggestion> suggestedScale(const Segment2& pixels, double length, double dotsPerMetre) {
  constexpr double kShortest = 10;
  const double seen = (pixels.b - pixels.a).norm();
  if (!(seen >= kShortest))
    return fail("The line is too short in the picture to scale by.", {}, "Choose a longer one.");
  if (!(length > 0) || !std::isfinite(length)) return fail("A length to scale by must be above zero.");
  ScaleSuggestion suggestion;
  suggestion.metresPerPixel = length / seen;
  const double relative = std::sqrt(2.0) * kEndSigma / seen;
  suggestion.sigma = suggestion.metresPerPixel * relative;
  if (!(dotsPerMetre > 0)) return suggestion;
  const double scale = suggestion.sheetScale = suggestion.metresPerPixel * dotsPerMetre;
  for (const double usual : kUsualScales)
    if (std::abs(scale / usual - 1) <= 3 * relative &&
        (!suggestion.usualScale || std::abs(scale - usual) < std::abs(scale - *suggestion.usualScale)))
      suggestion.usualScale = usual;
  return suggestion;
}

Result<SheetAlignment> alignedByTwoPoints(PlanScan scan, const PointPair& first, const PointPair& second) {
  const Vec2 seen = second.from - first.from;
  const Vec2 wanted = second.to - first.to;
  constexpr double kSamePoint = 1e-9;
  if (!seen.allFinite() || !wanted.allFinite() || seen.norm() < kSamePoint || wanted.norm() < kSamePoint)
    return fail("Both points coincide.", {}, "Choose two points that lie far apart on both sheets.");
  const double factor = wanted.norm() / seen.norm();
  if (factor > kLargestFactor || factor < 1 / kLargestFactor)
    return fail("The sheet would change its size too much.", {},
                "Choose two points that lie far apart on both sheets.");
  SheetAlignment alignment;
  alignment.turn = std::atan2(cross(seen, wanted), seen.dot(wanted));
  alignment.scaleChange = factor;
  Mat3 map = Mat3::Identity();
  map.topLeftCorner<2, 2>() = factor * Eigen::Rotation2Dd(alignment.turn).toRotationMatrix();
  map.topRightCorner<2, 1>() = first.to - map.topLeftCorner<2, 2>() * first.from;
  scan.worldFromPixel = map * scan.worldFromPixel;
  alignment.scan = std::move(scan);
  return alignment;
}

}  // namespace baywright
