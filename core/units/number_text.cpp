// SPDX-License-Identifier: Apache-2.0
#include "units/number_text.h"

#include <algorithm>
#include <cmath>

#include "units/token_reader.h"

namespace baywright {
namespace {

constexpr double kLargestRead = 1e6;
constexpr double kLargestPrinted = 1e9;  // times 10^6 it still fits a double without a rounding step

}  // namespace

Result<double> parseNumber(std::string_view utf8, const UnitSystem& units) {
  auto tokens = detail::tokenize(utf8, units.decimal);
  if (!tokens) return tl::unexpected(tokens.error());
  detail::TokenReader reader(*std::move(tokens), "Write a number like " + formatNumber(1.2, 1, units) + ".");
  const double sign = reader.takeSign();
  const auto amount = reader.takeAmount();
  if (!amount) return tl::unexpected(amount.error());
  if (amount->value > kLargestRead) {
    return detail::failAt(amount->character, "The number is greater than a million.",
                          "Write a smaller number.");
  }
  return reader.endWith(sign * amount->value + 0.0);  // + 0.0: no negative zero
}

std::string formatNumber(double value, int decimals, const UnitSystem& units) {
  if (!(std::abs(value) < kLargestPrinted)) return std::string(kNoFigure);
  decimals = std::clamp(decimals, 0, 6);
  const long long steps = std::llround(std::abs(value) * std::pow(10.0, decimals));
  std::string digits = std::to_string(steps);
  const auto places = static_cast<std::size_t>(decimals);
  if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
  if (places > 0) digits.insert(digits.size() - places, 1, units.decimal == ',' ? ',' : '.');
  return value < 0 && steps != 0 ? "−" + digits : digits;
}

}  // namespace baywright
