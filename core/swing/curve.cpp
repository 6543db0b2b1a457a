// SPDX-License-Identifier: Apache-2.0
#include "swing/curve.h"

namespace baywright {

ScalarCurve monotoneCurve(std::span<const CurvePoint> points, Ends ends) {
  std::array<ScalarCurve::Knot, ScalarCurve::kMaxKnots> knots{};
  const std::size_t count = std::min(points.size(), knots.size());
  for (std::size_t i = 0; i < count; ++i) knots[i] = {points[i].at, points[i].value};
  const auto secant = [&](std::size_t i) {
    return (knots[i + 1].value - knots[i].value) / (knots[i + 1].at - knots[i].at);
  };
  for (std::size_t i = 1; i + 1 < count; ++i) {
    const double before = secant(i - 1);
    const double after = secant(i);
    if (before * after <= 0) continue;
    const double h0 = knots[i].at - knots[i - 1].at;
    const double h1 = knots[i + 1].at - knots[i].at;
    knots[i].slope = 3 * (h0 + h1) / ((2 * h1 + h0) / before + (h1 + 2 * h0) / after);
  }
  if (ends == Ends::Free) {
    knots[0].slope = secant(0);
    knots[count - 1].slope = secant(count - 2);
  }
  return ScalarCurve(std::span(knots.data(), count));
}

PointCurve smoothCurve(std::span<const double> at, std::span<const Vec3> points) {
  std::array<PointCurve::Knot, PointCurve::kMaxKnots> knots{};
  const std::size_t count = std::min({at.size(), points.size(), knots.size()});
  for (std::size_t i = 0; i < count; ++i) knots[i] = {at[i], points[i]};
  for (std::size_t i = 1; i + 1 < count; ++i) {
    const double h0 = at[i] - at[i - 1];
    const double h1 = at[i + 1] - at[i];
    const Vec3 before = (points[i] - points[i - 1]) / h0;
    const Vec3 after = (points[i + 1] - points[i]) / h1;
    knots[i].slope = (h1 * before + h0 * after) / (h0 + h1);
  }
  return PointCurve(std::span(knots.data(), count));
}

}  // namespace baywright
