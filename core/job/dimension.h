// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/uncertain.h"

namespace baywright {

/// How a figure came to be known. Its accuracy follows from it (instrumentSigma).
enum class Instrument { Tape, Laser, Drawing, Scan, Guess };

/// Standard uncertainty in metres of one length taken with an instrument; `length` in metres, >= 0.
///   Tape     class II steel tape, maximum permissible error (0.3 + 0.2 L) mm with L in whole metres rounded
///            up, as a rectangular distribution (MID 2014/32/EU, annex X); and 2 mm for reading and sag in a
///            furnished room (common practice, no source)
///   Laser    2 mm at k = 2, what makers state under ISO 16331-1 (value from memory)
///   Drawing  10 mm + 0.2 %: walls are rarely built where they are drawn (common practice, no source)
///   Scan     10 mm, a hand-held scanner at room size (Teo & Yang 2023, about 1 cm moving)
///   Guess    50 mm (common practice, no source)
double instrumentSigma(Instrument how, double length);

/// One length that somebody measured, read or guessed; metres. When `known` is false nobody did so yet:
/// `value` then only serves for drawing, and whatever depends on it has the verdict `unknown`.
struct Dimension {
  double value = 0;
  Instrument how = Instrument::Guess;
  bool known = true;

  bool operator==(const Dimension&) const = default;

  Uncertain uncertain() const { return {value, instrumentSigma(how, value)}; }
};

inline Dimension taped(double metres) {
  return {metres, Instrument::Tape, true};
}
inline Dimension shot(double metres) {
  return {metres, Instrument::Laser, true};
}
inline Dimension guessed(double metres) {
  return {metres, Instrument::Guess, true};
}
inline Dimension notMeasured(double placeholder) {
  return {placeholder, Instrument::Guess, false};
}

}  // namespace baywright
