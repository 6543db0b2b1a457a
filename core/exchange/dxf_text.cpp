// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_text.h"

#include <algorithm>
#include <charconv>

#include "exchange/dxf_tags.h"
#include "units/code_pages.h"
#include "units/utf8.h"

namespace baywright::detail {

namespace {

// Control characters become spaces.
void append(std::string& text, char32_t code) {
  appendUtf8(text, code < 0x20 || code == 0x7F ? U' ' : code);
}

// "\U+00E4" at the front.
bool takeEscape(std::string_view& rest, char32_t& code) {
  if (rest.size() < 7 || (rest.substr(0, 3) != "\\U+" && rest.substr(0, 3) != "\\u+")) return false;
  unsigned number = 0;
  const auto [end, error] = std::from_chars(rest.data() + 3, rest.data() + 7, number, 16);
  if (error != std::errc() || end != rest.data() + 7) return false;
  code = number >= 0xD800 && number <= 0xDFFF ? kNoCharacter : static_cast<char32_t>(number);
  rest.remove_prefix(7);
  return true;
}

char lowerCase(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

// What follows "%%"; advances `rest` beyond it.
void takePercentCode(std::string_view& rest, std::string& words) {
  const char c = lowerCase(rest.front());
  if (c >= '0' && c <= '9' && rest.size() >= 3) {
    unsigned number = 0;
    const auto [end, error] = std::from_chars(rest.data(), rest.data() + 3, number);
    if (error == std::errc() && end == rest.data() + 3 && number < 256) {
      append(words, codePageCharacter(1252, static_cast<unsigned char>(number)));
      rest.remove_prefix(3);
      return;
    }
  }
  if (c == 'd')
    words += "\u00B0";
  else if (c == 'p')
    words += "\u00B1";
  else if (c == 'c')
    words += "\u2300";
  else if (c == '%')
    words += '%';
  else if (c != 'u' && c != 'o' && c != 'k')
    words += std::string("%%") + rest.front();
  rest.remove_prefix(1);
}

// Upper and lower part of a stacked text, which end with a semicolon and are parted by / or # or ^.
void takeStack(std::string_view& rest, std::string& words) {
  const std::size_t end = std::min(rest.find(';'), rest.size());
  if (!words.empty() && words.back() >= '0' && words.back() <= '9') words += ' ';  // 6 and a half, not 61/2
  for (const char c : rest.substr(0, end)) {
    if (c == '\\') continue;
    words += c == '#' || c == '^' ? '/' : c;
  }
  rest.remove_prefix(std::min(end + 1, rest.size()));
}

// What follows a backslash in an MTEXT.
void takeFormatCode(std::string_view& rest, std::string& words) {
  const char c = rest.front();
  rest.remove_prefix(1);
  if (c == 'P' || c == 'N' || c == 'X') {
    words += '\n';
  } else if (c == '~') {
    words += ' ';
  } else if (c == '\\' || c == '{' || c == '}') {
    words += c;
  } else if (c == 'S') {
    takeStack(rest, words);
  } else if (std::string_view("fFHhWwQqTtAaCcpM").find(c) != std::string_view::npos) {
    // These carry a value up to a semicolon.
    const std::size_t end = rest.find(';');
    rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
  }
  // \L \l \O \o \K \k switch lines on and off and carry nothing; of others nothing is known.
}

}  // namespace

int codePageFrom(std::string_view header) {
  header = trimmed(header);
  const std::size_t digits = header.find_first_of("0123456789");
  if (digits == std::string_view::npos) return 1252;
  return dxfInteger(header.substr(digits)).value_or(1252);
}

std::string decoded(std::string_view bytes, const DxfEncoding& encoding) {
  std::string text;
  text.reserve(bytes.size());
  const bool utf8 = isUtf8(bytes);
  while (!bytes.empty()) {
    char32_t code = 0;
    if (takeEscape(bytes, code)) {
      append(text, code);
    } else if (utf8) {
      const CodePoint point = *firstCodePoint(bytes);
      append(text, point.code);
      bytes.remove_prefix(point.bytes);
    } else {
      append(text, codePageCharacter(encoding.codePage, static_cast<unsigned char>(bytes.front())));
      bytes.remove_prefix(1);
    }
  }
  return text;
}

std::string plainText(std::string_view text) {
  std::string words;
  while (!text.empty()) {
    if (text.size() > 2 && text.substr(0, 2) == "%%") {
      text.remove_prefix(2);
      takePercentCode(text, words);
    } else {
      words += text.front();
      text.remove_prefix(1);
    }
  }
  return words;
}

std::string plainMtext(std::string_view text) {
  std::string words;
  while (!text.empty()) {
    const char c = text.front();
    if (text.size() > 2 && text.substr(0, 2) == "%%") {
      text.remove_prefix(2);
      takePercentCode(text, words);
      continue;
    }
    text.remove_prefix(1);
    if (c == '\\' && !text.empty())
      takeFormatCode(text, words);
    else if (c == '^' && !text.empty() &&
             (text.front() == 'I' || text.front() == 'J' || text.front() == 'M')) {
      words += text.front() == 'J' ? '\n' : ' ';
      text.remove_prefix(1);
    } else if (c != '{' && c != '}')
      words += c;
  }
  return words;
}

}  // namespace baywright::detail
