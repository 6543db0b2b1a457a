// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/mesh.h"
#include "geometry/vec.h"

namespace baywright {

/// Makes one of all points that are equal to the last bit, the first one's place in the order kept, and
/// points the triangles to it. Loaders that give every face corners of its own make a mesh thrice as large as
/// it is.
void weld(std::vector<Vec3>& points, std::vector<TriangleMesh::Corners>& triangles);

}  // namespace baywright
