// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "base/problem.h"
#include "base/progress.h"
#include "exchange/mesh_raw.h"
#include "survey/scan_geometry.h"

namespace baywright {

/// A job holds the original file, and reads no member larger than this (ArchiveLimits).
inline constexpr std::uint64_t kMostScanBytes = 512ull << 20;

/// What an open dialog asks for.
inline constexpr std::string_view kScanSuffixes[] = {"ply", "obj", "gltf", "glb", "pcd",
                                                     "xyz", "txt", "csv",  "asc", "pts"};

/// What stands behind the last dot of the name, in lower case; empty where there is no dot.
std::string suffixOf(std::string_view fileName);

/// True for a name that ends like a scan's; upper and lower case are one.
bool hasScanSuffix(std::string_view fileName);

/// Reads a 3D scan: a mesh or points. The kind is told by the first bytes where the format has a mark (PLY,
/// PCD, GLB), else by the name's suffix. Unit and up axis are not guessed: they are set only where the format
/// states them (glTF). Points that are no numbers or far off are left out and counted (mesh_clean.h). Meshes
/// may have holes, edges of many triangles, and triangles that face any way.
///
/// Five million points or triangles take some seconds; `progress` is told, and may stop it. Memory stays
/// within a small multiple of the file's size, for what a file promises is compared with its length before
/// anything is allocated.
///
/// Refused with a sentence: an empty file, a kind that is not known, more than kMostScanBytes, more triangles
/// than the options allow, and whatever the format's reader refuses (ply_read.h, pcd_read.h, xyz_read.h,
/// mesh_scene.h).
Result<ScanGeometry> readScan(const std::string& fileName, std::string_view bytes,
                              const ScanReadOptions& options, const Progress& progress);

}  // namespace baywright
