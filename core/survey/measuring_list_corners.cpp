// SPDX-License-Identifier: Apache-2.0
#include "survey/measuring_list_corners.h"

#include <algorithm>
#include <cctype>
#include <cmath>

#include "job/room_geometry.h"
#include "survey/adjustment.h"
#include "survey/measuring_list.h"
#include "units/number_text.h"

namespace baywright::detail {

Result<void> ListCorners::state(const ListRow& row) {
  const auto count = parseNumber(row.field("value"), UnitSystem{});
  if (!count || *count != std::floor(*count) || *count < 3 || *count > kMostSurveyCorners)
    return fail("'" + row.field("value").substr(0, 40) + "' is no number of corners.", row.where("value"),
                "Write a whole number from 3 to " + std::to_string(kMostSurveyCorners) + ".");
  stated_ = static_cast<int>(*count);
  return {};
}

Result<Id> ListCorners::named(const ListRow& row, const char* column, bool isNeeded) {
  const std::string text = row.field(column);
  if (text.empty()) {
    if (!isNeeded) return Id{};
    return fail("The row does not say which corner or wall it belongs to.", row.where(column),
                "Write its letter.");
  }
  int number = 0;
  for (const char c : text) {
    const int letter = std::toupper(static_cast<unsigned char>(c)) - 'A';
    if (letter < 0 || letter > 25 || number > kMostSurveyCorners)
      return fail(
          "'" + text.substr(0, 40) + "' is no corner's letter.", row.where(column),
          "Corners are A to Z, then AA, AB and so on, " + std::to_string(kMostSurveyCorners) + " at most.");
    number = number * 26 + letter + 1;
  }
  if (number > kMostSurveyCorners)
    return fail("There are at most " + std::to_string(kMostSurveyCorners) + " corners.", row.where(column),
                "Bring a drawing or a scan of a room with more.");
  if (number > named_) {
    named_ = number;
    last_ = row.where(column);
  }
  return Id{static_cast<std::uint32_t>(number)};  // walls get the ids 1, 2, ...
}

Result<int> ListCorners::count(std::size_t readings) const {
  const int corners = std::max(named_, stated_);
  if (corners < 3)
    return fail("The list names fewer than three corners.", {}, "Add a row for each wall of the room.");
  // Three walls of a rectangle are no triangle.
  if (corners == 3 && stated_ == 0)
    return fail("The list names three corners only.", last_,
                "Add a row 'corners' that says how many the room has, as 4: the last wall was not read.");
  if (stated_ == 0 && static_cast<std::size_t>(corners) > 26 + readings)
    return fail("Corner " + wallLetters(static_cast<std::size_t>(corners - 1)) + " would be number " +
                    std::to_string(corners) + " of a room of which so little was read.",
                last_, "Write one corner in a field: the wall from A to B is 'wall,A'.");
  if (stated_ > 0 && named_ > stated_)
    return fail("The list says " + std::to_string(stated_) + " corners but names corner " +
                    wallLetters(static_cast<std::size_t>(named_ - 1)) + ".",
                {}, "Correct one of the two.");
  return corners;
}

}  // namespace baywright::detail
