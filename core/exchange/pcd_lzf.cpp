// SPDX-License-Identifier: Apache-2.0
#include "exchange/pcd_lzf.h"

namespace baywright {

std::optional<std::string> unpackLzf(std::string_view block, std::size_t size) {
  std::string out;
  out.reserve(size);
  const auto byteAt = [&](std::size_t i) {
    return static_cast<std::size_t>(static_cast<unsigned char>(block[i]));
  };
  std::size_t at = 0;
  while (at < block.size()) {
    const std::size_t control = byteAt(at++);
    if (control < 32) {
      const std::size_t count = control + 1;
      if (block.size() - at < count || size - out.size() < count) return std::nullopt;
      out.append(block.substr(at, count));
      at += count;
      continue;
    }
    std::size_t length = control >> 5;
    if (length == 7) {
      if (at >= block.size()) return std::nullopt;
      length += byteAt(at++);
    }
    length += 2;
    if (at >= block.size()) return std::nullopt;
    const std::size_t back = ((control & 31) << 8 | byteAt(at++)) + 1;
    if (back > out.size() || size - out.size() < length) return std::nullopt;
    // Byte by byte: the copy may run into what it has just written.
    for (std::size_t i = 0; i < length; ++i) out.push_back(out[out.size() - back]);
  }
  if (out.size() != size) return std::nullopt;
  return out;
}

}  // namespace baywright
