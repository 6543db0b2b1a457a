// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_tag_writer.h"

#include <array>
#include <charconv>
#include <cmath>

#include "units/utf8.h"

namespace baywright::detail {

namespace {

std::string hexadecimal(unsigned number) {
  std::array<char, 16> digits{};
  const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), number, 16);
  std::string text(digits.data(), end);
  for (char& c : text)
    if (c >= 'a') c = static_cast<char>(c - 'a' + 'A');
  return text;
}

}  // namespace

void DxfTagWriter::tag(int code, std::string_view value) {
  out_ += std::to_string(code);
  out_ += '\n';
  out_ += value;
  out_ += '\n';
}

void DxfTagWriter::tag(int code, int value) {
  tag(code, std::to_string(value));
}

void DxfTagWriter::tag(int code, double value) {
  std::array<char, 64> digits{};
  constexpr int kDecimals = 6;
  const double bounded = std::abs(value) < 1e15 ? value : 0;  // never true of a drawing
  const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), bounded,
                                          std::chars_format::fixed, kDecimals);
  tag(code, std::string_view(digits.data(), static_cast<std::size_t>(end - digits.data())));
}

void DxfTagWriter::point(int code, const Vec2& point) {
  tag(code, point.x());
  tag(code + 10, point.y());
}

void DxfTagWriter::text(int code, std::string_view utf8) {
  std::string ascii;
  while (!utf8.empty()) {
    const auto point = firstCodePoint(utf8);
    const char32_t c = point ? point->code : U'?';
    utf8.remove_prefix(point ? point->bytes : 1);
    if (c < 0x20 || c == 0x7F) {
      ascii += ' ';
    } else if (c < 0x7F) {
      ascii += static_cast<char>(c);
    } else if (c < 0x10000) {
      const std::string digits = hexadecimal(c);
      ascii += "\\U+" + std::string(4 - digits.size(), '0') + digits;
    } else {
      ascii += '?';
    }
  }
  tag(code, ascii);
}

void DxfTagWriter::section(std::string_view name) {
  tag(0, "SECTION");
  tag(2, name);
}

std::string DxfTagWriter::handle() {
  return hexadecimal(++last_);
}

}  // namespace baywright::detail
