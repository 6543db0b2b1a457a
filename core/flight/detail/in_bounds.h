// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <string>

#include "base/problem.h"

namespace baywright::detail {

/// One number and the range in which the models mean anything.
struct Bounds {
  const char* what;  ///< "A ball speed"
  double value;
  double low;
  double high;
  const char* unit;
};

/// A sentence about the first that is outside, or is no number.
std::optional<Problem> firstOutside(std::span<const Bounds> all);

}  // namespace baywright::detail
