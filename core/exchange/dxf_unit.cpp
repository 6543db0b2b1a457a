// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_unit.h"

#include <algorithm>
#include <string>

#include "units/unit_constants.h"

namespace baywright {

namespace {

struct UnitRow {
  DrawingUnit unit;
  int insunits;
  double metres;
  std::string_view name;
  std::string_view singular;
  std::string_view symbol;
};

// The US survey foot is 1200/3937 m by definition (Mendenhall order of 1893).
constexpr double kSurveyFoot = 1200.0 / 3937.0;

constexpr std::array kRows = {
    UnitRow{DrawingUnit::NotStated, 0, 0, "not stated", "", ""},
    UnitRow{DrawingUnit::Inches, 1, kMetresPerInch, "inches", "inch", "in"},
    UnitRow{DrawingUnit::Feet, 2, kMetresPerFoot, "feet", "foot", "ft"},
    UnitRow{DrawingUnit::Miles, 3, 5280 * kMetresPerFoot, "miles", "mile", "mi"},
    UnitRow{DrawingUnit::Millimetres, 4, 0.001, "millimetres", "millimetre", "mm"},
    UnitRow{DrawingUnit::Centimetres, 5, 0.01, "centimetres", "centimetre", "cm"},
    UnitRow{DrawingUnit::Metres, 6, 1, "metres", "metre", "m"},
    UnitRow{DrawingUnit::Kilometres, 7, 1000, "kilometres", "kilometre", "km"},
    UnitRow{DrawingUnit::Yards, 10, 3 * kMetresPerFoot, "yards", "yard", "yd"},
    UnitRow{DrawingUnit::Decimetres, 14, 0.1, "decimetres", "decimetre", "dm"},
    UnitRow{DrawingUnit::SurveyFeet, 21, kSurveyFoot, "US survey feet", "US survey foot", "usft"},
    UnitRow{DrawingUnit::SurveyInches, 22, kSurveyFoot / 12, "US survey inches", "US survey inch", "usin"},
};

const UnitRow& rowOf(DrawingUnit unit) {
  const auto found =
      std::find_if(kRows.begin(), kRows.end(), [&](const UnitRow& r) { return r.unit == unit; });
  return found == kRows.end() ? kRows.front() : *found;
}

std::string lowered(std::string_view text) {
  std::string low(text);
  for (char& c : low)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return low;
}

}  // namespace

DrawingUnit unitFromInsunits(int code) {
  const auto found =
      std::find_if(kRows.begin(), kRows.end(), [&](const UnitRow& r) { return r.insunits == code; });
  return found == kRows.end() ? DrawingUnit::NotStated : found->unit;
}

int insunitsOf(DrawingUnit unit) {
  return rowOf(unit).insunits;
}

double metresPer(DrawingUnit unit) {
  return rowOf(unit).metres;
}

std::string_view nameOf(DrawingUnit unit) {
  return rowOf(unit).name;
}

std::string_view symbolOf(DrawingUnit unit) {
  return rowOf(unit).symbol;
}

std::optional<DrawingUnit> drawingUnitFrom(std::string_view word) {
  const std::string typed = lowered(word);
  if (typed == "\"") return DrawingUnit::Inches;
  if (typed == "'") return DrawingUnit::Feet;
  // Spelt the American way too.
  std::string british = typed;
  if (const auto at = british.find("meter"); at != std::string::npos) british.replace(at, 5, "metre");
  for (const UnitRow& row : kRows) {
    if (row.unit == DrawingUnit::NotStated) continue;
    if (british == row.symbol || british == lowered(row.name) || british == lowered(row.singular))
      return row.unit;
  }
  return std::nullopt;
}

}  // namespace baywright
