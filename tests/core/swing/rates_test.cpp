// SPDX-License-Identifier: Apache-2.0
#include "swing/rates.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>

#include "geometry/vec.h"

namespace baywright {
namespace {

// f(t) = sin 2t and g(t) = t^2 over 0..1, with their exact bounds.
constexpr Rates kSine{1, 2, 4};
constexpr Rates kSquare{1, 2, 2};

template <class F>
Rates seen(F f) {
  const double h = 1e-4;
  Rates worst;
  for (double t = h; t < 1 - h; t += h) {
    worst.size = std::max(worst.size, std::abs(f(t)));
    worst.first = std::max(worst.first, std::abs(f(t + h) - f(t)) / h);
    worst.second = std::max(worst.second, std::abs(f(t + h) - 2 * f(t) + f(t - h)) / (h * h));
  }
  return worst;
}

void expectHolds(Rates bound, Rates found) {
  EXPECT_GE(bound.size, found.size);
  EXPECT_GE(bound.first, found.first);
  EXPECT_GE(bound.second, found.second - 1e-6);
}

TEST(Rates, BoundSumsProductsAndMultiples) {
  const auto sine = [](double t) { return std::sin(2 * t); };
  expectHolds(kSine + kSquare, seen([&](double t) { return sine(t) + t * t; }));
  expectHolds(kSine * kSquare, seen([&](double t) { return sine(t) * t * t; }));
  expectHolds(-3.0 * kSine, seen([&](double t) { return -3 * sine(t); }));
}

TEST(Rates, BoundOneFunctionInAnother) {
  expectHolds(chained(kSine, kSquare), seen([](double t) { return std::sin(2 * t * t); }));
}

TEST(Rates, BoundADirectionTurnedTwice) {
  const auto angle = [](double t) { return 1.3 * t * t; };
  const auto other = [](double t) { return std::sin(2 * t); };
  const auto direction = [&](double t) -> Vec3 {
    return Eigen::AngleAxisd(other(t), Vec3::UnitX()) * Vec3(std::cos(angle(t)), std::sin(angle(t)), 0);
  };
  const Rates bound = turned(1.3 * kSquare, kSine);
  const double h = 1e-4;
  for (double t = h; t < 1 - h; t += h) {
    EXPECT_GE(bound.first, ((direction(t + h) - direction(t)) / h).norm());
    EXPECT_GE(bound.second,
              ((direction(t + h) - 2 * direction(t) + direction(t - h)) / (h * h)).norm() - 1e-6);
  }
}

TEST(Rates, BoundTheBowOfACircle) {
  // Unit circle: the bow of an arc of angle a is 1 - cos(a/2), the bound a^2 / 8.
  const double arc = 0.4;
  const double bow = 1 - std::cos(arc / 2);
  EXPECT_GE(bowBound({1, 1, 1}, arc), bow);
  EXPECT_LT(bowBound({1, 1, 1}, arc), 1.01 * bow);
}

}  // namespace
}  // namespace baywright
