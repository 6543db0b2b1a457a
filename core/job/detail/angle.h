// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>

#include "geometry/vec.h"

namespace baywright::detail {

/// The same direction within [-pi, pi], so that headings do not grow with every turn.
inline double wrappedAngle(double radians) {
  return std::remainder(radians, 2 * kPi);
}

}  // namespace baywright::detail
