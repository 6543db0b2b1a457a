// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "survey/scan_geometry.h"

namespace baywright {

/// How much of a scan is taken. A cloud with more points is thinned evenly, and says so; a mesh with more
/// triangles is refused, since leaving some out would tear holes.
struct ScanReadOptions {
  std::size_t mostPoints = 10'000'000;
  std::size_t mostTriangles = 10'000'000;
};

/// What a reader of one format makes of a file, before anything is judged: every point in double precision,
/// finite or not, triangles with indices below the number of points.
struct RawScan {
  std::vector<Vec3> points;
  std::vector<TriangleMesh::Corners> triangles;
  std::optional<double> metresPerUnit;  ///< where the format itself says so
  std::optional<UpAxis> up;
  std::size_t thinnedOut = 0;  ///< points that were passed over because there are too many
  std::vector<std::string> notes;
};

/// Every so many points of a cloud is kept so that at most `most` are.
inline std::size_t thinningStride(std::size_t count, std::size_t most) {
  return most == 0 || count <= most ? 1 : (count + most - 1) / most;
}

/// How often a reader says how far it is and asks whether to go on.
inline constexpr std::size_t kRowsBetweenLooks = 1 << 16;

inline constexpr const char* kImportCancelled = "The import was cancelled.";

}  // namespace baywright
