// SPDX-License-Identifier: Apache-2.0
#include "job/dimension.h"

#include <cmath>

namespace baywright {

double instrumentSigma(Instrument how, double length) {
  const double l = std::abs(length);
  switch (how) {
    case Instrument::Tape: {
      const double permissible = 0.0003 + 0.0002 * std::ceil(l);
      return combinedSigma(permissible / std::sqrt(3.0), 0.002);
    }
    case Instrument::Laser:
      return 0.001;
    case Instrument::Drawing:
      return 0.010 + 0.002 * l;
    case Instrument::Scan:
      return 0.010;
    case Instrument::Guess:
      break;
  }
  return 0.050;
}

}  // namespace baywright
