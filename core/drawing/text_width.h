// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace baywright {

/// Text on drawings is set in DejaVu Sans, the typeface that ships with the program, so that lines can be
/// broken and columns laid out without a font engine. Size of the font over the height of its capitals: 2048
/// / 1493 units in DejaVu Sans 2.37.
inline constexpr double kEmPerCapital = 2048.0 / 1493.0;

enum class FontFace { Regular, Bold };

/// Width in millimetres of one line of UTF-8 set with capitals of `heightMm`. From the advance widths of the
/// typeface for ASCII and for what lengths and sentences use beside it; a full em for anything else, so it is
/// never too narrow for writing with one glyph a code point. Bytes that are not UTF-8 count an em each.
/// Kerning is not used.
double textWidthMm(std::string_view utf8, double heightMm, FontFace face);

/// The text broken at spaces into lines no wider than `widthMm`; a word that is too wide alone is broken
/// where it must be. Line breaks in the text are kept. Never empty: no text gives one empty line.
std::vector<std::string> wrapText(std::string_view utf8, double heightMm, double widthMm, FontFace face);

/// The text, cut so that it ends in "…" when it is wider than `widthMm`.
std::string fitText(std::string_view utf8, double heightMm, double widthMm, FontFace face);

}  // namespace baywright
