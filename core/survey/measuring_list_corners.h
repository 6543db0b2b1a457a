// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "base/id.h"
#include "base/problem.h"
#include "survey/measuring_list_row.h"

namespace baywright::detail {

/// The corners that a measuring list names by their letters, and how many it says that there are.
class ListCorners {
 public:
  /// A row `corners`. Refused: what is no whole number from 3 to kMostSurveyCorners.
  Result<void> state(const ListRow& row);
  /// The corner, or the wall that starts there, that the row names in `column`: A has the id 1. None where
  /// the field is empty and not needed. Refused: what is no corner's letter, or none where one is needed.
  Result<Id> named(const ListRow& row, const char* column, bool isNeeded);
  /// How many there are, once all rows were read. Refused: fewer than three; a number that cannot be told, or
  /// that so few `readings` make hard to believe; corners beyond the stated number.
  Result<int> count(std::size_t readings) const;

 private:
  std::string last_;  ///< where the last corner is named
  int named_ = 0;
  int stated_ = 0;
};

}  // namespace baywright::detail
