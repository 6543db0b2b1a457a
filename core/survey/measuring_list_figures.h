// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "base/problem.h"
#include "survey/measuring_list_row.h"
#include "units/unit_system.h"

namespace baywright::detail {

/// What a measuring list's figures mean: their unit, and whether a comma in them is a decimal one. State the
/// units and look at the commas of the whole list before any figure is read.
class ListFigures {
 public:
  /// `asked` is the unit that somebody named beside the list.
  explicit ListFigures(std::optional<UnitSystem> asked) : asked_(std::move(asked)) {}

  /// Refused: words that are no unit's, and a unit other than the one that was stated or asked before.
  Result<void> stateUnit(const std::string& word, const std::string& where);
  /// For a list that cannot mean anything else by its commas.
  void believeCommas() { hasDecimalCommas_ = true; }
  /// One figure with a decimal comma beyond doubt makes those of the others believed.
  void noteComma(std::string_view figure);

  /// Metres. Refused: no figure, none without unit where the list says none, a comma with two meanings.
  Result<double> length(const ListRow& row, const char* column) const;
  /// Radians, above 0 and below a full turn; from column `value`.
  Result<double> angle(const ListRow& row) const;

  /// Of figures that have no unit.
  UnitSystem units() const;

 private:
  UnitSystem inUnit() const;
  Result<UnitSystem> unitsFor(const ListRow& row, const char* column) const;

  std::optional<UnitSystem> asked_;
  std::optional<LengthUnit> stated_;
  bool hasDecimalCommas_ = false;
};

}  // namespace baywright::detail
