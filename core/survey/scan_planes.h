// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "base/problem.h"
#include "base/progress.h"
#include "survey/scan_geometry.h"

namespace baywright {

/// A small flat piece of a scanned surface: the points of one cube whose thickness is little beside their
/// spread. The normal has no side: scans are taken whichever way their triangles face.
struct ScanPatch {
  Vec3 centre = Vec3::Zero();
  Vec3 normal = Vec3::UnitZ();
  double size = 0;       ///< edge of the cube, metres; size squared is the area that it stands for
  double thickness = 0;  ///< standard deviation along the normal
  std::size_t points = 0;
};

/// How many samples a loop takes between two looks at whether it is to stop: a few milliseconds. What a stage
/// hands back after it was stopped is of no use.
inline constexpr std::size_t kSamplesBetweenLooks = 1 << 16;

/// No patch.
inline constexpr std::uint32_t kNoPatch = 0xffffffff;

/// A scan cut into cubes. Dense places fill the smallest; where points are sparse, cubes of twice and four
/// times the edge are tried, so that a far wall seen by a few scan lines is found as well.
struct ScanPatches {
  std::vector<ScanPatch> patches;
  std::vector<std::uint32_t> patchOf;  ///< a sample's patch, or kNoPatch
};

inline constexpr double kPatchSize = 0.20;  ///< metres; the smallest cubes. Larger ones blur jogs in walls.
inline constexpr int kPatchScales = 3;

/// Points that stand for the surface: those of a cloud, or even samples of a mesh's triangles, at least one
/// each, `spacing` apart on large ones.
inline constexpr double kSampleSpacing = 0.03;  ///< metres
std::vector<Eigen::Vector3f> surfaceSamples(const ScanGeometry& scan, double spacing = kSampleSpacing,
                                            const Progress& progress = {});
inline constexpr std::size_t kMostSamples = 10'000'000;

/// Deterministic: the same samples in the same order give the same patches. `samples` in metres.
ScanPatches flatPatches(const std::vector<Eigen::Vector3f>& samples, const Progress& progress = {});

/// A plane fitted to points: normal . p = offset.
struct FittedPlane {
  Vec3 normal = Vec3::UnitZ();
  double offset = 0;
  double area = 0;  ///< of the patches that take part, square metres
  double rms = 0;   ///< of their centres, weighted

  double distance(const Vec3& p) const { return normal.dot(p) - offset; }
};

/// Where up is and how high the floor lies.
struct ScanLevel {
  Mat3 levelFromScan = Mat3::Identity();  ///< turns the scan so that its floor is level
  double floor = 0;                       ///< height of the floor in the turned scan
};

/// Finds the floor as the lowest large level surface within kMostTilt of the given up axis, z, that lies
/// under a ceiling (scan_roof.h), and turns the scan so that it lies level. Refused with a sentence: no
/// floor.
Result<ScanLevel> levelOf(const ScanPatches& patches);
inline constexpr double kMostTilt = 0.21;  ///< radians, 12 degrees

}  // namespace baywright
