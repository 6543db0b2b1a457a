// SPDX-License-Identifier: Apache-2.0
#include "units/length_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <optional>

#include "units/number_text.h"
#include "units/token_reader.h"
#include "units/unit_constants.h"

namespace baywright {
namespace {

using detail::Amount;
using detail::failAt;
using detail::Token;
using detail::TokenReader;

struct UnitName {
  std::string_view name;
  double metres;
};
constexpr auto kUnitNames = std::to_array<UnitName>({
    {"'", kMetresPerFoot},
    {"ft", kMetresPerFoot},
    {"foot", kMetresPerFoot},
    {"feet", kMetresPerFoot},
    {"\"", kMetresPerInch},
    {"in", kMetresPerInch},
    {"inch", kMetresPerInch},
    {"inches", kMetresPerInch},
    {"m", 1},
    {"metre", 1},
    {"metres", 1},
    {"meter", 1},
    {"meters", 1},
    {"cm", 0.01},
    {"centimetre", 0.01},
    {"centimetres", 0.01},
    {"centimeter", 0.01},
    {"centimeters", 0.01},
    {"mm", 0.001},
    {"millimetre", 0.001},
    {"millimetres", 0.001},
    {"millimeter", 0.001},
    {"millimeters", 0.001},
});

double metresOfBareNumber(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::FeetInches:
    case LengthUnit::Inches:
      return kMetresPerInch;
    case LengthUnit::DecimalFeet:
      return kMetresPerFoot;
    case LengthUnit::Metres:
      return 1;
    case LengthUnit::Centimetres:
      return 0.01;
    case LengthUnit::Millimetres:
      return 0.001;
  }
  return 1;
}

/// The size of a unit, or nothing where no unit is typed. A word that is no unit is a problem.
Result<std::optional<double>> takeUnit(TokenReader& reader) {
  const Token& token = reader.peek();
  const auto unit = std::ranges::find(kUnitNames, token.text, &UnitName::name);
  if (unit != kUnitNames.end()) {
    reader.take();
    return unit->metres;
  }
  if (token.kind == Token::Kind::Word) {
    return failAt(token.character, "“" + token.text + "” is not a unit of length.",
                  "Use ft, in, m, cm or mm.");
  }
  return std::nullopt;
}

/// What stands after the feet, in metres.
Result<double> takeInches(TokenReader& reader, const Amount& feet) {
  if (!feet.whole) {
    return failAt(feet.character, "Feet with a fraction cannot be followed by inches.",
                  "Write whole feet and then inches, such as 7' 6\".");
  }
  const auto inches = reader.takeAmount();
  if (!inches) return tl::unexpected(inches.error());
  const Token unitToken = reader.peek();
  const auto unit = takeUnit(reader);
  if (!unit) return tl::unexpected(unit.error());
  if (unit->value_or(kMetresPerInch) != kMetresPerInch) {
    return reader.refuse(unitToken, "Only inches can follow feet, not “" + unitToken.text + "”.");
  }
  if (inches->value >= 12) {
    return failAt(inches->character, "Inches after feet must be less than 12.",
                  "Carry them over into the feet, or give the whole length in inches.");
  }
  return inches->value * kMetresPerInch;
}

/// "12-6" without any mark; with spaces around the hyphen it would look like a subtraction.
bool hyphenPartsFeetFromInches(const TokenReader& reader, LengthUnit unit) {
  const Token& number = reader.peek(1);
  return isImperial(unit) && reader.peek().isMark("-") && !reader.peek().spaced && !number.spaced &&
         number.kind == Token::Kind::Number;
}

/// A length without its sign.
Result<double> takeLength(TokenReader& reader, LengthUnit jobUnit) {
  const auto amount = reader.takeAmount();
  if (!amount) return tl::unexpected(amount.error());
  if (amount->hyphen != 0) {
    return failAt(amount->hyphen, "The number before the hyphen could be feet or inches.",
                  "Write it like 6 1/2\" or like 6' 1/2\".");
  }
  if (hyphenPartsFeetFromInches(reader, jobUnit)) {
    reader.take();
    auto inches = takeInches(reader, *amount);
    if (!inches) return inches;
    return amount->value * kMetresPerFoot + *inches;
  }
  const auto unit = takeUnit(reader);
  if (!unit) return tl::unexpected(unit.error());
  const bool bare = !*unit && reader.peek().kind == Token::Kind::End;
  if (bare && amount->fraction && metresOfBareNumber(jobUnit) != kMetresPerInch) {
    return failAt(amount->character, "A fraction needs its unit here.", "Write it like 6 1/2\".");
  }
  const double length = amount->value * unit->value_or(metresOfBareNumber(jobUnit));
  if (*unit != kMetresPerFoot || reader.peek().kind == Token::Kind::End) return length;
  reader.takeMark("-");
  auto inches = takeInches(reader, *amount);
  if (!inches) return inches;
  return length + *inches;
}

struct Placed {
  double metres = 0;
  int character = 1;  ///< where the first number stands
};

Result<Placed> parsePlaced(std::string_view utf8, const UnitSystem& units) {
  auto tokens = detail::tokenize(utf8, units.decimal);
  if (!tokens) return tl::unexpected(tokens.error());
  TokenReader reader(*std::move(tokens), "Write one length, such as " + formatLength(2.3, units) + ".");
  const double sign = reader.takeSign();
  const int character = reader.peek().character;
  const auto length = takeLength(reader, units.length);
  if (!length) return tl::unexpected(length.error());
  auto whole = reader.endWith(sign * *length + 0.0);  // + 0.0: no negative zero
  if (!whole) return tl::unexpected(whole.error());
  if (*length > kLongestLength) {
    return failAt(character, "The length is more than " + formatLength(kLongestLength, units) + ".",
                  "Check the number and its unit.");
  }
  return Placed{*whole, character};
}

/// How a unit with decimals is printed.
struct DecimalStyle {
  double metres;
  int decimals;
  std::string_view symbol;
};

/// Nothing for units that are printed with fractions.
std::optional<DecimalStyle> decimalStyle(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::FeetInches:
    case LengthUnit::Inches:
      return std::nullopt;
    case LengthUnit::DecimalFeet:
      return DecimalStyle{kMetresPerFoot, 2, " ft"};
    case LengthUnit::Metres:
      return DecimalStyle{1, 3, " m"};
    case LengthUnit::Centimetres:
      return DecimalStyle{0.01, 1, " cm"};
    case LengthUnit::Millimetres:
      return DecimalStyle{0.001, 0, " mm"};
  }
  return std::nullopt;
}

