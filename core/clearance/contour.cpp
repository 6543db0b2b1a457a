// SPDX-License-Identifier: Apache-2.0
#include "clearance/contour.h"

#include <array>
#include <map>

namespace baywright {
namespace {

/// A side of a cell that the line crosses: from a node to the next one right (0) or up (1).
struct Side {
  int column, row, up;
  auto operator<=>(const Side&) const = default;
};

Vec2 crossing(const GridField& field, const Side& side) {
  const int column = side.column + (side.up ? 0 : 1);
  const int row = side.row + (side.up ? 1 : 0);
  const double from = field.at(side.column, side.row);
  const double to = field.at(column, row);
  const Vec2 a = field.node(side.column, side.row);
  return a + from / (from - to) * (field.node(column, row) - a);
}

/// Adds the one or two pieces of line in a cell as side -> next side, with what is positive on their left.
void addCell(std::map<Side, Side>& next, const GridField& field, int column, int row) {
  const std::array<Side, 4> sides = {Side{column, row, 0}, Side{column + 1, row, 1}, Side{column, row + 1, 0},
                                     Side{column, row, 1}};  // below, right, above, left
  const std::array<double, 4> corners = {field.at(column, row), field.at(column + 1, row),
                                         field.at(column + 1, row + 1), field.at(column, row + 1)};
  std::array<bool, 4> in{};
  int count = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    in[i] = corners[i] >= 0;
    count += in[i] ? 1 : 0;
  }
  if (count == 0 || count == 4) return;
  // With the inside on its left the line comes in through a side on which corners, counter-clockwise, turn
  // from inside to outside, and leaves through one on which they turn back.
  std::vector<std::size_t> entering;
  std::vector<std::size_t> leaving;
  for (std::size_t i = 0; i < 4; ++i) {
    const bool now = in[i];
    const bool then = in[(i + 1) % 4];
    if (now && !then) entering.push_back(i);
    if (!now && then) leaving.push_back(i);
  }
  if (entering.size() == 1) {
    next[sides[entering[0]]] = sides[leaving[0]];
    return;
  }
  const bool middleIn = corners[0] + corners[1] + corners[2] + corners[3] >= 0;
  for (const std::size_t from : entering) {
    // Each piece cuts off one corner: an inside corner when the middle is outside, else an outside one.
    const std::size_t to = middleIn ? (from + 1) % 4 : (from + 3) % 4;
    next[sides[from]] = sides[to];
  }
}

}  // namespace

std::vector<Ring> zeroContours(const GridField& field) {
  std::map<Side, Side> next;
  for (int row = 0; row + 1 < field.rows; ++row) {
    for (int column = 0; column + 1 < field.columns; ++column) addCell(next, field, column, row);
  }
  std::vector<Ring> rings;
  while (!next.empty()) {
    const Side first = next.begin()->first;
    Ring ring;
    Side side = first;
    for (auto found = next.find(side); found != next.end(); found = next.find(side)) {
      ring.push_back(crossing(field, side));
      side = found->second;
      next.erase(found);
    }
    if (side == first && ring.size() >= 3) rings.push_back(std::move(ring));
  }
  return rings;
}

}  // namespace baywright
