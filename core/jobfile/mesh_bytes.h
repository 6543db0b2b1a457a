// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"
#include "geometry/mesh.h"

namespace baywright {

/// Scanned geometry as it lies in memory, so that a scan of millions of triangles opens as fast as it is
/// read. All little-endian:
///   "BWMESH1\n"   u64 vertices, u64 triangles, 3 float32 a vertex (metres), 3 u32 a triangle
///   "BWPNTS1\n"   u64 points, 3 float32 a point (metres)
std::string meshToBytes(const TriangleMesh& mesh);
std::string pointsToBytes(const std::vector<Eigen::Vector3f>& points);

/// Refused with a sentence: another kind of bytes, a length that does not fit the counts, and what
/// TriangleMesh::from refuses; for points, coordinates that are not finite.
Result<std::shared_ptr<const TriangleMesh>> meshFromBytes(std::string_view bytes);
Result<std::shared_ptr<const std::vector<Eigen::Vector3f>>> pointsFromBytes(std::string_view bytes);

}  // namespace baywright
