// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace baywright {

/// Upper bounds, over one interval of its parameter, of a moving quantity: of its size, its first and its
/// second derivative (norms, never negative). The rules below keep them bounds, so that what is built from
/// bounded parts has a bound too: that is how an envelope can promise to hold the motion between the poses at
/// which it was looked at.
struct Rates {
  double size = 0;
  double first = 0;
  double second = 0;
};

inline Rates operator+(Rates a, Rates b) {
  return {a.size + b.size, a.first + b.first, a.second + b.second};
}
inline Rates operator*(double factor, Rates a) {
  const double f = factor < 0 ? -factor : factor;
  return {f * a.size, f * a.first, f * a.second};
}
inline Rates operator*(Rates a, Rates b) {
  return {a.size * b.size, a.first * b.size + a.size * b.first,
          a.second * b.size + 2 * a.first * b.first + a.size * b.second};
}

/// Of f(g(t)) when `outer` bounds f over the range of g: the chain rule.
inline Rates chained(Rates outer, Rates inner) {
  return {outer.size, outer.first * inner.first,
          outer.second * inner.first * inner.first + outer.first * inner.second};
}

/// Of a unit vector that is turned by two angles about fixed axes, one after the other. Each turn moves it at
/// most as fast as its own angle, and the second derivative of a product of turns is at most the sum of the
/// angles' second derivatives and the square of the sum of their first.
inline Rates turned(Rates angle, Rates otherAngle) {
  const double rate = angle.first + otherAngle.first;
  return {1, rate, angle.second + otherAngle.second + rate * rate};
}

/// No point of a path strays farther than this from the chord over an interval of `length` (the error of
/// linear interpolation; it holds for any path whose first derivative is continuous).
inline double bowBound(Rates rates, double length) {
  return rates.second * length * length / 8;
}

}  // namespace baywright
