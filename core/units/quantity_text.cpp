// SPDX-License-Identifier: Apache-2.0
#include "units/quantity_text.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "units/number_text.h"
#include "units/token_reader.h"
#include "units/unit_constants.h"

namespace baywright {
namespace {

using detail::failAt;
using detail::Token;
using detail::TokenReader;

struct UnitName {
  QuantityKind quantity;
  std::string_view name;
  double size;
};
constexpr double kRpm = kRadiansPerSecondPerRpm;
constexpr auto kUnitNames = std::to_array<UnitName>({
    {QuantityKind::Mass, "kg", 1},
    {QuantityKind::Mass, "kilogram", 1},
    {QuantityKind::Mass, "kilograms", 1},
    {QuantityKind::Mass, "g", 0.001},
    {QuantityKind::Mass, "gram", 0.001},
    {QuantityKind::Mass, "grams", 0.001},
    {QuantityKind::Mass, "lb", kKilogramsPerPound},
    {QuantityKind::Mass, "lbs", kKilogramsPerPound},
    {QuantityKind::Mass, "pound", kKilogramsPerPound},
    {QuantityKind::Mass, "pounds", kKilogramsPerPound},
    {QuantityKind::Mass, "oz", kKilogramsPerOunce},
    {QuantityKind::Mass, "ounce", kKilogramsPerOunce},
    {QuantityKind::Mass, "ounces", kKilogramsPerOunce},
    {QuantityKind::Speed, "m/s", 1},
    {QuantityKind::Speed, "km/h", kMetresPerSecondPerKmh},
    {QuantityKind::Speed, "kmh", kMetresPerSecondPerKmh},
    {QuantityKind::Speed, "kph", kMetresPerSecondPerKmh},
    {QuantityKind::Speed, "mph", kMetresPerSecondPerMph},
    {QuantityKind::Speed, "ft/s", kMetresPerFoot},
    {QuantityKind::Spin, "rpm", kRpm},
    {QuantityKind::Spin, "rev/min", kRpm},
    {QuantityKind::Spin, "rad/s", 1},
    {QuantityKind::LuminousFlux, "lm", 1},
    {QuantityKind::LuminousFlux, "lumen", 1},
    {QuantityKind::LuminousFlux, "lumens", 1},
    {QuantityKind::Illuminance, "lx", 1},
    {QuantityKind::Illuminance, "lux", 1},
    {QuantityKind::Illuminance, "fc", kLuxPerFootcandle},
    {QuantityKind::Luminance, "cd/m2", 1},
    {QuantityKind::Luminance, "nit", 1},
    {QuantityKind::Luminance, "nits", 1},
    {QuantityKind::Luminance, "fl", kNitsPerFootLambert},
    {QuantityKind::Ratio, "%", 0.01},
    {QuantityKind::Ratio, "percent", 0.01},
});

struct Kind {
  std::string_view noun;
  std::string_view choices;
  double lowest, highest;
};

Kind kindOf(QuantityKind quantity) {
  switch (quantity) {
    case QuantityKind::Mass:
      return {"mass", "kg, g, lb or oz", 0, 10000};
    case QuantityKind::Speed:
      return {"speed", "m/s, km/h, mph or ft/s", 0, 200};
    case QuantityKind::Spin:
      return {"spin", "rpm or rad/s", -20000 * kRpm, 20000 * kRpm};
    case QuantityKind::LuminousFlux:
      return {"luminous flux", "lm", 0, 1e6};
    case QuantityKind::Illuminance:
      return {"illuminance", "lx or fc", 0, 1e6};
    case QuantityKind::Luminance:
      return {"luminance", "cd/m2 or fL", 0, 1e6};
    case QuantityKind::Ratio:
      return {"ratio", "%", -10, 10};
  }
  return {"", "", 0, 0};
}

struct Style {
  std::string_view symbol;
  double size;
  int decimals;
};

/// How the quantity is printed, and what a bare number means.
Style styleOf(QuantityKind quantity, const UnitSystem& units) {
  const bool imperial = isImperial(units.length);
  switch (quantity) {
    case QuantityKind::Mass:
      return imperial ? Style{"lb", kKilogramsPerPound, 2} : Style{"kg", 1, 2};
    case QuantityKind::Speed:
      return imperial ? Style{"mph", kMetresPerSecondPerMph, 1} : Style{"m/s", 1, 1};
    case QuantityKind::Spin:
      return {"rpm", kRpm, 0};
    case QuantityKind::LuminousFlux:
      return {"lm", 1, 0};
    case QuantityKind::Illuminance:
      return imperial ? Style{"fc", kLuxPerFootcandle, 1} : Style{"lx", 1, 0};
    case QuantityKind::Luminance:
      return imperial ? Style{"fL", kNitsPerFootLambert, 1} : Style{"cd/m2", 1, 1};
    case QuantityKind::Ratio:
      return {"%", 0.01, 1};
  }
  return {"", 1, 0};
}

/// The smaller unit ends a little below one kilogram or pound, where it would round up to "1000.0 g".
constexpr double kSmallMass = 0.9995;

/// As styleOf, in the smaller unit for what would print as a fraction of a kilogram or a pound.
Style styleFor(double value, QuantityKind quantity, const UnitSystem& units) {
  const Style style = styleOf(quantity, units);
  if (quantity != QuantityKind::Mass || value == 0 || !(std::abs(value) < kSmallMass * style.size)) return style;
  return isImperial(units.length) ? Style{"oz", kKilogramsPerOunce, 2} : Style{"g", 0.001, 1};
}

/// The size of the unit that is the rest of the text, or of the bare number's.
Result<double> takeUnit(TokenReader& reader, QuantityKind quantity, const UnitSystem& units) {
  const Token first = reader.peek();
  if (first.kind == Token::Kind::End) return styleOf(quantity, units).size;
  if (first.kind != Token::Kind::Word && !first.isMark("%")) return reader.endWith(0);
  std::string typed;
  while (reader.peek().kind != Token::Kind::End) typed += reader.take().text;
  for (const UnitName& unit : kUnitNames) {
    if (unit.quantity == quantity && unit.name == typed) return unit.size;
  }
  const Kind kind = kindOf(quantity);
  return failAt(first.character, "“" + typed + "” is not a unit of " + std::string(kind.noun) + ".",
                "Use " + std::string(kind.choices) + ".");
}

/// A limit that went through another unit and back may be a few ulp beyond itself.
constexpr double kLimitRounding = 1e-12;

}  // namespace

Result<double> parseQuantity(std::string_view utf8, QuantityKind quantity, const UnitSystem& units) {
  auto tokens = detail::tokenize(utf8, units.decimal);
  if (!tokens) return tl::unexpected(tokens.error());
  const Style style = styleOf(quantity, units);
  TokenReader reader(*std::move(tokens), "Write one number with its unit, such as " +
                                             formatNumber(12.5, 1, units) + " " + std::string(style.symbol) +
                                             ".");
  const int character = reader.peek().character;
  const double sign = reader.takeSign();
  const auto amount = reader.takeAmount();
  if (!amount) return tl::unexpected(amount.error());
  auto size = takeUnit(reader, quantity, units);
  if (!size) return size;
  const double value = sign * amount->value * *size + 0.0;  // + 0.0: no negative zero

  const Kind kind = kindOf(quantity);
  const double slack = kLimitRounding * kind.highest;
  if (value >= kind.lowest - slack && value <= kind.highest + slack) return value;
  return failAt(character, "The " + std::string(kind.noun) + " is out of range.",
                "Give a value from " + formatQuantity(kind.lowest, quantity, units) + " to " +
                    formatQuantity(kind.highest, quantity, units) + ".");
}

std::string formatQuantity(double value, QuantityKind quantity, const UnitSystem& units) {
  const Style style = styleFor(value, quantity, units);
  const std::string number = formatNumber(value / style.size, style.decimals, units);
  return number == kNoFigure ? number : number + " " + std::string(style.symbol);
}

}  // namespace baywright
