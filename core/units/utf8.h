// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace baywright::detail {

struct CodePoint {
  char32_t code = 0;
  std::size_t bytes = 0;  ///< how much of the text it takes
};

/// The first code point of a text that is not empty, or nothing if it is not well-formed UTF-8: cut short,
/// longer than it must be, a surrogate, or beyond U+10FFFF (RFC 3629, section 3).
std::optional<CodePoint> firstCodePoint(std::string_view utf8);

/// The whole text is well-formed UTF-8.
bool isUtf8(std::string_view bytes);

/// Puts a code point that is no surrogate and at most U+10FFFF at the end of a UTF-8 text.
void appendUtf8(std::string& text, char32_t code);

}  // namespace baywright::detail
