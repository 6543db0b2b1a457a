// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <string_view>

namespace baywright {

enum class LengthUnit { FeetInches, DecimalFeet, Inches, Metres, Centimetres, Millimetres };

/// In the order in which a menu lists them.
inline constexpr std::array kLengthUnits = {LengthUnit::FeetInches,  LengthUnit::DecimalFeet,
                                            LengthUnit::Inches,      LengthUnit::Metres,
                                            LengthUnit::Centimetres, LengthUnit::Millimetres};

/// The finest fractions of an inch that a tape shows and that a job may choose.
inline constexpr std::array kInchFractions = {8, 16, 32};

/// How a job shows numbers, and how it reads a number typed without a unit. A value: it belongs to a job or
/// to a window and is handed to each parse and format; nothing reads the locale of the process.
struct UnitSystem {
  LengthUnit length = LengthUnit::Metres;
  int inchFraction = 16;  ///< one of kInchFractions; read by FeetInches and Inches only
  char decimal = '.';     ///< '.' or ','

  bool operator==(const UnitSystem&) const = default;
};

/// "Feet and inches", "Millimetres": for menus.
constexpr std::string_view unitName(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::FeetInches:
      return "Feet and inches";
    case LengthUnit::DecimalFeet:
      return "Decimal feet";
    case LengthUnit::Inches:
      return "Inches";
    case LengthUnit::Metres:
      return "Metres";
    case LengthUnit::Centimetres:
      return "Centimetres";
    case LengthUnit::Millimetres:
      return "Millimetres";
  }
  return "";
}

/// True where inches and pounds are at home, so that the other quantities can follow the choice of length.
constexpr bool isImperial(LengthUnit unit) {
  return unit == LengthUnit::FeetInches || unit == LengthUnit::DecimalFeet || unit == LengthUnit::Inches;
}

}  // namespace baywright
