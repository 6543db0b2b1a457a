// SPDX-License-Identifier: Apache-2.0
#include "units/utf8.h"

#include <array>

namespace baywright::detail {

std::optional<CodePoint> firstCodePoint(std::string_view utf8) {
  const auto byteAt = [&](std::size_t i) { return static_cast<unsigned char>(utf8[i]); };
  const unsigned lead = byteAt(0);
  if (lead < 0x80) return CodePoint{lead, 1};
  const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
  if (lead < 0xC0 || lead > 0xF4 || utf8.size() < bytes) return std::nullopt;
  char32_t code = lead & (0x7Fu >> bytes);
  for (std::size_t i = 1; i < bytes; ++i) {
    if ((byteAt(i) & 0xC0u) != 0x80u) return std::nullopt;
    code = code << 6 | (byteAt(i) & 0x3Fu);
  }
  constexpr std::array<char32_t, 5> kSmallest = {0, 0, 0x80, 0x800, 0x10000};
  const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
  if (code < kSmallest[bytes] || surrogate || code > 0x10FFFF) return std::nullopt;
  return CodePoint{code, bytes};
}

bool isUtf8(std::string_view bytes) {
  while (!bytes.empty()) {
    const auto code = firstCodePoint(bytes);
    if (!code) return false;
    bytes.remove_prefix(code->bytes);
  }
  return true;
}

void appendUtf8(std::string& text, char32_t code) {
  const auto put = [&](char32_t byte) { text += static_cast<char>(static_cast<unsigned char>(byte)); };
  const auto putTail = [&](int shift) { put(0x80 | ((code >> shift) & 0x3F)); };
  if (code < 0x80) {
    put(code);
  } else if (code < 0x800) {
    put(0xC0 | (code >> 6));
    putTail(0);
  } else if (code < 0x10000) {
    put(0xE0 | (code >> 12));
    putTail(6);
    putTail(0);
  } else {
    put(0xF0 | (code >> 18));
    putTail(12);
    putTail(6);
    putTail(0);
  }
}

}  // namespace baywright::detail
