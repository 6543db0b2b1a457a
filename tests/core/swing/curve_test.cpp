// SPDX-License-Identifier: Apache-2.0
#include "swing/curve.h"

#include <gtest/gtest.h>

#include <vector>

namespace baywright {
namespace {

ScalarCurve steps() {
  return monotoneCurve({{0, 0}, {1, 0.1}, {1.5, 3}, {4, 3.2}}, Ends::Flat);
}

PointCurve helix() {
  std::vector<double> at;
  std::vector<Vec3> points;
  for (int i = 0; i < 12; ++i) {
    at.push_back(0.3 * i);
    points.push_back({std::cos(0.3 * i), std::sin(0.3 * i), 0.1 * i * i});
  }
  return smoothCurve(at, points);
}

TEST(Curve, PassesThroughItsKnots) {
  EXPECT_DOUBLE_EQ(steps()(0), 0);
  EXPECT_DOUBLE_EQ(steps()(1), 0.1);
  EXPECT_DOUBLE_EQ(steps()(1.5), 3);
  EXPECT_DOUBLE_EQ(steps()(4), 3.2);
}

TEST(Curve, IsConstantOutsideItsKnots) {
  EXPECT_DOUBLE_EQ(steps()(-7), 0);
  EXPECT_DOUBLE_EQ(steps()(90), 3.2);
  const Rates outside = steps().over(5, 6);
  EXPECT_DOUBLE_EQ(outside.size, 3.2);
  EXPECT_EQ(outside.first, 0);
  EXPECT_EQ(outside.second, 0);
}

TEST(Curve, NeverOvershootsWhenMonotone) {
  const ScalarCurve curve = steps();
  for (double x = 0; x < 4; x += 0.001) EXPECT_LE(curve(x), curve(x + 0.001) + 1e-15) << x;
}

TEST(Curve, HasNoSlopeAtFlatEndsAndTheSecantAtFreeOnes) {
  const double h = 1e-6;
  EXPECT_NEAR((steps()(h) - steps()(0)) / h, 0, 1e-5);
  const ScalarCurve free = monotoneCurve({{0, 0}, {2, 3}, {3, 9}}, Ends::Free);
  EXPECT_NEAR((free(h) - free(0)) / h, 1.5, 1e-5);
  EXPECT_NEAR((free(3) - free(3 - h)) / h, 6, 1e-5);
}

TEST(Curve, HasAContinuousFirstDerivative) {
  const ScalarCurve curve = steps();
  const double h = 1e-7;
  for (const double knot : {0.0, 1.0, 1.5, 4.0}) {
    const double before = (curve(knot) - curve(knot - h)) / h;
    const double after = (curve(knot + h) - curve(knot)) / h;
    EXPECT_NEAR(before, after, 1e-4) << knot;
  }
}

/// Largest value, first and second difference quotient found by looking closely.
template <class T>
Rates seen(const Curve<T>& curve, double from, double to) {
  const double h = (to - from) / 2000;
  Rates worst;
  for (int i = 1; i < 2000; ++i) {
    const double x = from + h * i;
    const T before = curve(x - h);
    const T here = curve(x);
    const T after = curve(x + h);
    worst.size = std::max(worst.size, detail::sizeOf(here));
    worst.first = std::max(worst.first, detail::sizeOf(T((after - here) / h)));
    worst.second = std::max(worst.second, detail::sizeOf(T((after - 2.0 * here + before) / (h * h))));
  }
  return worst;
}

template <class T>
void expectBounded(const Curve<T>& curve, double from, double to) {
  const Rates bound = curve.over(from, to);
  const Rates found = seen(curve, from, to);
  EXPECT_GE(bound.size, found.size - 1e-12);
  EXPECT_GE(bound.first, found.first - 1e-9);
  EXPECT_GE(bound.second, found.second - 1e-5);
  // Not so wide as to be useless.
  EXPECT_LE(bound.first, 2 * found.first + 1e-9);
  EXPECT_LE(bound.second, 1.1 * found.second + 1e-5);
}

TEST(Curve, BoundsItsRatesWithinOnePiece) {
  expectBounded(steps(), 0.2, 0.9);
  expectBounded(helix(), 0.31, 0.58);
}

TEST(Curve, BoundsItsRatesOverManyPieces) {
  expectBounded(steps(), 0.5, 3.9);
  expectBounded(helix(), 0.1, 3.1);
}

TEST(Curve, FollowsASmoothPathThroughPoints) {
  const PointCurve curve = helix();
  for (double x = 0.3; x < 3.0; x += 0.01) {
    const double i = x / 0.3;
    EXPECT_LT((curve(x) - Vec3(std::cos(x), std::sin(x), 0.1 * i * i)).norm(), 2e-3) << x;
  }
}

}  // namespace
}  // namespace baywright
