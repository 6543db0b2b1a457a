// SPDX-License-Identifier: Apache-2.0
#include "exchange/ply_header.h"

#include <array>
#include <charconv>
#include <utility>

namespace baywright {
namespace {

constexpr std::array kTypes = {std::pair{"char", PlyType::Int8},      std::pair{"int8", PlyType::Int8},
                               std::pair{"uchar", PlyType::UInt8},    std::pair{"uint8", PlyType::UInt8},
                               std::pair{"short", PlyType::Int16},    std::pair{"int16", PlyType::Int16},
                               std::pair{"ushort", PlyType::UInt16},  std::pair{"uint16", PlyType::UInt16},
                               std::pair{"int", PlyType::Int32},      std::pair{"int32", PlyType::Int32},
                               std::pair{"uint", PlyType::UInt32},    std::pair{"uint32", PlyType::UInt32},
                               std::pair{"float", PlyType::Float32},  std::pair{"float32", PlyType::Float32},
                               std::pair{"double", PlyType::Float64}, std::pair{"float64", PlyType::Float64}};

std::optional<PlyType> typeFrom(std::string_view word) {
  for (const auto& [name, type] : kTypes)
    if (word == name) return type;
  return std::nullopt;
}

std::vector<std::string_view> wordsOf(std::string_view line) {
  std::vector<std::string_view> words;
  std::size_t at = 0;
  while ((at = line.find_first_not_of(" \t\r", at)) != std::string_view::npos) {
    const std::size_t end = std::min(line.find_first_of(" \t\r", at), line.size());
    words.push_back(line.substr(at, end - at));
    at = end;
  }
  return words;
}

std::string shown(std::string_view text) {
  constexpr std::size_t kLongest = 60;
  std::string plain(text.substr(0, kLongest));
  for (char& c : plain)
    if (static_cast<unsigned char>(c) < 0x20 || static_cast<unsigned char>(c) > 0x7e) c = '?';
  return "\"" + plain + "\"";
}

/// Takes the header's lines one by one.
class HeaderReader {
 public:
  Result<void> line(std::string_view text) {
    const auto words = wordsOf(text);
    if (words.empty() || words[0] == "comment" || words[0] == "obj_info") return {};
    if (words[0] == "format") return format(words, text);
    if (words[0] == "element") return element(words, text);
    if (words[0] == "property") return property(words, text);
    return fail("The PLY header has a line that PLY does not know: " + shown(text) + ".");
  }

  bool hasFormat = false;
  PlyHeader header;

 private:
  using Words = std::vector<std::string_view>;

  Result<void> format(const Words& words, std::string_view text) {
    const std::string_view kind = words.size() > 1 ? words[1] : "";
    if (kind == "ascii")
      header.encoding = PlyHeader::Encoding::Text;
    else if (kind == "binary_little_endian")
      header.encoding = PlyHeader::Encoding::LittleEndian;
    else if (kind == "binary_big_endian")
      header.encoding = PlyHeader::Encoding::BigEndian;
    else
      return fail("The PLY header names an encoding that PLY has not: " + shown(text) + ".");
    hasFormat = true;
    return {};
  }

  Result<void> element(const Words& words, std::string_view text) {
    PlyElement made;
    if (words.size() != 3) return fail("The PLY header has an element without a count: " + shown(text) + ".");
    made.name = words[1];
    const auto [end, error] = std::from_chars(words[2].data(), words[2].data() + words[2].size(), made.count);
    if (error != std::errc() || end != words[2].data() + words[2].size())
      return fail("The PLY header has a count that is no number: " + shown(text) + ".");
    header.elements.push_back(std::move(made));
    return {};
  }

  Result<void> property(const Words& words, std::string_view text) {
    const bool isList = words.size() == 5 && words[1] == "list";
    if (!isList && words.size() != 3)
      return fail("The PLY header has a property that cannot be understood: " + shown(text) + ".");
    if (header.elements.empty())
      return fail("The PLY header has a property that belongs to no element: " + shown(text) + ".");
    const auto type = typeFrom(words[isList ? 3 : 1]);
    const auto countType = isList ? typeFrom(words[2]) : std::nullopt;
    if (!type || (isList && !countType))
      return fail("The PLY header has a type that PLY has not: " + shown(text) + ".");
    header.elements.back().properties.push_back({std::string(words.back()), *type, countType});
    return {};
  }
};

}  // namespace

std::size_t sizeOf(PlyType type) {
  switch (type) {
    case PlyType::Int8:
    case PlyType::UInt8:
      return 1;
    case PlyType::Int16:
    case PlyType::UInt16:
      return 2;
    case PlyType::Int32:
    case PlyType::UInt32:
    case PlyType::Float32:
      return 4;
    case PlyType::Float64:
      break;
  }
  return 8;
}

std::uint64_t PlyElement::shortestRow(bool isText) const {
  std::uint64_t bytes = 0;
  for (const PlyProperty& property : properties)
    bytes += isText ? 2 : sizeOf(property.countType.value_or(property.type));
  return bytes;
}

Result<PlyHeader> readPlyHeader(std::string_view bytes) {
  if (!bytes.starts_with("ply\n") && !bytes.starts_with("ply\r"))
    return fail("The file is no PLY: it does not begin with \"ply\".");
  HeaderReader reader;
  const std::string_view head = bytes.substr(0, kLongestPlyHeader);
  std::size_t at = head.find('\n');
  while (at != std::string_view::npos) {
    const std::size_t start = at + 1;
    at = head.find('\n', start);
    if (at == std::string_view::npos) break;
    std::string_view line = head.substr(start, at - start);
    if (line.ends_with('\r')) line.remove_suffix(1);
    if (line == "end_header") {
      reader.header.bodyStart = at + 1;
      if (!reader.hasFormat) return fail("The PLY header does not say how its numbers are written.");
      return std::move(reader.header);
    }
    const auto read = reader.line(line);
    if (!read) return tl::unexpected(read.error());
  }
  return fail("The PLY header has no end: the file is cut short or damaged.", {},
              "Export the scan again, or take a copy that is whole.");
}

}  // namespace baywright
