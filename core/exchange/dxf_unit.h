// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace baywright {

/// What one unit of a drawing means. NotStated: the file does not say, and nobody may guess it silently.
enum class DrawingUnit {
  NotStated,
  Millimetres,
  Centimetres,
  Metres,
  Inches,
  Feet,
  Decimetres,
  Kilometres,
  Yards,
  Miles,
  SurveyFeet,
  SurveyInches
};

/// The units in which people draw rooms, in the order in which they are offered.
inline constexpr std::array kUsualDrawingUnits = {DrawingUnit::Millimetres, DrawingUnit::Centimetres,
                                                  DrawingUnit::Metres, DrawingUnit::Inches,
                                                  DrawingUnit::Feet};

/// The unit for a value of the header variable $INSUNITS, as the published DXF reference lists them (1
/// inches, 2 feet, 4 millimetres, ...). NotStated for 0, for units of no building (angstroms, light years)
/// and for numbers that are none of the list.
DrawingUnit unitFromInsunits(int code);
/// The value of $INSUNITS for a unit.
int insunitsOf(DrawingUnit unit);

/// Metres in one drawing unit, exact by definition; 0 for NotStated.
double metresPer(DrawingUnit unit);

/// "millimetres", "inches"; "not stated".
std::string_view nameOf(DrawingUnit unit);
/// "mm", "cm", "m", "in", "ft", ...: as typed after --unit. Empty for NotStated.
std::string_view symbolOf(DrawingUnit unit);

/// The unit that a person typed: a symbol, a name, a name in the singular, `"` or `'`; upper and lower case
/// are one. Nothing for any other word.
std::optional<DrawingUnit> drawingUnitFrom(std::string_view word);

}  // namespace baywright
