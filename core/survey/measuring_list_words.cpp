// SPDX-License-Identifier: Apache-2.0
#include "survey/measuring_list_words.h"

#include <algorithm>
#include <cctype>
#include <map>

#include "survey/measuring_list.h"

namespace baywright {

namespace detail {

std::string lower(std::string_view text) {
  std::string result(text);
  for (char& c : result) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return result;
}

LetterOrder orderIn(std::string_view text) {
  constexpr std::string_view kWord = "clockwise";
  const std::string words = lower(text);
  bool isClockwise = false, isCounter = false;
  for (auto at = words.find(kWord); at != std::string::npos; at = words.find(kWord, at + 1)) {
    std::string_view before = std::string_view(words).substr(0, at);
    if (before.ends_with('-') || before.ends_with(' ')) before.remove_suffix(1);
    (before.ends_with("counter") || before.ends_with("anti") ? isCounter : isClockwise) = true;
  }
  if (isClockwise == isCounter) return LetterOrder::NotSaid;
  return isClockwise ? LetterOrder::Clockwise : LetterOrder::CounterClockwise;
}

LetterOrder orderInRemarks(std::string_view table) {
  std::string remarks;
  for (std::size_t at = 0; at < table.size();) {
    const auto end = std::min(table.find('\n', at), table.size());
    const std::string_view line = table.substr(at, end - at);
    const auto first = line.find_first_not_of(" \t");
    if (first != std::string_view::npos && line[first] == '#') remarks.append(line).append("\n");
    at = end + 1;
  }
  return orderIn(remarks);
}

Result<ColumnName> columnNamed(std::string_view text) {
  ColumnName column{lower(text), {}};
  if (const auto open = column.name.find_first_of("(["); open != std::string::npos && open > 0) {
    const auto close = column.name.find_first_of(")]", open);
    if (close == column.name.size() - 1) {
      column.unit = column.name.substr(open + 1, close - open - 1);
      column.name.erase(column.name.find_last_not_of(' ', open - 1) + 1);
    }
  }
  if (std::find(kColumns.begin(), kColumns.end(), column.name) != kColumns.end()) return column;
  if (std::any_of(kKinds.begin(), kKinds.end(), [&](const KindName& k) { return k.name == column.name; }))
    return fail("The list has no header: its first line begins with '" + column.name + "'.", {},
                "Put a line before it that names the columns, such as kind,from,to,value.");
  return fail(
      "There is no column '" + std::string(text.substr(0, 40)) + "'.", {},
      "The columns are kind, from, to, at, x, y, value, height, how and note. Rename it, or take it out.");
}

}  // namespace detail

std::optional<LengthUnit> unitNamed(std::string_view name) {
  static const std::map<std::string, LengthUnit> names = {{"m", LengthUnit::Metres},
                                                          {"metre", LengthUnit::Metres},
                                                          {"metres", LengthUnit::Metres},
                                                          {"meter", LengthUnit::Metres},
                                                          {"meters", LengthUnit::Metres},
                                                          {"cm", LengthUnit::Centimetres},
                                                          {"mm", LengthUnit::Millimetres},
                                                          {"ft", LengthUnit::DecimalFeet},
                                                          {"feet", LengthUnit::DecimalFeet},
                                                          {"ft-in", LengthUnit::FeetInches},
                                                          {"in", LengthUnit::Inches},
                                                          {"inch", LengthUnit::Inches},
                                                          {"inches", LengthUnit::Inches},
                                                          {"centimetres", LengthUnit::Centimetres},
                                                          {"centimeters", LengthUnit::Centimetres},
                                                          {"millimetres", LengthUnit::Millimetres},
                                                          {"millimeters", LengthUnit::Millimetres}};
  const auto found = names.find(detail::lower(name));
  return found == names.end() ? std::nullopt : std::optional(found->second);
}

}  // namespace baywright
