// SPDX-License-Identifier: Apache-2.0
#include "exchange/xyz_read.h"

#include <algorithm>

#include "exchange/xyz_lines.h"

namespace baywright {
namespace {

constexpr std::size_t kMostHeadings = 100;

bool isRemark(std::string_view line) {
  return line.starts_with('#') || line.starts_with("//");
}

class TextReader {
 public:
  TextReader(std::string_view bytes, const ScanReadOptions& options, const Progress& progress)
      : bytes_(bytes), progress_(progress) {
    if (bytes_.starts_with("\xEF\xBB\xBF")) bytes_.remove_prefix(3);
    const auto lines = static_cast<std::size_t>(std::count(bytes_.begin(), bytes_.end(), '\n')) + 1;
    stride_ = thinningStride(lines, options.mostPoints);
    scan_.points.reserve(lines / stride_ + 1);
  }

  Result<RawScan> read() {
    std::size_t at = 0;
    while (at < bytes_.size()) {
      const std::size_t end = std::min(bytes_.find('\n', at), bytes_.size());
      const auto done = line(bytes_.substr(at, end - at), end == bytes_.size());
      if (!done) return tl::unexpected(done.error());
      at = end + 1;
      if (number_ % kRowsBetweenLooks != 0) continue;
      if (progress_.stop()) return fail(kImportCancelled);
      progress_.at(static_cast<double>(at) / static_cast<double>(bytes_.size() + 1));
    }
    if (scan_.points.empty())
      return fail("The file has no line with three numbers.", {},
                  "Points are written one a line: x, y and z.");
    return std::move(scan_);
  }

 private:
  Result<void> line(std::string_view text, bool isLast) {
    ++number_;
    text.remove_prefix(std::min(text.find_first_not_of(" \t\r"), text.size()));
    if (text.empty()) return {};
    if (!style_) return heading(text);
    if (isRemark(text)) return {};
    const auto point = pointOf(text, *style_);
    if (point) {
      if (found_++ % stride_ == 0)
        scan_.points.push_back(*point);
      else
        ++scan_.thinnedOut;
      return {};
    }
    if (!isLast)
      return fail("The line is no point: three numbers are wanted.", "line " + std::to_string(number_));
    scan_.notes.push_back("The last line is cut short and was left out.");
    return {};
  }

  /// Until a line of numbers shows how the file is written.
  Result<void> heading(std::string_view text) {
    if (const auto columns = namedColumns(text)) {
      columns_ = *columns;
      return {};
    }
    if (isRemark(text)) return {};
    style_ = styleOf(text);
    if (style_) {
      if (columns_) style_->columns = *columns_;
      --number_;
      return line(text, false);
    }
    if (number_ > kMostHeadings)
      return fail("The first " + std::to_string(kMostHeadings) + " lines hold no point.", {},
                  "Points are written one a line: x, y and z.");
    return {};
  }

  std::string_view bytes_;
  const Progress& progress_;
  std::size_t stride_ = 1;
  std::size_t number_ = 0;
  std::size_t found_ = 0;
  std::optional<XyzStyle> style_;
  std::optional<std::array<std::size_t, 3>> columns_;
  RawScan scan_;
};

}  // namespace

Result<RawScan> readXyz(std::string_view bytes, const ScanReadOptions& options, const Progress& progress) {
  return TextReader(bytes, options, progress).read();
}

}  // namespace baywright
