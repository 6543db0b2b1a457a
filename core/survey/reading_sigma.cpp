// SPDX-License-Identifier: Apache-2.0
#include "survey/reading_sigma.h"

#include <cmath>

#include "geometry/vec.h"

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;

double angleSigma(Instrument how) {
  switch (how) {
    case Instrument::Tape:
    case Instrument::Drawing:
      return 0.5 * kDegree;
    case Instrument::Laser:
      return 0.2 * kDegree;
    case Instrument::Scan:
      return 0.3 * kDegree;
    case Instrument::Guess:
      break;
  }
  return 2 * kDegree;
}

}  // namespace

double readingSigma(const Measurement& reading) {
  if (reading.kind == MeasurementKind::Angle) return angleSigma(reading.how);
  return instrumentSigma(reading.how, std::abs(reading.value));
}

}  // namespace baywright
