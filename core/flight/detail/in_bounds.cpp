// SPDX-License-Identifier: Apache-2.0
#include "flight/detail/in_bounds.h"

#include <cstdio>

namespace baywright::detail {
namespace {

std::string shown(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%g", value);
  return text;
}

}  // namespace

std::optional<Problem> firstOutside(std::span<const Bounds> all) {
  for (const Bounds& b : all) {
    if (b.value >= b.low && b.value <= b.high) continue;
    return Problem{std::string(b.what) + " of " + shown(b.value) + " " + b.unit + " cannot be computed.", "",
                   "Give " + shown(b.low) + " to " + shown(b.high) + " " + b.unit + "."};
  }
  return std::nullopt;
}

}  // namespace baywright::detail
