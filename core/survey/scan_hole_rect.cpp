// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_hole_rect.h"

namespace baywright::detail {

// By the heights of the free columns under each row.
HoleRect largestRect(const WallGrid& grid, const std::vector<bool>& taken) {
  HoleRect best;
  std::vector<int> heights(static_cast<std::size_t>(grid.columns) + 1, 0);
  for (int row = 0; row < grid.rows; ++row) {
    for (int column = 0; column < grid.columns; ++column) {
      const std::size_t at = grid.at(column, row);
      int& height = heights[static_cast<std::size_t>(column)];
      height = grid.isWall[at] || taken[at] ? 0 : height + 1;
    }
    std::vector<int> open;  // columns whose heights rise
    for (int column = 0; column <= grid.columns; ++column) {
      const int height = heights[static_cast<std::size_t>(column)];
      while (!open.empty() && heights[static_cast<std::size_t>(open.back())] >= height) {
        const int tall = heights[static_cast<std::size_t>(open.back())];
        open.pop_back();
        const int left = open.empty() ? 0 : open.back() + 1;
        const HoleRect rect{left, column, row + 1 - tall, row + 1};
        if (rect.area() > best.area()) best = rect;
      }
      open.push_back(column);
    }
  }
  return best;
}

HoleRect grown(const WallGrid& grid, const std::vector<bool>& taken, HoleRect rect) {
  constexpr double kMostlyFree = 0.75;
  const auto isFree = [&](int left, int right, int bottom, int top) {
    if (left < 0 || bottom < 0 || right > grid.columns || top > grid.rows) return false;
    double count = 0;
    for (int column = left; column < right; ++column)
      for (int row = bottom; row < top; ++row)
        count += grid.isWall[grid.at(column, row)] || taken[grid.at(column, row)] ? 0 : 1;
    return count >= kMostlyFree * (right - left) * (top - bottom);
  };
  for (bool changed = true; changed;) {
    changed = false;
    const auto grow = [&](bool can, int& edge, int step) {
      if (!can) return;
      edge += step;
      changed = true;
    };
    grow(isFree(rect.left - 1, rect.left, rect.bottom, rect.top), rect.left, -1);
    grow(isFree(rect.right, rect.right + 1, rect.bottom, rect.top), rect.right, 1);
    grow(isFree(rect.left, rect.right, rect.bottom - 1, rect.bottom), rect.bottom, -1);
    grow(isFree(rect.left, rect.right, rect.top, rect.top + 1), rect.top, 1);
  }
  return rect;
}

HoleEdges edgesOf(const WallGrid& grid, const HoleRect& rect) {
  constexpr int kBeside = 2;  // squares: edges run through squares that hold a few points
  const auto isWall = [&](int column, int row) {
    return column >= 0 && row >= 0 && column < grid.columns && row < grid.rows &&
           grid.isWall[grid.at(column, row)];
  };
  const auto share = [&](int from, int to, auto&& beside) {
    double count = 0;
    for (int i = from; i < to; ++i) count += beside(i) ? 1 : 0;
    return to > from ? count / (to - from) : 0;
  };
  const auto near = [&](auto&& at) {
    for (int step = 0; step < kBeside; ++step)
      if (at(step)) return true;
    return false;
  };
  return {share(rect.bottom, rect.top,
                [&](int row) { return near([&](int s) { return isWall(rect.left - 1 - s, row); }); }),
          share(rect.bottom, rect.top,
                [&](int row) { return near([&](int s) { return isWall(rect.right + s, row); }); }),
          share(rect.left, rect.right,
                [&](int column) { return near([&](int s) { return isWall(column, rect.bottom - 1 - s); }); }),
          share(rect.left, rect.right, [&](int column) {
            return near(
                [&](int s) { return rect.top + s <= grid.lastRow(column) && isWall(column, rect.top + s); });
          })};
}

}  // namespace baywright::detail
