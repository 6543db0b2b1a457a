// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "geometry/vec.h"

namespace baywright {

/// How the lines of a text of points are written.
struct XyzStyle {
  char separator = ' ';  ///< ' ' means any run of spaces and tabs; else ',' or ';'
  bool decimalComma = false;
  std::array<std::size_t, 3> columns{0, 1, 2};  ///< where x, y and z stand
};

std::vector<std::string_view> fieldsOf(std::string_view line, char separator);

/// The style in which the line is a point; nothing when it is none in any.
std::optional<XyzStyle> styleOf(std::string_view line);

/// The columns that a heading names x, y and z, whatever stands between its words; nothing where it does not.
std::optional<std::array<std::size_t, 3>> namedColumns(std::string_view heading);

/// The point of a line; nothing when a coordinate is missing or no number.
std::optional<Vec3> pointOf(std::string_view line, const XyzStyle& style);

}  // namespace baywright
