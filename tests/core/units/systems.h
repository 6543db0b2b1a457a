// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/problem.h"
#include "units/unit_system.h"

namespace baywright::test {

inline constexpr UnitSystem kFeetInches{LengthUnit::FeetInches};
inline constexpr UnitSystem kFeet{LengthUnit::DecimalFeet};
inline constexpr UnitSystem kInches{LengthUnit::Inches};
inline constexpr UnitSystem kMetres{LengthUnit::Metres};
inline constexpr UnitSystem kMetresComma{LengthUnit::Metres, 16, ','};
inline constexpr UnitSystem kMillimetres{LengthUnit::Millimetres};

/// Every way in which a job can show lengths.
inline std::vector<UnitSystem> everySystem() {
  std::vector<UnitSystem> systems;
  for (LengthUnit unit : kLengthUnits) {
    for (int fraction : kInchFractions) {
      for (char decimal : {'.', ','}) systems.push_back({unit, fraction, decimal});
    }
  }
  return systems;
}

inline std::string describe(const UnitSystem& units) {
  return std::string(unitName(units.length)) + ", 1/" + std::to_string(units.inchFraction) + ", '" +
         units.decimal + "'";
}

/// "character 4", or what was read where a problem was expected.
template <class T>
std::string faultPlace(const Result<T>& result) {
  return result ? "read as " + std::to_string(*result) : result.error().where;
}

/// A problem helps only if it says what is wrong in a sentence, and how to go on in another.
template <class T>
bool isWholeProblem(const Result<T>& result) {
  const auto isSentence = [](const std::string& text) { return text.size() > 6 && text.back() == '.'; };
  return !result && isSentence(result.error().what) && isSentence(result.error().next);
}

}  // namespace baywright::test
