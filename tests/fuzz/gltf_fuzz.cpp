// SPDX-License-Identifier: Apache-2.0
#include "exchange/mesh_scene.h"
#include "mesh_fuzz.h"

// Whatever the bytes do to the loader in its child process, here it is a scan that can be used or a sentence.
// OBJ goes the same way.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace baywright;
  const auto bytes = fuzz::bytesOf(data, size);
  const SceneFormat format = bytes.starts_with("glTF") ? SceneFormat::GltfBinary
                             : bytes.starts_with("{")  ? SceneFormat::GltfText
                                                       : SceneFormat::Obj;
  const auto scan = readScene(bytes, format, fuzz::limits(), {});
  if (!scan) {
    fuzz::require(!scan.error().what.empty());
    return 0;
  }
  fuzz::require(scan->triangles.size() <= fuzz::limits().mostTriangles);
  const auto clean = cleaned(*scan);
  if (clean) fuzz::require(TriangleMesh::from(clean->points, clean->triangles).has_value());
  return 0;
}
