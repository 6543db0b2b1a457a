// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_roof.h"

#include <algorithm>

namespace baywright {
namespace {

constexpr double kLying = 0.5;   ///< z of a normal: ceilings up to 60 degrees
constexpr double kLevel = 0.95;  ///< of a floor's

CubeMap::Cube cellAt(const Vec3& p) {
  CubeMap::Cube cell = cubeAt(p.cast<float>(), RoofMap::kCell);
  cell.z() = 0;
  return cell;
}

}  // namespace

RoofMap::RoofMap(const std::vector<ScanPatch>& patches, const Mat3& level) {
  const Vec3 up = level.row(2);
  for (const ScanPatch& patch : patches) {
    if (std::abs(patch.normal.dot(up)) < kLying) continue;
    const Vec3 centre = level * patch.centre;
    // Large patches stand for as many cells as they cover.
    const int reach = static_cast<int>(std::lround(patch.size / kCell)) / 2;
    for (int dx = -reach; dx <= reach; ++dx)
      for (int dy = -reach; dy <= reach; ++dy) {
        const std::uint32_t cell = cells_.indexOf(cellAt(centre) + CubeMap::Cube(dx, dy, 0));
        if (cell == highest_.size()) highest_.push_back(centre.z());
        highest_[cell] = std::max(highest_[cell], centre.z());
      }
  }
  double covered = 0;
  for (const ScanPatch& patch : patches)
    if (std::abs(patch.normal.dot(up)) > kLevel && covers(level * patch.centre))
      covered += patch.size * patch.size;
  says_ = covered >= kEnoughCovered;
}

double RoofMap::highestNear(const Vec3& p, int cells) const {
  double highest = -std::numeric_limits<double>::infinity();
  const CubeMap::Cube at = cellAt(p);
  for (int dx = -cells; dx <= cells; ++dx)
    for (int dy = -cells; dy <= cells; ++dy)
      if (const auto cell = cells_.existing(at + CubeMap::Cube(dx, dy, 0)))
        highest = std::max(highest, highest_[*cell]);
  return highest;
}

}  // namespace baywright