/// A file can hold any number; a tape cannot.
long long partsOfInch(const UnitSystem& units) {
  const bool known = std::ranges::find(kInchFractions, units.inchFraction) != kInchFractions.end();
  return known ? units.inchFraction : UnitSystem{}.inchFraction;
}

std::string fractionText(long long rest, long long parts) {
  const long long divisor = std::gcd(rest, parts);
  return std::to_string(rest / divisor) + "/" + std::to_string(parts / divisor);
}

/// `6 1/2″`, `6″`, `0 1/2″`
std::string inchesText(long long steps, long long parts) {
  std::string text = std::to_string(steps / parts);
  if (steps % parts != 0) text.append(" ").append(fractionText(steps % parts, parts));
  return text + "″";
}

/// The text of that many display steps, which are not negative. Whole steps carry 11 31/32″ over into the
/// next foot by themselves.
std::string stepsText(long long steps, const UnitSystem& units) {
  if (const auto style = decimalStyle(units.length)) {
    const double number = static_cast<double>(steps) / std::pow(10.0, style->decimals);
    return formatNumber(number, style->decimals, units) + std::string(style->symbol);
  }
  const long long parts = partsOfInch(units);
  const long long perFoot = 12 * parts;
  if (steps > 0 && steps < parts) return fractionText(steps, parts) + "″";
  if (units.length == LengthUnit::Inches || steps < perFoot) return inchesText(steps, parts);
  return std::to_string(steps / perFoot) + "′ " + inchesText(steps % perFoot, parts);
}

constexpr double kLongestPrinted = 1e5;  // metres; its millimetres are still printed by formatNumber

bool printable(double metres) {
  return std::abs(metres) <= kLongestPrinted;
}

std::string signedText(double metres, const UnitSystem& units, std::string_view plus) {
  if (!printable(metres)) return std::string(kNoFigure);
  const long long steps = std::llround(std::abs(metres) / displayStep(units));
  const std::string_view sign = steps == 0 ? "" : metres < 0 ? "−" : plus;
  return std::string(sign) + stepsText(steps, units);
}

/// What may be lost when a half-width is divided by the display step, so that 5 mm stay 5 steps.
constexpr double kStepRounding = 1e-6;

}  // namespace

Result<double> parseLength(std::string_view utf8, const UnitSystem& units) {
  const auto length = parsePlaced(utf8, units);
  if (!length) return tl::unexpected(length.error());
  return length->metres;
}

Result<double> parseSize(std::string_view utf8, const UnitSystem& units) {
  const auto length = parsePlaced(utf8, units);
  if (!length) return tl::unexpected(length.error());
  if (length->metres > 0) return length->metres;
  return failAt(length->character, "A size must be more than zero.",
                "Write it like " + formatLength(2.3, units) + ".");
}

std::string formatLength(double metres, const UnitSystem& units) {
  return signedText(metres, units, "");
}

std::string formatLengthSigned(double metres, const UnitSystem& units) {
  return signedText(metres, units, "+");
}

std::string formatUncertain(Uncertain metres, const UnitSystem& units) {
  std::string value = formatLength(metres.value, units);
  const double halfWidth = metres.halfWidth95();
  if (halfWidth == 0) return value;
  if (!(halfWidth > 0) || !printable(halfWidth)) return value + " ± " + std::string(kNoFigure);
  const double steps = std::max(1.0, std::ceil(halfWidth / displayStep(units) - kStepRounding));
  return value + " ± " + stepsText(static_cast<long long>(steps), units);
}

double displayStep(const UnitSystem& units) {
  if (const auto style = decimalStyle(units.length)) return style->metres / std::pow(10.0, style->decimals);
  return kMetresPerInch / static_cast<double>(partsOfInch(units));
}

}  // namespace baywright
