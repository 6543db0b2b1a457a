// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace baywright::detail {

/// Stands for a byte that means nothing: U+FFFD.
inline constexpr char32_t kNoCharacter = 0xFFFD;

/// The Windows code pages of one byte a character: 874 and 1250 to 1258.
bool knowsCodePage(int number);

/// The character that a byte stands for; kNoCharacter where the page is not known or has none there.
char32_t codePageCharacter(int number, unsigned char byte);

}  // namespace baywright::detail
