// SPDX-License-Identifier: Apache-2.0
#include "units/angle_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "units/number_text.h"
#include "units/token_reader.h"
#include "units/unit_constants.h"

namespace baywright {
namespace {

using detail::Amount;
using detail::failAt;
using detail::Token;
using detail::TokenReader;

bool takeOneOf(TokenReader& reader, std::initializer_list<std::string_view> texts) {
  const Token& token = reader.peek();
  const bool found = token.kind != Token::Kind::End && std::ranges::find(texts, token.text) != texts.end();
  if (found) reader.take();
  return found;
}

/// The run of a slope, after its ":" or "in".
Result<double> takeSlope(TokenReader& reader, double rise) {
  const auto run = reader.takeAmount();
  if (!run) return tl::unexpected(run.error());
  if (run->value == 0) {
    return failAt(run->character, "A slope needs a run that is not zero.",
                  "Write it like 1:50, or give degrees.");
  }
  return std::atan(rise / run->value);
}

struct Part {
  std::string_view noun;  ///< plural, as it begins a sentence
  std::initializer_list<std::string_view> marks;
  double degrees;
};

/// The minutes and seconds that follow whole degrees, in degrees.
Result<double> takeMinutesAndSeconds(TokenReader& reader, const Amount& degrees) {
  const std::array<Part, 2> parts = {{{"Minutes", {"'", "min", "minute", "minutes"}, 1.0 / 60},
                                      {"Seconds", {"\"", "sec", "second", "seconds"}, 1.0 / 3600}}};
  double sum = 0;
  Amount last = degrees;
  for (const Part& part : parts) {
    if (reader.peek().kind == Token::Kind::End) break;
    if (!last.whole) {
      return failAt(last.character, "A number with decimals cannot be followed by a smaller unit.",
                    "Write it like 12.5° or like 12° 30'.");
    }
    const auto amount = reader.takeAmount();
    if (!amount) return tl::unexpected(amount.error());
    if (!takeOneOf(reader, part.marks)) {
      return reader.refuse(reader.peek(), std::string(part.noun) + " need the mark " +
                                              std::string(*part.marks.begin()) + " behind them.");
    }
    if (amount->value >= 60) {
      return failAt(amount->character, std::string(part.noun) + " must be less than 60.", "Carry them over.");
    }
    sum += amount->value * part.degrees;
    last = *amount;
  }
  return sum;
}

/// An angle without its sign.
Result<double> takeAngle(TokenReader& reader) {
  const auto amount = reader.takeAmount();
  if (!amount) return tl::unexpected(amount.error());
  if (takeOneOf(reader, {":", "in"})) return takeSlope(reader, amount->value);
  if (takeOneOf(reader, {"%", "percent"})) return std::atan(amount->value / 100);
  if (takeOneOf(reader, {"rad", "radian", "radians"})) return amount->value;
  if (takeOneOf(reader, {"°", "deg", "degree", "degrees"})) {
    auto rest = takeMinutesAndSeconds(reader, *amount);
    if (!rest) return rest;
    return (amount->value + *rest) * kRadiansPerDegree;
  }
  const Token& token = reader.peek();
  if (token.kind == Token::Kind::Word) {
    return failAt(token.character, "“" + token.text + "” is not a unit of angle.",
                  "Use °, %, rad or a slope like 1:50.");
  }
  if (amount->fraction) {
    return failAt(amount->character, "A fraction can be a slope or a part of a degree.",
                  "Write it like 4 in 12 or like 1/2°.");
  }
  return amount->value * kRadiansPerDegree;
}

constexpr double kFullTurn = 2 * std::numbers::pi;

}  // namespace

Result<double> parseAngle(std::string_view utf8, const UnitSystem& units) {
  auto tokens = detail::tokenize(utf8, units.decimal);
  if (!tokens) return tl::unexpected(tokens.error());
  TokenReader reader(*std::move(tokens), "Write one angle, such as " + formatNumber(12.5, 1, units) + "°.");
  const double sign = reader.takeSign();
  const int character = reader.peek().character;
  auto angle = takeAngle(reader);
  if (!angle) return angle;
  auto whole = reader.endWith(sign * *angle + 0.0);  // + 0.0: no negative zero
  if (whole && *angle > kFullTurn) {
    return failAt(character, "The angle is more than a full turn.", "Write at most 360°.");
  }
  return whole;
}

std::string formatAngle(double radians, const UnitSystem& units) {
  const std::string number = formatNumber(radians / kRadiansPerDegree, 1, units);
  return number == kNoFigure ? number : number + "°";
}

}  // namespace baywright
