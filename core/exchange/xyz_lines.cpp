// SPDX-License-Identifier: Apache-2.0
#include "exchange/xyz_lines.h"

#include <algorithm>
#include <string>

#include "exchange/mesh_numbers.h"

namespace baywright {
namespace {

constexpr std::string_view kGaps = " \t\r";

std::string_view trimmed(std::string_view text) {
  const std::size_t start = text.find_first_not_of(kGaps);
  if (start == std::string_view::npos) return {};
  return text.substr(start, text.find_last_not_of(kGaps) - start + 1);
}

std::optional<double> numberOf(std::string_view field, bool decimalComma) {
  std::string replaced;
  if (decimalComma && field.find(',') != std::string_view::npos) {
    if (field.find('.') != std::string_view::npos) return std::nullopt;
    replaced = field;
    std::replace(replaced.begin(), replaced.end(), ',', '.');
    field = replaced;
  }
  const auto number = leadingNumber(field);
  if (!number || number->length != field.size()) return std::nullopt;
  return number->value;
}

/// The next field of a line, which is shortened by it.
std::string_view takeField(std::string_view& line, char separator) {
  if (separator == ' ') {
    line.remove_prefix(std::min(line.find_first_not_of(kGaps), line.size()));
    const std::size_t end = std::min(line.find_first_of(kGaps), line.size());
    const std::string_view field = line.substr(0, end);
    line.remove_prefix(end);
    return field;
  }
  const std::size_t end = std::min(line.find(separator), line.size());
  const std::string_view field = trimmed(line.substr(0, end));
  line.remove_prefix(std::min(end + 1, line.size()));
  return field;
}

}  // namespace

std::vector<std::string_view> fieldsOf(std::string_view line, char separator) {
  std::vector<std::string_view> fields;
  line = trimmed(line);
  while (!line.empty()) fields.push_back(takeField(line, separator));
  return fields;
}

std::optional<XyzStyle> styleOf(std::string_view line) {
  const bool hasComma = line.find(',') != std::string_view::npos;
  std::vector<XyzStyle> candidates;
  if (line.find(';') != std::string_view::npos)
    candidates = {{';', hasComma}};
  else if (hasComma)
    candidates = {{',', false}, {' ', true}};
  else
    candidates = {{' ', false}};
  for (const XyzStyle& style : candidates)
    if (pointOf(line, style)) return style;
  return std::nullopt;
}

std::optional<std::array<std::size_t, 3>> namedColumns(std::string_view heading) {
  std::array<std::optional<std::size_t>, 3> found;
  heading.remove_prefix(std::min(heading.find_first_not_of("#/ \t"), heading.size()));
  std::string plain(heading);
  for (char& c : plain) {
    if (c == ',' || c == ';' || c == '"') c = ' ';
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  const auto words = fieldsOf(plain, ' ');
  for (std::size_t i = 0; i < words.size(); ++i)
    for (std::size_t axis = 0; axis < 3; ++axis)
      if (words[i].size() == 1 && words[i][0] == static_cast<char>('x' + axis) && !found[axis])
        found[axis] = i;
  if (!found[0] || !found[1] || !found[2]) return std::nullopt;
  return std::array{*found[0], *found[1], *found[2]};
}

std::optional<Vec3> pointOf(std::string_view line, const XyzStyle& style) {
  Vec3 point = Vec3::Zero();
  const std::size_t last = std::max({style.columns[0], style.columns[1], style.columns[2]});
  for (std::size_t column = 0; column <= last; ++column) {
    const std::string_view field = takeField(line, style.separator);
    for (std::size_t axis = 0; axis < 3; ++axis) {
      if (style.columns[axis] != column) continue;
      const auto number = numberOf(field, style.decimalComma);
      if (!number) return std::nullopt;
      point[static_cast<Eigen::Index>(axis)] = *number;
    }
  }
  return point;
}

}  // namespace baywright
