// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

namespace baywright::detail {

/// How a file writes its texts down.
struct DxfEncoding {
  int codePage = 1252;  ///< $DWGCODEPAGE "ANSI_1252"
};

/// "ANSI_1252", "ansi_1252", "CP1252": the page's number, 1252 for anything else, as old files leave it out.
int codePageFrom(std::string_view header);

/// UTF-8 from the bytes of a name or a text. Bytes that are well-formed UTF-8 are taken as that in files of
/// any version: programs write it into old versions too, and in a code page of one byte a character almost no
/// text looks like it. Others go through the code page. \U+00E4 becomes its character, control characters
/// become spaces.
std::string decoded(std::string_view bytes, const DxfEncoding& encoding);

/// A TEXT's words without its codes: %%d, %%p and %%c are the degree, plus-minus and diameter signs, %%u and
/// %%o (lines under and over) vanish, %%065 is a character by number.
std::string plainText(std::string_view text);

/// An MTEXT's words without formatting: font, height, colour and stacking codes go, \P is a line break, {}
/// are dropped, escaped signs stay. The stacked fraction in 6\S1/2; reads
/// 6 1/2.
std::string plainMtext(std::string_view text);

}  // namespace baywright::detail
