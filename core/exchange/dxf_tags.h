// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace baywright::detail {

/// One pair of lines of an ASCII DXF file: a group code and its value, a view into the file's bytes without
/// the line end. Values of texts may begin with spaces that belong to them.
struct DxfTag {
  int code = 0;
  std::string_view value;
};

/// Stands where lines did not pair up: whatever entity is being read is not to be trusted.
inline constexpr int kDamageCode = -1000;

/// Cuts the bytes of an ASCII DXF file into tags. Lines end with LF, CRLF, or CR where there is no LF at all.
/// Where a line that should be a group code is none, it skips to the next "0" that is followed by a name, and
/// hands out one tag with kDamageCode for all that was skipped. The bytes must outlive the tags.
class DxfTagReader {
 public:
  explicit DxfTagReader(std::string_view bytes);

  /// Nothing at the end of the file.
  std::optional<DxfTag> next();

  /// The line, from 1, on which the last tag's group code stands.
  std::size_t line() const { return tagLine_; }
  std::size_t linesSkipped() const { return linesSkipped_; }
  /// The first line that was skipped; 0 when none was.
  std::size_t firstSkipped() const { return firstSkipped_; }

 private:
  std::optional<std::string_view> takeLine();
  DxfTag skipDamage(std::size_t at, std::size_t line);

  std::string_view bytes_;
  char lineEnd_ = '\n';
  std::size_t at_ = 0;
  std::size_t line_ = 0;
  std::size_t tagLine_ = 0;
  std::size_t linesSkipped_ = 0;
  std::size_t firstSkipped_ = 0;
};

std::string_view trimmed(std::string_view text);

/// A whole number or a decimal one with white space around it; nothing when there is more or less than that,
/// and for numbers that are not finite or larger than any coordinate (kLargestDxfNumber).
std::optional<int> dxfInteger(std::string_view value);
std::optional<double> dxfNumber(std::string_view value);
inline constexpr double kLargestDxfNumber = 1e12;  // squares of it are far from overflow

}  // namespace baywright::detail
