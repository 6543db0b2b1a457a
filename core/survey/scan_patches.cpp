// SPDX-License-Identifier: Apache-2.0
#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

#include "geometry/surface_samples.h"
#include "survey/scan_cube_map.h"
#include "survey/scan_planes.h"

namespace baywright {
namespace {

constexpr std::size_t kFewestPoints = 8;  ///< fewer have a normal by chance
constexpr double kThickest = 0.035;       ///< metres; 20 mm of noise and a little bow
constexpr double kThickerThanUsual =
    1.3;  ///< times the median: what is more lies across an edge of two surfaces
constexpr double kThicknessSlack = 0.004;   ///< and so much more, for surfaces that are not quite flat
constexpr double kThicknessToSpread = 0.5;  ///< a corner of two walls has more
constexpr double kLeastSpread = 0.12;       ///< of the cube's edge: a line of points has no normal

/// First and second moments about a fixed place near the points.
struct Moments {
  Vec3 about = Vec3::Zero();
  Vec3 sum = Vec3::Zero();
  Mat3 squares = Mat3::Zero();
  std::size_t count = 0;

  void add(const Vec3& p) {
    const Vec3 d = p - about;
    sum += d;
    squares.noalias() += d * d.transpose();
    ++count;
  }
};

std::optional<ScanPatch> patchFrom(const Moments& m, double size) {
  if (m.count < kFewestPoints) return std::nullopt;
  const auto n = static_cast<double>(m.count);
  const Vec3 mean = m.sum / n;
  const Eigen::SelfAdjointEigenSolver<Mat3> solver(m.squares / n - mean * mean.transpose());
  const Vec3 spreads = solver.eigenvalues().cwiseMax(0).cwiseSqrt();
  if (spreads[0] > kThickest || spreads[0] > kThicknessToSpread * spreads[1]) return std::nullopt;
  if (spreads[1] < kLeastSpread * size) return std::nullopt;
  return ScanPatch{m.about + mean, solver.eigenvectors().col(0), size, spreads[0], m.count};
}

double usualThickness(const std::vector<std::optional<ScanPatch>>& candidates) {
  std::vector<double> thicknesses;
  for (const auto& patch : candidates)
    if (patch) thicknesses.push_back(patch->thickness);
  if (thicknesses.empty()) return kThickest;
  const auto middle = thicknesses.begin() + static_cast<std::ptrdiff_t>(thicknesses.size() / 2);
  std::nth_element(thicknesses.begin(), middle, thicknesses.end());
  return kThickerThanUsual * *middle + kThicknessSlack;
}

/// One size of cubes over the samples that have no patch yet.
void addScale(const std::vector<Eigen::Vector3f>& samples, double size, double& thickest, ScanPatches& found,
              const Progress& progress) {
  CubeMap cubes;
  std::vector<Moments> moments;
  std::vector<std::uint32_t> cubeOf(samples.size(), kNoPatch);
  for (std::size_t i = 0; i < samples.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) return;
    if (found.patchOf[i] != kNoPatch) continue;
    const std::uint32_t cube = cubes.indexOf(cubeAt(samples[i], size));
    if (cube == moments.size()) {
      moments.emplace_back();
      moments.back().about = samples[i].cast<double>();
    }
    moments[cube].add(samples[i].cast<double>());
    cubeOf[i] = cube;
  }
  std::vector<std::optional<ScanPatch>> candidates;
  for (const Moments& m : moments) candidates.push_back(patchFrom(m, size));
  if (found.patches.empty()) thickest = usualThickness(candidates);
  std::vector<std::uint32_t> patchOfCube(moments.size(), kNoPatch);
  for (std::size_t cube = 0; cube < moments.size(); ++cube) {
    const auto& patch = candidates[cube];
    if (!patch || patch->thickness > thickest) continue;
    patchOfCube[cube] = static_cast<std::uint32_t>(found.patches.size());
    found.patches.push_back(*patch);
  }
  for (std::size_t i = 0; i < samples.size(); ++i)
    if (cubeOf[i] != kNoPatch) found.patchOf[i] = patchOfCube[cubeOf[i]];
}

int piecesOf(const ScanGeometry& scan, const TriangleMesh::Corners& corners, double spacing) {
  return piecesAlong(scan.points[corners[0]], scan.points[corners[1]], scan.points[corners[2]], spacing);
}

}  // namespace

std::vector<Eigen::Vector3f> surfaceSamples(const ScanGeometry& scan, double spacing,
                                            const Progress& progress) {
  if (!scan.isMesh()) return scan.points;
  const auto total = [&] {
    double count = 0;
    for (const auto& corners : scan.triangles) count += std::pow(piecesOf(scan, corners, spacing), 2);
    return count;
  };
  const double most = std::max<double>(kMostSamples, static_cast<double>(scan.triangles.size()));
  while (total() > most) spacing *= 2;
  std::vector<Eigen::Vector3f> samples;
  samples.reserve(scan.triangles.size());
  for (std::size_t i = 0; i < scan.triangles.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) break;
    const auto& corners = scan.triangles[i];
    sampleTriangle(scan.points[corners[0]], scan.points[corners[1]], scan.points[corners[2]],
                   piecesOf(scan, corners, spacing), [&](const Eigen::Vector3f& p) { samples.push_back(p); });
  }
  return samples;
}

ScanPatches flatPatches(const std::vector<Eigen::Vector3f>& samples, const Progress& progress) {
  ScanPatches found;
  found.patchOf.assign(samples.size(), kNoPatch);
  double size = kPatchSize;
  double thickest = kThickest;
  for (int scale = 0; scale < kPatchScales; ++scale, size *= 2)
    addScale(samples, size, thickest, found, progress);
  return found;
}

}  // namespace baywright
