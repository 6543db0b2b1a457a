// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/mesh.h"
#include "geometry/vec.h"

namespace baywright {

/// Which axis of a scan's own frame points away from the floor.
enum class UpAxis { PlusX, MinusX, PlusY, MinusY, PlusZ, MinusZ };

/// "x", "-x", "y", ...: as typed after --up. A leading plus is read too, upper and lower case are one.
std::string_view nameOf(UpAxis up);
std::optional<UpAxis> upAxisFrom(std::string_view word);

/// The rotation that turns `up` to z; the other axes keep their order, so nothing is mirrored.
Mat3 uprightFrom(UpAxis up);

/// What a file of a 3D scan holds, in the file's own axes and unit. A place is `origin + points[i]`: the
/// origin is taken off so that single precision is enough for coordinates of a national grid. All points are
/// finite and near each other; what was not is counted.
struct ScanGeometry {
  Vec3 origin = Vec3::Zero();
  std::vector<Eigen::Vector3f> points;           ///< of a cloud, or corners of the triangles
  std::vector<TriangleMesh::Corners> triangles;  ///< empty: a cloud. Any way round, any topology
  std::optional<double> statedMetresPerUnit;     ///< where the format itself says so
  std::optional<UpAxis> statedUp;                ///< likewise
  std::size_t notFinite = 0;                     ///< points left out: no numbers
  std::size_t farOff = 0;                        ///< points left out: far from all others
  std::size_t thinnedOut = 0;                    ///< points left out: too many of them
  std::vector<std::string> notes;                ///< one sentence each

  bool isMesh() const { return !triangles.empty(); }
};

/// The same scan in metres with z up, its origin at zero; figures and notes stay.
ScanGeometry upright(ScanGeometry scan, double metresPerUnit, UpAxis up);

}  // namespace baywright
