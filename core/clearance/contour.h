// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "geometry/polygon.h"

namespace baywright {

/// Values at the nodes of a square grid, row by row from `low`; `columns` and `rows` count nodes.
struct GridField {
  Vec2 low = Vec2::Zero();
  double cell = 0.05;
  int columns = 0;
  int rows = 0;
  std::vector<double> values;

  double at(int column, int row) const { return values[static_cast<std::size_t>(row * columns + column)]; }
  Vec2 node(int column, int row) const { return low + cell * Vec2(column, row); }
};

/// Closed lines where the field passes through zero, what is positive on their left: outer ones
/// counter-clockwise, round holes clockwise. Marching squares with linear interpolation along the sides of
/// cells; where a cell's corners alternate, its middle is their mean. Zero counts as positive. The field must
/// be negative all along its border, else lines that reach it are left out. In the order of their lowest,
/// leftmost cell.
std::vector<Ring> zeroContours(const GridField& field);

}  // namespace baywright
