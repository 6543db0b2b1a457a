// SPDX-License-Identifier: Apache-2.0
#include "exchange/mesh_weld.h"

#include <bit>
#include <cstdint>
#include <limits>

namespace baywright {
namespace {

constexpr std::uint32_t kFree = std::numeric_limits<std::uint32_t>::max();

std::uint64_t mixed(const Vec3& p) {
  std::uint64_t hash = 0;
  for (const double coordinate : p) {
    hash ^= std::bit_cast<std::uint64_t>(coordinate);
    hash *= 0x9e3779b97f4a7c15ull;
    hash ^= hash >> 29;
  }
  return hash;
}

bool sameBits(const Vec3& a, const Vec3& b) {
  for (int i = 0; i < 3; ++i)
    if (std::bit_cast<std::uint64_t>(a[i]) != std::bit_cast<std::uint64_t>(b[i])) return false;
  return true;
}

}  // namespace

void weld(std::vector<Vec3>& points, std::vector<TriangleMesh::Corners>& triangles) {
  if (points.size() >= kFree / 2) return;
  const std::size_t slots = std::bit_ceil(2 * points.size() + 1);
  std::vector<std::uint32_t> table(slots, kFree);
  std::vector<std::uint32_t> place(points.size());
  std::uint32_t kept = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    std::size_t slot = mixed(points[i]) & (slots - 1);
    while (table[slot] != kFree && !sameBits(points[table[slot]], points[i])) slot = (slot + 1) & (slots - 1);
    if (table[slot] == kFree) {
      points[kept] = points[i];
      table[slot] = kept++;
    }
    place[i] = table[slot];
  }
  points.resize(kept);
  for (auto& corners : triangles)
    for (std::uint32_t& corner : corners) corner = place[corner];
}

}  // namespace baywright
