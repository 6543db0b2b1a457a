// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"

namespace baywright {

enum class PlyType { Int8, UInt8, Int16, UInt16, Int32, UInt32, Float32, Float64 };
std::size_t sizeOf(PlyType type);

struct PlyProperty {
  std::string name;
  PlyType type = PlyType::Float32;
  std::optional<PlyType> countType;  ///< set: a list with its count before it
};

struct PlyElement {
  std::string name;
  std::uint64_t count = 0;
  std::vector<PlyProperty> properties;

  /// Bytes of the shortest possible row in a binary file, or in text (a character and a space a value).
  std::uint64_t shortestRow(bool isText) const;
};

/// What a PLY file says of itself before its numbers.
struct PlyHeader {
  enum class Encoding { Text, LittleEndian, BigEndian };

  Encoding encoding = Encoding::Text;
  std::vector<PlyElement> elements;  ///< in the order of the body
  std::size_t bodyStart = 0;         ///< offset in the file
};

inline constexpr std::size_t kLongestPlyHeader = 1 << 16;

/// Lines may end in LF or CR LF. Refused with a sentence: no PLY, no end of the header within
/// kLongestPlyHeader bytes, an encoding, keyword or type that PLY has not, counts that are no numbers.
Result<PlyHeader> readPlyHeader(std::string_view bytes);

}  // namespace baywright
