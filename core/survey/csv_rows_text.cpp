// SPDX-License-Identifier: Apache-2.0
#include "survey/csv_rows_text.h"

#include <algorithm>

#include "units/code_pages.h"
#include "units/utf8.h"

namespace baywright::detail {

namespace {

std::string fromUtf16(std::string_view bytes, bool bigEndian) {
  std::string text;
  const auto unit = [&](std::size_t i) {
    const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(bytes[k]); };
    return static_cast<char32_t>(bigEndian ? byte(i) << 8 | byte(i + 1) : byte(i + 1) << 8 | byte(i));
  };
  for (std::size_t i = 0; i + 1 < bytes.size(); i += 2) {
    char32_t code = unit(i);
    if (code >= 0xD800 && code < 0xDC00 && i + 3 < bytes.size() && unit(i + 2) >= 0xDC00 &&
        unit(i + 2) < 0xE000) {
      code = 0x10000 + ((code - 0xD800) << 10) + (unit(i + 2) - 0xDC00);
      i += 2;
    } else if (code >= 0xD800 && code < 0xE000) {
      code = kNoCharacter;
    }
    appendUtf8(text, code);
  }
  return text;
}

std::string fromWindows1252(std::string_view bytes) {
  std::string text;
  for (const char c : bytes) appendUtf8(text, codePageCharacter(1252, static_cast<unsigned char>(c)));
  return text;
}

/// Text of mostly ASCII in two bytes each, saved without the mark that says so: every second byte is zero.
bool isUnmarkedUtf16(std::string_view bytes, std::size_t zeroAt) {
  constexpr std::size_t kLooked = 200;
  if (bytes.size() < 4) return false;
  for (std::size_t i = 0; i < std::min(bytes.size() - bytes.size() % 2, kLooked); i += 2)
    if (bytes[i + zeroAt] != 0 || bytes[i + 1 - zeroAt] == 0) return false;
  return true;
}

std::string withLineFeeds(std::string_view text) {
  std::string lines;
  lines.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '\r' && i + 1 < text.size() && text[i + 1] == '\n') continue;
    lines += text[i] == '\r' ? '\n' : text[i];
  }
  return lines;
}

}  // namespace

std::string tableText(std::string_view bytes) {
  if (bytes.starts_with("\xFF\xFE")) return withLineFeeds(fromUtf16(bytes.substr(2), false));
  if (bytes.starts_with("\xFE\xFF")) return withLineFeeds(fromUtf16(bytes.substr(2), true));
  if (isUnmarkedUtf16(bytes, 1)) return withLineFeeds(fromUtf16(bytes, false));
  if (isUnmarkedUtf16(bytes, 0)) return withLineFeeds(fromUtf16(bytes, true));
  if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
  return withLineFeeds(isUtf8(bytes) ? std::string(bytes) : fromWindows1252(bytes));
}

}  // namespace baywright::detail
