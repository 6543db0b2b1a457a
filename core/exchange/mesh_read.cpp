// SPDX-License-Identifier: Apache-2.0
#include "exchange/mesh_read.h"

#include <algorithm>
#include <new>

#include "exchange/mesh_clean.h"
#include "exchange/mesh_scene.h"
#include "exchange/pcd_read.h"
#include "exchange/ply_read.h"
#include "exchange/xyz_read.h"

namespace baywright {
namespace {

/// "# .PCD v0.7" by custom, and always a line that begins with VERSION or FIELDS.
bool looksLikePcd(std::string_view bytes) {
  const std::string_view start = bytes.substr(0, 200);
  return start.starts_with("# .PCD") || start.starts_with("VERSION") || start.starts_with("FIELDS");
}

Result<RawScan> readRaw(const std::string& fileName, std::string_view bytes, const ScanReadOptions& options,
                        const Progress& progress) {
  const std::string suffix = suffixOf(fileName);
  if (bytes.starts_with("ply\n") || bytes.starts_with("ply\r") || suffix == "ply")
    return readPly(bytes, options, progress);
  if (bytes.starts_with("glTF")) return readScene(bytes, SceneFormat::GltfBinary, options, progress);
  if (looksLikePcd(bytes) || suffix == "pcd") return readPcd(bytes, options, progress);
  if (suffix == "glb") return fail("The file is no GLB: it does not begin with \"glTF\".");
  if (suffix == "gltf") return readScene(bytes, SceneFormat::GltfText, options, progress);
  if (suffix == "obj") return readScene(bytes, SceneFormat::Obj, options, progress);
  if (hasScanSuffix(fileName)) return readXyz(bytes, options, progress);
  return fail("The file's kind is not known.", {},
              "Scans are read from PLY, OBJ, glTF, GLB, PCD, XYZ and text files.");
}

}  // namespace

std::string suffixOf(std::string_view fileName) {
  const std::size_t dot = fileName.rfind('.');
  if (dot == std::string_view::npos) return {};
  std::string suffix(fileName.substr(dot + 1));
  for (char& c : suffix)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return suffix;
}

bool hasScanSuffix(std::string_view fileName) {
  return std::ranges::find(kScanSuffixes, suffixOf(fileName)) != std::end(kScanSuffixes);
}

Result<ScanGeometry> readScan(const std::string& fileName, std::string_view bytes,
                              const ScanReadOptions& options, const Progress& progress) {
  if (bytes.empty()) return fail("The file is empty.", fileName);
  if (bytes.size() > kMostScanBytes)
    return fail("The file has " + std::to_string(bytes.size() >> 20) + " MB, but at most " +
                    std::to_string(kMostScanBytes >> 20) + " MB are read.",
                fileName, "Export the scan with fewer points.");
  try {
    auto raw = readRaw(fileName, bytes, options, progress);
    auto scan = raw ? cleaned(std::move(*raw)) : tl::unexpected(raw.error());
    if (!scan && scan.error().what != kImportCancelled)
      scan.error().where = fileName + (scan.error().where.empty() ? "" : " / " + scan.error().where);
    if (scan) progress.at(1);
    return scan;
  } catch (const std::bad_alloc&) {
    return fail("There is not enough memory for this scan.", fileName, "Export it with fewer points.");
  }
}

}  // namespace baywright
