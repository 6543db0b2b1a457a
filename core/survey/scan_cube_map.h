// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <cmath>
#include <cstdint>
#include <optional>
#include <vector>

namespace baywright {

/// Numbers cubes of space in the order in which they are first asked for. Coordinates of cubes must lie
/// within kMost of zero.
class CubeMap {
 public:
  using Cube = Eigen::Vector3i;
  static constexpr int kMost = 1 << 20;

  CubeMap() : slots_(1024, kFree) {}

  std::uint32_t indexOf(const Cube& cube) {
    if (2 * (keys_.size() + 1) > slots_.size()) grow();
    const std::uint64_t key = keyOf(cube);
    const std::size_t slot = find(key);
    if (slots_[slot] == kFree) {
      slots_[slot] = static_cast<std::uint32_t>(keys_.size());
      keys_.push_back(key);
    }
    return slots_[slot];
  }
  std::optional<std::uint32_t> existing(const Cube& cube) const {
    const std::uint32_t index = slots_[find(keyOf(cube))];
    return index == kFree ? std::nullopt : std::optional(index);
  }
  std::size_t size() const { return keys_.size(); }
  Cube cube(std::uint32_t index) const {
    const std::uint64_t key = keys_[index];
    const auto part = [&](int shift) { return static_cast<int>(key >> shift & kMask) - kMost; };
    return {part(0), part(21), part(42)};
  }

 private:
  static constexpr std::uint32_t kFree = 0xffffffff;
  static constexpr std::uint64_t kMask = (1ull << 21) - 1;

  static std::uint64_t keyOf(const Cube& cube) {
    std::uint64_t key = 0;
    for (int i = 0; i < 3; ++i) key |= (static_cast<std::uint64_t>(cube[i] + kMost) & kMask) << (21 * i);
    return key;
  }
  std::size_t find(std::uint64_t key) const {
    const std::uint64_t mixed = (key ^ key >> 31) * 0x9e3779b97f4a7c15ull;
    std::size_t slot = (mixed >> 20) & (slots_.size() - 1);
    while (slots_[slot] != kFree && keys_[slots_[slot]] != key) slot = (slot + 1) & (slots_.size() - 1);
    return slot;
  }
  void grow() {
    slots_.assign(2 * slots_.size(), kFree);
    for (std::size_t i = 0; i < keys_.size(); ++i) slots_[find(keys_[i])] = static_cast<std::uint32_t>(i);
  }

  std::vector<std::uint32_t> slots_;
  std::vector<std::uint64_t> keys_;
};

/// The cube of edge `size` that holds p; far places are put into the outermost.
inline CubeMap::Cube cubeAt(const Eigen::Vector3f& p, double size) {
  CubeMap::Cube cube;
  for (int i = 0; i < 3; ++i) {
    const double place = std::floor(static_cast<double>(p[i]) / size);
    const double most = CubeMap::kMost - 1;
    cube[i] = static_cast<int>(place < -most ? -most : place > most ? most : place);
  }
  return cube;
}

}  // namespace baywright
