// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_tags.h"

#include <charconv>
#include <cmath>

namespace baywright::detail {

namespace {

// The published reference knows codes from -5 to 1071.
constexpr int kLowestCode = -5;
constexpr int kHighestCode = 1071;

bool isName(std::string_view text) {
  if (text.empty() || text.front() == '-') return false;
  bool letter = false;
  for (const char c : text) {
    const bool upper = c >= 'A' && c <= 'Z';
    if (!upper && !(c >= '0' && c <= '9') && c != '_') return false;
    letter = letter || upper;
  }
  return letter;
}

std::optional<int> groupCode(std::string_view line) {
  const std::optional<int> code = dxfInteger(line);
  if (!code || *code < kLowestCode || *code > kHighestCode) return std::nullopt;
  return code;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
  const auto isSpace = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
  while (!text.empty() && isSpace(text.front())) text.remove_prefix(1);
  while (!text.empty() && isSpace(text.back())) text.remove_suffix(1);
  return text;
}

std::optional<int> dxfInteger(std::string_view value) {
  value = trimmed(value);
  if (!value.empty() && value.front() == '+') value.remove_prefix(1);
  int number = 0;
  const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), number);
  if (error != std::errc() || end != value.data() + value.size()) return std::nullopt;
  return number;
}

std::optional<double> dxfNumber(std::string_view value) {
  value = trimmed(value);
  if (!value.empty() && value.front() == '+') value.remove_prefix(1);
  double number = 0;
  const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), number);
  if (error != std::errc() || end != value.data() + value.size()) return std::nullopt;
  if (!(std::abs(number) <= kLargestDxfNumber)) return std::nullopt;  // false for NaN too
  return number;
}

DxfTagReader::DxfTagReader(std::string_view bytes) : bytes_(bytes) {
  if (bytes_.find('\n') == std::string_view::npos) lineEnd_ = '\r';
}

std::optional<std::string_view> DxfTagReader::takeLine() {
  if (at_ >= bytes_.size()) return std::nullopt;
  std::size_t end = bytes_.find(lineEnd_, at_);
  if (end == std::string_view::npos) end = bytes_.size();
  std::string_view text = bytes_.substr(at_, end - at_);
  while (!text.empty() && text.back() == '\r') text.remove_suffix(1);
  at_ = end + 1;
  ++line_;
  return text;
}

std::optional<DxfTag> DxfTagReader::next() {
  const std::size_t at = at_;
  const std::size_t line = line_;
  const std::optional<std::string_view> first = takeLine();
  if (!first) return std::nullopt;
  tagLine_ = line_;
  const std::optional<int> code = groupCode(*first);
  if (!code) {
    // Blank lines at the end are no damage.
    if (trimmed(bytes_.substr(at)).find_first_not_of("\r\n \t\x1a") == std::string_view::npos) {
      at_ = bytes_.size();
      return std::nullopt;
    }
    return skipDamage(at, line);
  }
  const std::optional<std::string_view> value = takeLine();
  if (!value) return std::nullopt;
  return DxfTag{*code, *value};
}

DxfTag DxfTagReader::skipDamage(std::size_t at, std::size_t line) {
  if (firstSkipped_ == 0) firstSkipped_ = line + 1;
  at_ = at;
  line_ = line;
  bool zeroBefore = false;
  std::size_t zeroAt = at;
  std::size_t zeroLine = line;
  while (true) {
    const std::size_t lineAt = at_;
    const std::size_t lineNumber = line_;
    const std::optional<std::string_view> text = takeLine();
    if (!text) break;
    if (zeroBefore && isName(trimmed(*text))) {
      at_ = zeroAt;
      line_ = zeroLine;
      break;
    }
    zeroBefore = trimmed(*text) == "0";
    zeroAt = lineAt;
    zeroLine = lineNumber;
  }
  linesSkipped_ += line_ - line;
  return {kDamageCode, {}};
}

}  // namespace baywright::detail
