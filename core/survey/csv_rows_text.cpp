// SPDX-License-Identifier: Apache-2.0
#include "survey/csv_rows_text.h"

#include <array>

#include "units/utf8.h"

namespace baywright::detail {

namespace {

constexpr char32_t kReplacement = 0xFFFD;

// 0x80 to 0x9F of Windows-1252, as the WHATWG Encoding Standard lists them: values from memory.
constexpr std::array<char16_t, 32> kWindows = {
    0x20AC, 0x81,   0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0x8D,   0x017D, 0x8F,   0x90,   0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x9D,   0x017E, 0x0178};

void append(std::string& text, char32_t code) {
  const auto put = [&](char32_t byte) { text += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (code < 0x80) return put(code);
  if (code < 0x800) {
    put(0xC0 | (code >> 6));
  } else {
    if (code < 0x10000) {
      put(0xE0 | (code >> 12));
    } else {
      put(0xF0 | (code >> 18));
      put(0x80 | ((code >> 12) & 0x3F));
    }
    put(0x80 | ((code >> 6) & 0x3F));
  }
  put(0x80 | (code & 0x3F));
}

bool isUtf8(std::string_view bytes) {
  while (!bytes.empty()) {
    const auto code = firstCodePoint(bytes);
    if (!code) return false;
    bytes.remove_prefix(code->bytes);
  }
  return true;
}

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
      code = kReplacement;
    }
    append(text, code);
  }
  return text;
}

std::string fromWindows1252(std::string_view bytes) {
  std::string text;
  for (const char c : bytes) {
    const auto byte = static_cast<unsigned char>(c);
    append(text, byte >= 0x80 && byte < 0xA0 ? kWindows[byte - 0x80u] : byte);
  }
  return text;
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
  if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
  return withLineFeeds(isUtf8(bytes) ? std::string(bytes) : fromWindows1252(bytes));
}

}  // namespace baywright::detail
