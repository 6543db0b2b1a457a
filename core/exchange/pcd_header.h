// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"

namespace baywright {

/// One field of every point of a PCD file: `count` numbers of `size` bytes. Type: I signed, U unsigned, F
/// float.
struct PcdField {
  std::string name;
  std::size_t size = 4;
  char type = 'F';
  std::size_t count = 1;
};

/// What a PCD file says of itself before its numbers.
struct PcdHeader {
  enum class Encoding { Text, Binary, Compressed };

  std::vector<PcdField> fields;
  std::uint64_t points = 0;
  Encoding encoding = Encoding::Text;
  std::size_t bodyStart = 0;          ///< offset in the file
  std::array<std::size_t, 3> axes{};  ///< which fields are x, y and z

  std::size_t pointBytes() const;
  std::size_t pointNumbers() const;
};

/// Refused with a sentence: no PCD, a header without end, lines or types that PCD has not, lists that do not
/// fit each other, no coordinates x, y and z.
Result<PcdHeader> readPcdHeader(std::string_view bytes);

}  // namespace baywright
