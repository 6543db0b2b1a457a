// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

#include "base/problem.h"
#include "base/progress.h"
#include "exchange/mesh_raw.h"

namespace baywright {

/// Reads the PLY format (G. Turk, Stanford): text and binary of either byte order, any order of elements,
/// coordinates of any type, faces as a list `vertex_indices` or `vertex_index` of any length (cut into a fan
/// from their first corner) and of any type. All other elements and properties are passed over.
///
/// Refused with a sentence: a damaged header, no coordinates x, y, z, counts that the rest of the file cannot
/// hold (nothing is allocated before that is known), a file that ends early, faces that name a vertex that
/// does not exist, more triangles than the options allow.
Result<RawScan> readPly(std::string_view bytes, const ScanReadOptions& options, const Progress& progress);

}  // namespace baywright
