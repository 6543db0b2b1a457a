// SPDX-License-Identifier: Apache-2.0
#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <map>

#include "survey/scan_planes.h"
#include "survey/scan_robust.h"
#include "survey/scan_roof.h"

namespace baywright {
namespace {

constexpr double kHeightBin = 0.05;
constexpr double kFloorShare =
    0.15;                            ///< of the largest level surface: a floor full of things shows that much
constexpr double kLeastFloor = 1.0;  ///< square metres

double areaOf(const ScanPatch& patch) {
  return patch.size * patch.size;
}

/// The direction near `start` that most level patches agree on.
Vec3 commonNormal(const std::vector<ScanPatch>& patches, Vec3 start) {
  for (const double reach : {kMostTilt, 0.5 * kMostTilt, 0.5 * kMostTilt}) {
    Vec3 sum = Vec3::Zero();
    for (const ScanPatch& patch : patches) {
      const double along = patch.normal.dot(start);
      const double angle = std::acos(std::min(1.0, std::abs(along)));
      sum += areaOf(patch) * biweight(angle, reach) * (along < 0 ? -1 : 1) * patch.normal;
    }
    if (sum.norm() > 0) start = sum.normalized();
  }
  return start;
}

/// The height, along `up`, of the lowest surface that is large enough for a floor.
std::optional<double> floorHeight(const std::vector<ScanPatch>& patches, const Vec3& up) {
  std::map<long, double> bins;
  for (const ScanPatch& patch : patches) {
    if (std::abs(patch.normal.dot(up)) < std::cos(kMostTilt)) continue;
    bins[std::lround(std::floor(patch.centre.dot(up) / kHeightBin))] += areaOf(patch);
  }
  // A tilt that is left spreads a floor over some bins.
  const auto around = [&](long bin) {
    double sum = 0;
    for (long b = bin - 2; b <= bin + 2; ++b)
      if (const auto found = bins.find(b); found != bins.end()) sum += found->second;
    return sum;
  };
  double largest = 0;
  for (const auto& [bin, area] : bins) largest = std::max(largest, around(bin));
  for (const auto& [bin, area] : bins) {
    if (around(bin) < std::max(kLeastFloor, kFloorShare * largest)) continue;
    // The first bin that reaches the share may be the shoulder of the peak.
    long best = bin;
    for (long b = bin; b <= bin + 4; ++b)
      if (around(b) > around(best)) best = b;
    return (static_cast<double>(best) + 0.5) * kHeightBin;
  }
  return std::nullopt;
}

/// Plane through the level patches near a height, z-like along `up`, by reweighted least squares.
std::optional<FittedPlane> fitLevel(const std::vector<ScanPatch>& patches, const Vec3& up, double height) {
  FittedPlane plane{up, height, 0, 0};
  for (const double reach : {0.35, 0.20, 0.12, 0.08, 0.06, 0.06}) {
    Vec3 mean = Vec3::Zero();
    double weights = 0;
    double squares = 0;
    std::vector<std::pair<double, Vec3>> used;
    for (const ScanPatch& patch : patches) {
      if (std::abs(patch.normal.dot(plane.normal)) < std::cos(kMostTilt)) continue;
      const double distance = plane.distance(patch.centre);
      const double weight = areaOf(patch) * biweight(distance, reach);
      if (weight <= 0) continue;
      used.emplace_back(weight, patch.centre);
      mean += weight * patch.centre;
      weights += weight;
      squares += weight * distance * distance;
    }
    if (weights < kLeastFloor / 2) return std::nullopt;
    mean /= weights;
    Mat3 scatter = Mat3::Zero();
    for (const auto& [weight, p] : used) scatter += weight * (p - mean) * (p - mean).transpose();
    const Eigen::SelfAdjointEigenSolver<Mat3> solver(scatter);
    Vec3 normal = solver.eigenvectors().col(0);
    if (normal.dot(up) < 0) normal = -normal;
    // A surface that is long and narrow does not say how it leans across.
    if (std::sqrt(solver.eigenvalues()[1] / weights) > 0.3 && normal.dot(up) > std::cos(kMostTilt))
      plane.normal = normal;
    plane.offset = plane.normal.dot(mean);
    plane.area = weights;
    plane.rms = std::sqrt(squares / weights);
  }
  return plane;
}

Mat3 turning(const Vec3& up) {
  return Eigen::Quaterniond::FromTwoVectors(up, Vec3::UnitZ()).toRotationMatrix();
}

/// Those that could be of a room's floor: a yard has no ceiling over it.
std::vector<ScanPatch> indoors(const std::vector<ScanPatch>& patches, const Vec3& up) {
  const Mat3 level = turning(up);
  const RoofMap roof(patches, level);
  std::vector<ScanPatch> kept;
  for (const ScanPatch& patch : patches)
    if (roof.isIndoors(level * patch.centre)) kept.push_back(patch);
  return kept;
}

}  // namespace

Result<ScanLevel> levelOf(const ScanPatches& scan) {
  const char* next = "Is the up axis right? If so, scan the floor too.";
  const Vec3 rough = commonNormal(scan.patches, Vec3::UnitZ());
  const auto patches = indoors(scan.patches, rough);
  const auto height = floorHeight(patches, rough);
  if (!height) return fail("The scan has no level surface that could be the floor.", {}, next);
  const auto floor = fitLevel(patches, rough, *height);
  if (!floor) return fail("The scan has no flat surface that could be the floor.", {}, next);

  ScanLevel level;
  const Vec3 up = floor->normal;
  level.levelFromScan = turning(up);
  level.floor = floor->offset;
  return level;
}

}  // namespace baywright
