// SPDX-License-Identifier: Apache-2.0
#include "exchange/pcd_header.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include "exchange/xyz_lines.h"

namespace baywright {
namespace {

constexpr std::size_t kMostLines = 100;
constexpr std::size_t kLongestLine = 1 << 16;
constexpr std::uint64_t kMostNumbers = 4096;  ///< a field: histograms of features have a few hundred

std::optional<std::uint64_t> countFrom(std::string_view word) {
  std::uint64_t value = 0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
  if (error != std::errc() || end != word.data() + word.size()) return std::nullopt;
  return value;
}

tl::unexpected<Problem> bad(const std::string& what) {
  return fail("The PCD header is damaged: " + what + ".", {},
              "Export the scan again, or take a copy that is whole.");
}

/// Takes the header's lines one by one.
class HeaderReader {
 public:
  /// True at the last one.
  Result<bool> line(std::string_view text) {
    const auto words = fieldsOf(text, ' ');
    if (words.empty() || words[0].starts_with('#')) return false;
    const Words values(words.begin() + 1, words.end());
    const std::string_view key = words[0];
    if (key == "VERSION" || key == "VIEWPOINT" || key == "HEIGHT") return numbered(key, values);
    if (key == "WIDTH" || key == "POINTS") return numbered(key, values);
    if (key == "FIELDS" || key == "COLUMNS") return names(values);
    if (key == "SIZE" || key == "TYPE" || key == "COUNT") return perField(key, values);
    if (key == "DATA") return data(values);
    return bad("a line is not known");
  }

  Result<PcdHeader> finished() {
    if (header_.fields.empty()) return bad("it names no fields");
    if (const auto shape = pointsOfShape(); points_ && shape && *points_ != *shape)
      return bad("width times height is not the number of points");
    header_.points = points_ ? *points_ : pointsOfShape().value_or(0);
    for (std::size_t axis = 0; axis < 3; ++axis) {
      const std::string name(1, static_cast<char>('x' + axis));
      const auto field = std::find_if(header_.fields.begin(), header_.fields.end(),
                                      [&](const PcdField& f) { return f.name == name; });
      if (field == header_.fields.end() || field->count != 1)
        return fail("The points of the PCD file have no coordinates x, y and z.");
      header_.axes[axis] = static_cast<std::size_t>(field - header_.fields.begin());
    }
    return header_;
  }

  PcdHeader header_;

 private:
  using Words = std::vector<std::string_view>;

  std::optional<std::uint64_t> pointsOfShape() const {
    constexpr std::uint64_t kMost = 1ull << 32;
    if (!width_ || !height_ || *width_ > kMost || *height_ > kMost) return std::nullopt;
    return *width_ * *height_;
  }

  Result<bool> numbered(std::string_view key, const Words& values) {
    if (key == "VERSION" || key == "VIEWPOINT") return false;
    const auto value = values.size() == 1 ? countFrom(values[0]) : std::nullopt;
    if (!value) return bad(std::string(key) + " is no number");
    (key == "WIDTH" ? width_ : key == "HEIGHT" ? height_ : points_) = *value;
    return false;
  }

  Result<bool> names(const Words& values) {
    for (const std::string_view name : values) header_.fields.push_back({std::string(name)});
    return false;
  }

  Result<bool> perField(std::string_view key, const Words& values) {
    if (values.size() != header_.fields.size()) return bad(std::string(key) + " does not fit the fields");
    for (std::size_t i = 0; i < values.size(); ++i) {
      PcdField& field = header_.fields[i];
      if (key == "TYPE") {
        if (values[i] != "I" && values[i] != "U" && values[i] != "F") return bad("a TYPE is none of I, U, F");
        field.type = values[i][0];
        continue;
      }
      const auto value = countFrom(values[i]);
      const bool isSize = value && (*value == 1 || *value == 2 || *value == 4 || *value == 8);
      if (key == "SIZE" ? !isSize : !value || *value > kMostNumbers)
        return bad("a " + std::string(key) + " is none");
      (key == "SIZE" ? field.size : field.count) = static_cast<std::size_t>(*value);
    }
    return false;
  }

  Result<bool> data(const Words& values) {
    const std::string_view kind = values.size() == 1 ? values[0] : "";
    if (kind == "ascii")
      header_.encoding = PcdHeader::Encoding::Text;
    else if (kind == "binary")
      header_.encoding = PcdHeader::Encoding::Binary;
    else if (kind == "binary_compressed")
      header_.encoding = PcdHeader::Encoding::Compressed;
    else
      return bad("DATA is none of ascii, binary, binary_compressed");
    return true;
  }

  std::optional<std::uint64_t> width_;
  std::optional<std::uint64_t> height_;
  std::optional<std::uint64_t> points_;
};

}  // namespace

std::size_t PcdHeader::pointBytes() const {
  std::size_t bytes = 0;
  for (const PcdField& field : fields) bytes += field.size * field.count;
  return bytes;
}

std::size_t PcdHeader::pointNumbers() const {
  std::size_t numbers = 0;
  for (const PcdField& field : fields) numbers += field.count;
  return numbers;
}

Result<PcdHeader> readPcdHeader(std::string_view bytes) {
  HeaderReader reader;
  std::size_t at = 0;
  for (std::size_t i = 0; i < kMostLines; ++i) {
    const std::size_t end = bytes.find('\n', at);
    if (end == std::string_view::npos || end - at > kLongestLine) break;
    const auto isLast = reader.line(bytes.substr(at, end - at));
    if (!isLast) return tl::unexpected(isLast.error());
    at = end + 1;
    if (!*isLast) continue;
    reader.header_.bodyStart = at;
    return reader.finished();
  }
  return bad("it has no line DATA");
}

}  // namespace baywright
