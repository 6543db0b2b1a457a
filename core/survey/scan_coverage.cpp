// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_coverage.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace baywright {
namespace {

constexpr double kLying = 0.7;        ///< z of a normal: floors, ceilings up to 45 degrees, table tops
constexpr double kFarthest = 40;      ///< metres: what lies farther is no part of one room
constexpr double kReachShare = 0.35;  ///< of the patch's cube

bool isLying(const ScanPatch& patch) {
  return std::abs(patch.normal.z()) > kLying && flat(patch.centre).norm() < kFarthest;
}

/// High enough for no furniture to have its top there.
bool isCeiling(const LevelScan& scan, const ScanPatch& patch) {
  constexpr double kShareOfHeight = 0.9;
  constexpr double kLowest = 1.9;  // metres
  constexpr int kCells = 2;        // half a metre round it
  return patch.centre.z() > kLowest &&
         patch.centre.z() > kShareOfHeight * scan.roof.topAt(flat(patch.centre), scan.ceiling, kCells);
}

void frame(const LevelScan& scan, PlanCoverage& coverage) {
  bool isFirst = true;
  for (const ScanPatch& patch : scan.flat.patches) {
    if (!isLying(patch)) continue;
    const Vec2 p = flat(patch.centre);
    const Vec2 half = Vec2::Constant(patch.size);
    coverage.low = isFirst ? Vec2(p - half) : Vec2(coverage.low.cwiseMin(p - half));
    coverage.high = isFirst ? Vec2(p + half) : Vec2(coverage.high.cwiseMax(p + half));
    isFirst = false;
  }
  coverage.columns = static_cast<int>((coverage.high.x() - coverage.low.x()) / kCoverCell) + 1;
  coverage.rows = static_cast<int>((coverage.high.y() - coverage.low.y()) / kCoverCell) + 1;
  coverage.seen.assign(static_cast<std::size_t>(coverage.columns) * static_cast<std::size_t>(coverage.rows),
                       0);
}

}  // namespace

double PlanCoverage::at(const Vec2& p) const {
  const double x = std::floor((p.x() - low.x()) / kCoverCell);
  const double y = std::floor((p.y() - low.y()) / kCoverCell);
  if (x < 0 || y < 0 || x >= columns || y >= rows) return 0;
  return seen[static_cast<std::size_t>(y) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(x)];
}

PlanCoverage coverageOf(const LevelScan& scan, const Progress& progress) {
  PlanCoverage coverage;
  frame(scan, coverage);
  std::vector<double> worths;
  for (const ScanPatch& patch : scan.flat.patches)
    worths.push_back(isLying(patch) && isCeiling(scan, patch) ? kCeilingSays : 1);
  for (std::size_t i = 0; i < scan.samples.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) return coverage;
    const std::uint32_t index = scan.flat.patchOf[i];
    if (index == kNoPatch || !isLying(scan.flat.patches[index])) continue;
    const double reach = kReachShare * scan.flat.patches[index].size;
    const double worth = worths[index];
    const Vec2 p(scan.samples[i].x(), scan.samples[i].y());
    const auto cell = [&](double place, double low, int most) {
      return std::clamp(static_cast<int>(std::floor((place - low) / kCoverCell)), 0, most - 1);
    };
    const int x0 = cell(p.x() - reach, coverage.low.x(), coverage.columns);
    const int x1 = cell(p.x() + reach, coverage.low.x(), coverage.columns);
    const int y0 = cell(p.y() - reach, coverage.low.y(), coverage.rows);
    const int y1 = cell(p.y() + reach, coverage.low.y(), coverage.rows);
    for (int y = y0; y <= y1; ++y)
      for (int x = x0; x <= x1; ++x) {
        double& seen =
            coverage.seen[static_cast<std::size_t>(y) * static_cast<std::size_t>(coverage.columns) +
                          static_cast<std::size_t>(x)];
        seen = std::max(seen, worth);
      }
  }
  for (int y = 0; y < coverage.rows; ++y)
    for (int x = 0; x < coverage.columns; ++x) {
      double& seen = coverage.seen[static_cast<std::size_t>(y) * static_cast<std::size_t>(coverage.columns) +
                                   static_cast<std::size_t>(x)];
      const Vec2 p = coverage.low + kCoverCell * Vec2(x + 0.5, y + 0.5);
      if (seen > 0 && !scan.roof.isNear(p, 0)) seen = kBareFloor;
    }
  return coverage;
}

std::vector<SeenFloor> seenShares(const PlanCoverage& coverage, const PlanFaces& plan,
                                  std::span<const ScanLine> lines) {
  std::map<std::uint64_t, std::size_t> faceOf;
  for (std::size_t f = 0; f < plan.faces.size(); ++f) faceOf[plan.faces[f].sides] = f;
  std::vector<double> all(plan.faces.size());
  std::vector<SeenFloor> seen(plan.faces.size(), {0, 0});
  auto last = faceOf.end();
  for (int y = 0; y < coverage.rows; ++y)
    for (int x = 0; x < coverage.columns; ++x) {
      const Vec2 p = coverage.low + kCoverCell * Vec2(x + 0.5, y + 0.5);
      const std::uint64_t sides = sidesOf(lines, p);
      if (last == faceOf.end() || last->first != sides) last = faceOf.find(sides);
      if (last == faceOf.end()) continue;
      const double worth = coverage.at(p);
      all[last->second] += 1;
      seen[last->second].share += std::min(worth, 1.0);
      seen[last->second].worth += worth;
    }
  for (std::size_t f = 0; f < all.size(); ++f) {
    constexpr double kFewest = 4;
    const bool isOutside = all[f] == 0 && plan.faces[f].area > 16 * kCoverCell * kCoverCell;
    if (isOutside)
      seen[f] = {0, 0};
    else if (all[f] < kFewest)
      seen[f] = {};
    else
      seen[f] = {seen[f].share / all[f], seen[f].worth / all[f]};
  }
  return seen;
}

}  // namespace baywright
