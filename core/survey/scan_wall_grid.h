// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <vector>

#include "base/progress.h"
#include "survey/scan_ceiling.h"
#include "survey/scan_outline.h"

namespace baywright {

/// A point on a wall: along it from its start, height, and into the room (negative: beyond the wall).
struct WallPoint {
  float along = 0;
  float height = 0;
  float inward = 0;
};

inline constexpr double kWallCell = 0.05;  ///< metres

/// What was seen of one wall, before it and beyond it, also in squares of kWallCell: row 0 stands on the
/// floor, column 0 at the wall's start.
struct WallGrid {
  double length = 0;
  std::vector<double> tops;  ///< height of the ceiling over each column
  int columns = 0;
  int rows = 0;
  double near = 0;  ///< half the thickness that the wall's own points take, metres
  std::vector<WallPoint> wall;
  std::vector<WallPoint> beyond;  ///< up to kFarBeyond
  std::vector<WallPoint> before;  ///< things in the room, up to kFarBefore
  std::vector<int> hits;          ///< of the wall, a square
  std::vector<int> hidden;        ///< things that stand close before it, a square
  std::vector<bool> isWall;       ///< a square, small gaps closed

  /// Height of the ceiling at a place along it, 0..length.
  double topAt(double along) const {
    const int column = std::clamp(static_cast<int>(along / kWallCell), 0, columns - 1);
    return tops[static_cast<std::size_t>(column)];
  }
  /// The row that the ceiling cuts over a column; what is above counts as wall.
  int lastRow(int column) const {
    return static_cast<int>(tops[static_cast<std::size_t>(column)] / kWallCell);
  }
  std::size_t at(int column, int row) const {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
           static_cast<std::size_t>(column);
  }
};
inline constexpr double kFarBeyond = 12;     ///< metres
inline constexpr double kNearBeyond = 0.60;  ///< metres: reveals and leaves
inline constexpr double kFarBefore = 4;      ///< metres
inline constexpr double kCloseBefore = 1.2;  ///< metres: what stands against a wall

/// One a side of the outline.
std::vector<WallGrid> wallGrids(const LevelScan& scan, const ScanOutline& outline,
                                const std::vector<CeilingPlane>& ceiling, const Progress& progress = {});

}  // namespace baywright
