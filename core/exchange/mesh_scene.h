// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

#include "base/problem.h"
#include "base/progress.h"
#include "exchange/mesh_raw.h"

namespace baywright {

enum class SceneFormat { Obj, GltfText, GltfBinary };

/// Reads the triangles of an OBJ, glTF 2 or GLB file, all parts of its scene where they stand, equal corners
/// joined. glTF states metres and y up (glTF 2.0, section 3.4); OBJ states nothing. Points without faces make
/// a cloud.
///
/// The reading is Assimp's (BSD 3-clause), fenced in: only the one loader is registered, it sees no file but
/// these bytes (materials and pictures are not looked for; a glTF with its numbers in another file is
/// refused), and it works in a child process with bounded memory and time (mesh_fence.h).
///
/// Refused with a sentence: whatever that loader does not take or does not survive, more triangles than the
/// options allow, a file without triangles or points.
Result<RawScan> readScene(std::string_view bytes, SceneFormat format, const ScanReadOptions& options,
                          const Progress& progress);

}  // namespace baywright
