// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <initializer_list>
#include <span>
#include <type_traits>

#include "geometry/vec.h"
#include "swing/rates.h"

namespace baywright {

namespace detail {
inline double sizeOf(double value) {
  return std::abs(value);
}
inline double sizeOf(const Vec3& value) {
  return value.norm();
}

template <class T>
T zero() {
  if constexpr (std::is_same_v<T, double>)
    return 0;
  else
    return T::Zero();
}
}  // namespace detail

/// Piecewise cubic through knots, with a continuous first derivative, constant outside its knots. T is double
/// or Vec3. Made by monotoneCurve or smoothCurve; holds up to kMaxKnots.
template <class T>
class Curve {
 public:
  static constexpr std::size_t kMaxKnots = 20;

  struct Knot {
    double at = 0;
    T value = detail::zero<T>();
    T slope = detail::zero<T>();

    bool operator==(const Knot&) const = default;
  };

  /// At least two knots, `at` strictly rising.
  explicit Curve(std::span<const Knot> knots) : count_(std::min(knots.size(), kMaxKnots)) {
    std::copy_n(knots.begin(), count_, knots_.begin());
  }
  Curve() { knots_[1].at = 1; }

  T operator()(double x) const;

  /// Bounds over [from, to]; from <= to.
  Rates over(double from, double to) const;

  double start() const { return knots_[0].at; }
  double end() const { return knots_[count_ - 1].at; }

  bool operator==(const Curve&) const = default;

 private:
  struct Jet {
    T value, first, second, third;
  };
  std::size_t pieceAt(double x) const {
    std::size_t piece = 0;
    while (piece + 2 < count_ && knots_[piece + 1].at <= x) ++piece;
    return piece;
  }
  Jet jet(std::size_t piece, double x) const;

  std::array<Knot, kMaxKnots> knots_{};
  std::size_t count_ = 2;
};

using ScalarCurve = Curve<double>;
using PointCurve = Curve<Vec3>;

struct CurvePoint {
  double at;
  double value;
};

enum class Ends {
  Flat,  ///< no slope at either end: the curve runs on smoothly into its constant outside
  Free,  ///< the slope of the last stretch: for a curve that is only used between its ends
};

/// Never overshoots between knots (Fritsch and Butland 1984: weighted harmonic mean of the neighbouring
/// slopes).
ScalarCurve monotoneCurve(std::span<const CurvePoint> points, Ends ends);
inline ScalarCurve monotoneCurve(std::initializer_list<CurvePoint> points, Ends ends) {
  return monotoneCurve(std::span(points.begin(), points.size()), ends);
}

/// Passes smoothly through points in space (three-point slopes), flat at both ends. `at` and `points` of
/// equal length.
PointCurve smoothCurve(std::span<const double> at, std::span<const Vec3> points);

template <class T>
typename Curve<T>::Jet Curve<T>::jet(std::size_t piece, double x) const {
  const Knot& a = knots_[piece];
  const Knot& b = knots_[piece + 1];
  const double h = b.at - a.at;
  const double s = x - a.at;
  const T secant = (b.value - a.value) / h;
  const T c2 = (3.0 * secant - 2.0 * a.slope - b.slope) / h;
  const T c3 = (a.slope + b.slope - 2.0 * secant) / (h * h);
  return {a.value + s * (a.slope + s * (c2 + s * c3)), a.slope + s * (2.0 * c2 + 3.0 * s * c3),
          2.0 * c2 + 6.0 * s * c3, 6.0 * c3};
}

template <class T>
T Curve<T>::operator()(double x) const {
  if (x <= start()) return knots_[0].value;
  if (x >= end()) return knots_[count_ - 1].value;
  return jet(pieceAt(x), x).value;
}

template <class T>
Rates Curve<T>::over(double from, double to) const {
  Rates worst{std::max(detail::sizeOf((*this)(from)), detail::sizeOf((*this)(to))), 0, 0};
  const double lo = std::max(from, start());
  const double hi = std::min(to, end());
  if (lo >= hi) return worst;
  for (std::size_t piece = pieceAt(lo); piece + 1 < count_ && knots_[piece].at < hi; ++piece) {
    const double a = std::max(lo, knots_[piece].at);
    const double b = std::min(hi, knots_[piece + 1].at);
    const Jet left = jet(piece, a);
    const Jet right = jet(piece, b);
    // The second derivative is linear in a piece, so it is greatest at an end; the first and the value lie
    // within the chord bound of their own chords.
    const double second = std::max(detail::sizeOf(left.second), detail::sizeOf(right.second));
    const double bow = (b - a) * (b - a) / 8;
    const double first =
        std::max(detail::sizeOf(left.first), detail::sizeOf(right.first)) + bow * detail::sizeOf(left.third);
    const double size = std::max(detail::sizeOf(left.value), detail::sizeOf(right.value)) + bow * second;
    worst = {std::max(worst.size, size), std::max(worst.first, first), std::max(worst.second, second)};
  }
  return worst;
}

}  // namespace baywright
