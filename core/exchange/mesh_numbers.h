// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <charconv>
#include <cstddef>
#include <limits>
#include <optional>
#include <string_view>

namespace baywright {

/// A number at the start of a text and how many characters it takes.
struct LeadingNumber {
  double value = 0;
  std::size_t length = 0;
};

/// As people and programs write coordinates: a point for the decimals whatever the locale, an optional plus,
/// exponents, nan and inf. What is too large for a double is infinite.
inline std::optional<LeadingNumber> leadingNumber(std::string_view text) {
  const std::size_t plus = text.starts_with('+') ? 1 : 0;
  LeadingNumber number;
  const auto [end, error] = std::from_chars(text.data() + plus, text.data() + text.size(), number.value);
  if (error == std::errc::invalid_argument) return std::nullopt;
  if (error == std::errc::result_out_of_range) number.value = std::numeric_limits<double>::infinity();
  number.length = static_cast<std::size_t>(end - text.data());
  return number;
}

}  // namespace baywright
