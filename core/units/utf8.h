// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace baywright::detail {

struct CodePoint {
  char32_t code = 0;
  std::size_t bytes = 0;  ///< how much of the text it takes
};

/// The first code point of a text that is not empty, or nothing if it is not well-formed UTF-8: cut short,
/// longer than it must be, a surrogate, or beyond U+10FFFF (RFC 3629, section 3). Internal to `units`.
std::optional<CodePoint> firstCodePoint(std::string_view utf8);

}  // namespace baywright::detail
