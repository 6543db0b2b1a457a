// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_wall_grid.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baywright {
namespace {

constexpr double kLeastNear = 0.03;  ///< metres
constexpr double kNoises = 3.5;      ///< times a wall's scatter
constexpr double kAtEnds = 0.08;     ///< metres from floor and ceiling that are theirs
constexpr double kStandsUpTo = 2.0;  ///< metres: what is higher may hang, as a garage's open door does
constexpr int kWidestGap = 3;        ///< squares: what a sparse scan leaves between its lines
constexpr double kFewHits = 0.10;    ///< of the usual number that still make a square wall

/// Height of the lowest ceiling over a place just before a wall.
double lowestAt(const std::vector<CeilingPlane>& ceiling, const Vec2& p, double otherwise) {
  double lowest = std::numeric_limits<double>::infinity();
  for (const CeilingPlane& plane : ceiling)
    if (plane.covers(p)) lowest = std::min(lowest, plane.at(p));
  return std::isfinite(lowest) ? lowest : otherwise;
}

/// Sorts one sample into the grids of the walls that it says something about.
class Sorter {
 public:
  Sorter(const ScanOutline& outline, std::vector<WallGrid>& grids) : outline_(outline), grids_(grids) {}

  void sort(const Eigen::Vector3f& sample) {
    const Vec3 p = sample.cast<double>();
    const Vec2 place = flat(p);
    if (p.z() < -0.5) return;
    on_.clear();
    for (std::size_t i = 0; i < grids_.size(); ++i) {
      const double along = outline_.sides[i].along().dot(place - outline_.corners[i]) * -1;
      const double inward = outline_.sides[i].distance(place);
      if (along > 0 && along < grids_[i].length && std::abs(inward) <= grids_[i].near) on_.push_back(i);
    }
    const bool isAtEnds = p.z() < kAtEnds;
    for (std::size_t i = 0; i < grids_.size(); ++i) {
      WallGrid& grid = grids_[i];
      const ScanLine& side = outline_.sides[i];
      const double along = -side.along().dot(place - outline_.corners[i]);
      if (along <= 0 || along >= grid.length) continue;
      const double top = grid.topAt(along);
      if (p.z() >= top) continue;
      const double inward = side.distance(place);
      const WallPoint point{static_cast<float>(along), static_cast<float>(p.z()), static_cast<float>(inward)};
      if (std::abs(inward) <= grid.near) {
        if (p.z() >= 0) {
          grid.wall.push_back(point);
          ++grid.hits[squareOf(grid, point)];
        }
      } else if (!on_.empty()) {
        continue;  // another wall's
      } else if (inward < 0 && inward > -kFarBeyond) {
        if (locate(outline_.corners, place) == Location::Outside) grid.beyond.push_back(point);
      } else if (inward > 0 && inward < kFarBefore && !isAtEnds && p.z() < top - kAtEnds) {
        grid.before.push_back(point);
        if (inward < kCloseBefore) ++grid.hidden[squareOf(grid, point)];
      }
    }
  }

 private:
  static std::size_t squareOf(const WallGrid& grid, const WallPoint& p) {
    const int column = std::min(grid.columns - 1, static_cast<int>(p.along / kWallCell));
    const int row = std::min(grid.rows - 1, static_cast<int>(p.height / kWallCell));
    return grid.at(column, row);
  }

  const ScanOutline& outline_;
  std::vector<WallGrid>& grids_;
  std::vector<std::size_t> on_;
};

/// Squares with enough points, and those between two such squares in a row or a column.
void closeGaps(WallGrid& grid) {
  std::vector<int> counts;
  for (const int hits : grid.hits)
    if (hits > 0) counts.push_back(hits);
  if (counts.empty()) return;
  const auto middle = counts.begin() + static_cast<std::ptrdiff_t>(counts.size() / 2);
  std::nth_element(counts.begin(), middle, counts.end());
  const double enough = kFewHits * *middle;
  std::vector<bool> hit(grid.hits.size());
  for (std::size_t i = 0; i < hit.size(); ++i) hit[i] = grid.hits[i] > 0 && grid.hits[i] >= enough;
  for (int column = 0; column < grid.columns; ++column)
    for (int row = grid.lastRow(column) + 1; row < grid.rows; ++row) hit[grid.at(column, row)] = true;
  grid.isWall = hit;
  const auto close = [&](int count, auto&& squareAt) {
    int last = -1;
    for (int i = 0; i < count; ++i) {
      if (!hit[squareAt(i)]) continue;
      if (i - last - 1 <= kWidestGap)
        for (int k = last + 1; k < i; ++k) grid.isWall[squareAt(k)] = true;
      last = i;
    }
    if (count - last - 1 <= kWidestGap)
      for (int k = last + 1; k < count; ++k) grid.isWall[squareAt(k)] = true;
  };
  // Only across gaps that are narrow both ways may noise be closed; a hole's own edge stays where it is.
  for (int row = 0; row < grid.rows; ++row)
    close(grid.columns, [&](int column) { return grid.at(column, row); });
  for (int column = 0; column < grid.columns; ++column)
    close(grid.rows, [&](int row) { return grid.at(column, row); });
}

/// What stands before a wall stands on the floor, seldom hangs: it hides what is below its top as well.
void shadeBelow(WallGrid& grid) {
  const int highest = std::min(grid.rows, static_cast<int>(kStandsUpTo / kWallCell));
  for (int column = 0; column < grid.columns; ++column) {
    bool isShaded = false;
    for (int row = highest - 1; row >= 0; --row) {
      int& hidden = grid.hidden[grid.at(column, row)];
      isShaded |= hidden > 0;
      hidden = isShaded ? std::max(hidden, 1) : hidden;
    }
  }
}

}  // namespace

std::vector<WallGrid> wallGrids(const LevelScan& scan, const ScanOutline& outline,
                                const std::vector<CeilingPlane>& ceiling, const Progress& progress) {
  std::vector<WallGrid> grids(outline.sides.size());
  for (std::size_t i = 0; i < grids.size(); ++i) {
    WallGrid& grid = grids[i];
    const Vec2& a = outline.corners[i];
    const Vec2& b = outline.corners[(i + 1) % outline.corners.size()];
    grid.length = (b - a).norm();
    grid.near = std::max(kLeastNear, kNoises * outline.sides[i].rms);
    grid.columns = std::max(1, static_cast<int>(std::ceil(grid.length / kWallCell)));
    double highest = 0;
    for (int column = 0; column < grid.columns; ++column) {
      constexpr double kBefore = 0.05;  // metres
      const double along = std::min((column + 0.5) * kWallCell, grid.length);
      const Vec2 place = a + along / grid.length * (b - a) + kBefore * outline.sides[i].normal;
      grid.tops.push_back(std::max(0.0, lowestAt(ceiling, place, scan.ceiling)));
      highest = std::max(highest, grid.tops.back());
    }
    grid.rows = std::max(1, static_cast<int>(std::ceil(highest / kWallCell)));
    const auto squares = static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows);
    grid.hits.assign(squares, 0);
    grid.hidden.assign(squares, 0);
    grid.isWall.assign(squares, false);
  }
  Sorter sorter(outline, grids);
  for (std::size_t i = 0; i < scan.samples.size(); ++i) {
    if (i % kSamplesBetweenLooks == 0 && progress.stop()) return grids;
    sorter.sort(scan.samples[i]);
  }
  for (WallGrid& grid : grids) {
    closeGaps(grid);
    shadeBelow(grid);
  }
  return grids;
}

}  // namespace baywright
