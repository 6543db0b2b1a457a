// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "exchange/mesh_clean.h"

/// What the fuzzers of scan files share.
namespace baywright::fuzz {

inline void require(bool condition) {
  if (!condition) std::abort();
}

inline std::string_view bytesOf(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

inline ScanReadOptions limits() {
  ScanReadOptions options;
  options.mostPoints = 3000;
  options.mostTriangles = 3000;
  return options;
}

/// The limits, and what is promised of a scan once it is cleaned.
inline void requireWhole(const RawScan& scan) {
  require(scan.triangles.size() <= limits().mostTriangles);
  if (scan.triangles.empty()) require(scan.points.size() <= limits().mostPoints + 1);
  for (const auto& corners : scan.triangles)
    for (const std::uint32_t corner : corners) require(corner < scan.points.size());
  const auto clean = cleaned(scan);
  if (!clean) {
    require(!clean.error().what.empty());
    return;
  }
  for (const Eigen::Vector3f& p : clean->points) require(p.allFinite());
  require(TriangleMesh::from(clean->points, clean->triangles).has_value());
}

}  // namespace baywright::fuzz
