// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/progress.h"
#include "geometry/mesh.h"
#include "geometry/surface_samples.h"
#include "job/scan.h"

namespace baywright::detail {

/// Calls `take(point)` for every point of a cloud, or for samples of a mesh no farther apart than `spacing`
/// metres. False when `progress` asked to stop. Internal to `drawing`.
template <class Take>
bool forSamplesOf(const RoomScan& scan, double spacing, const Progress& progress, const Take& take) {
  constexpr std::size_t kBetweenLooks = 1 << 16;
  std::size_t untilLook = kBetweenLooks;
  const auto stops = [&] {
    if (--untilLook > 0) return false;
    untilLook = kBetweenLooks;
    return progress.stop();
  };
  if (scan.points) {
    for (const Eigen::Vector3f& p : *scan.points) {
      if (stops()) return false;
      take(p);
    }
  }
  if (!scan.mesh) return true;
  const auto& vertices = scan.mesh->vertices();
  for (const TriangleMesh::Corners& corners : scan.mesh->triangles()) {
    if (stops()) return false;
    const Eigen::Vector3f& a = vertices[corners[0]];
    const Eigen::Vector3f& b = vertices[corners[1]];
    const Eigen::Vector3f& c = vertices[corners[2]];
    sampleTriangle(a, b, c, piecesAlong(a, b, c, spacing), take);
  }
  return true;
}

}  // namespace baywright::detail
