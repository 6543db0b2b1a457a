// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_openings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <optional>

namespace baywright {
namespace {

constexpr double kLeastWidth = 0.35;   ///< metres of a window
constexpr double kLeastHeight = 0.30;  ///< metres of a window
constexpr double kLeastDoor = 0.50;    ///< metres wide
constexpr double kLowestDoor = 1.70;   ///< metres high
constexpr double kThreshold = 0.15;    ///< metres over the floor that a hole may start at and still reach it
constexpr double kWideDoor = 1.20;     ///< metres; wider ones have no single leaf
constexpr double kSectional = 2.10;    ///< metres; from here on a garage's (common practice, no source)
constexpr double kHidden = 0.20;       ///< share of a hole that things may stand before
constexpr double kHiddenThrough = 0.40;  ///< likewise where something was seen beyond: a car before its door
constexpr double kEdge = 0.60;           ///< share of an edge beside which wall must be seen
constexpr double kClearEdge = 0.80;      ///< likewise where nothing was seen beyond
constexpr std::size_t kFewestBeyond = 40;  ///< points that are seen through a hole
constexpr double kThroughShare = 0.06;     ///< of its squares that those lie in
constexpr double kSureNear = 0.055;        ///< metres: where walls scatter more, reveals and walls are one
constexpr int kMostInWall = 12;
constexpr double kNotedHidden = 1.5;  ///< square metres of wall

struct Rect {
  int left = 0, right = 0, bottom = 0, top = 0;  ///< squares; right and top are beyond the last

  int width() const { return right - left; }
  int height() const { return top - bottom; }
  int area() const { return width() * height(); }
};

/// The largest rectangle of free squares, by the heights of the free columns under each row.
Rect largestRect(const WallGrid& grid, const std::vector<bool>& taken) {
  Rect best;
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
        const Rect rect{left, column, row + 1 - tall, row + 1};
        if (rect.area() > best.area()) best = rect;
      }
      open.push_back(column);
    }
  }
  return best;
}

/// Grown over rows and columns that are mostly free: one stray square may not cost a hole its edge.
Rect grown(const WallGrid& grid, const std::vector<bool>& taken, Rect rect) {
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

template <class Test>
double shareOf(const Rect& rect, Test test) {
  double count = 0;
  for (int column = rect.left; column < rect.right; ++column)
    for (int row = rect.bottom; row < rect.top; ++row) count += test(column, row) ? 1 : 0;
  return rect.area() > 0 ? count / rect.area() : 0;
}

/// How much of what lies just beside the rectangle is wall; an edge outside of the wall has none.
struct Edges {
  double left = 0, right = 0, bottom = 0, top = 0;
};

Edges edgesOf(const WallGrid& grid, const Rect& rect) {
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
          share(rect.left, rect.right,
                [&](int column) { return near([&](int s) { return isWall(column, rect.top + s); }); })};
}

struct Place {
  double at = 0;
  bool isSure = false;
};

/// The place of a reveal's face near an edge's first guess: its points heap up there.
template <class Along, class Beside>
std::optional<double> revealPlace(const WallGrid& grid, double guess, double side, Along place,
                                  Beside isBeside) {
  constexpr double kReach = 0.10;  // metres from the guess
  constexpr double kDeepest = 0.30;
  constexpr double kHalfPeak = 0.015;
  std::vector<double> places;
  double behind = 0;  // points of a leaf that lies back, as far into the hole
  for (const WallPoint& p : grid.beyond) {
    if (p.inward < -kDeepest || !isBeside(p)) continue;
    if (std::abs(place(p) - guess) < kReach) places.push_back(place(p));
    const double into = -side * (place(p) - guess);
    behind += into > 1.5 * kReach && into < 3.5 * kReach ? 1 : 0;
  }
  std::sort(places.begin(), places.end());
  std::size_t most = 0;
  double peak = guess;
  for (std::size_t first = 0, last = 0; first < places.size(); ++first) {
    while (last < places.size() && places[last] < places[first] + 2 * kHalfPeak) ++last;
    if (last - first <= most) continue;
    most = last - first;
    peak = places[first + (last - first) / 2];
  }
  constexpr double kFewest = 30;
  const double usual = behind * kHalfPeak / kReach;
  if (static_cast<double>(most) < kFewest + 3 * usual) return std::nullopt;
  return peak;
}

/// Where wall ends along one direction: `place` and `isBeside` of a point, the edge's first guess, and on
/// which side of it (-1 or 1) wall stands.
template <class Along, class Beside>
Place edgePlace(const WallGrid& grid, double guess, double side, Along place, Beside isBeside) {
  constexpr double kFrom = 0.12;  // metres from the guess: surely wall
  constexpr double kTo = 0.30;
  double plateau = 0;
  double upTo = 0;
  double half = 0;
  for (const WallPoint& p : grid.wall) {
    // What stands in the hole, reveals and frames, lies behind the wall's face.
    if (p.inward < 0 || !isBeside(p)) continue;
    const double into = side * (place(p) - guess);
    if (into >= kFrom && into < kTo) plateau += 1;
    if (into >= kFrom && into < 0.5 * (kFrom + kTo)) half += 1;
    if (into < kFrom && into > -kFrom) upTo += 1;
  }
  Place found{guess, false};
  if (plateau >= 20 && half > 0.3 * plateau && half < 0.7 * plateau) {
    const double into = kFrom - upTo / (plateau / (kTo - kFrom));
    if (std::abs(into) < kFrom) found = {guess + side * into, true};
  }
  if (const auto reveal = revealPlace(grid, guess, side, place, isBeside)) return {*reveal, true};
  return found;
}

Dimension dimension(double value, bool isSure) {
  return {value, isSure ? Instrument::Scan : Instrument::Guess, true};
}

std::string metres(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.2f m", value);
  return text;
}

/// The holes of one wall.
class WallSearch {
 public:
  WallSearch(const WallGrid& grid, std::size_t side, ScanOpenings& result)
      : grid_(grid), side_(side), result_(result), taken_(grid.isWall.size(), false) {}

  void search() {
    for (int i = 0; i < kMostInWall; ++i) {
      const Rect rect = grown(grid_, taken_, largestRect(grid_, taken_));
      if (rect.width() * kWallCell < kLeastWidth || rect.height() * kWallCell < kLeastHeight) break;
      judge(rect);
      for (int column = rect.left; column < rect.right; ++column)
        for (int row = rect.bottom; row < rect.top; ++row) taken_[grid_.at(column, row)] = true;
    }
    noteParts();
    noteLowTop();
  }

 private:
  bool reachesFloor(const Rect& rect) const { return rect.bottom * kWallCell < kThreshold; }

  void judge(const Rect& rect) {
    const double hidden = shareOf(rect, [&](int c, int r) { return grid_.hidden[grid_.at(c, r)] > 0; });
    const bool isThrough = seenThrough(rect);
    if (hidden > (isThrough ? kHiddenThrough : kHidden)) {
      hidden_ += rect.area() * kWallCell * kWallCell;
      return;
    }
    const Edges edges = edgesOf(grid_, rect);
    const bool isDoor = reachesFloor(rect);
    const double width = rect.width() * kWallCell;
    const double height = rect.top * kWallCell;
    // A garage's door may fill its wall; a door's lintel may have been missed.
    const double leastSide = std::min(edges.left, edges.right);
    const double ends = isDoor ? 1 : edges.bottom;
    if (isDoor && (width < kLeastDoor || height < kLowestDoor)) return noteUnseen(rect);
    const double wanted = isThrough ? kEdge : kClearEdge;
    const bool hasLintel = rect.top + 2 < grid_.rows;
    const bool hasSides = leastSide >= wanted || (isThrough && hasLintel && width > kSectional);
    if (!hasSides || ends < wanted || edges.top < wanted) return noteUnseen(rect);
    if (!isThrough && (isDoor && somethingCouldHide(rect))) return noteUnseen(rect);
    propose(rect, edges, isThrough);
  }

  /// A reveal, a leaf or anything farther off that is seen straight through the hole.
  bool seenThrough(const Rect& rect) const {
    // Reveals begin at the hole's edge, which lies in or beside the squares along it.
    constexpr int kBeside = 2;
    const Rect wide{rect.left - kBeside, rect.right + kBeside, rect.bottom - kBeside, rect.top + kBeside};
    std::vector<bool> squares(static_cast<std::size_t>(wide.area()), false);
    std::size_t count = 0;
    for (const WallPoint& p : grid_.beyond) {
      const int column = static_cast<int>(p.along / kWallCell);
      const int row = static_cast<int>(p.height / kWallCell);
      if (p.height < 0 || column < wide.left || column >= wide.right || row < wide.bottom || row >= wide.top)
        continue;
      ++count;
      squares[static_cast<std::size_t>((row - wide.bottom) * wide.width() + column - wide.left)] = true;
    }
    const auto filled = static_cast<double>(std::count(squares.begin(), squares.end(), true));
    return count >= kFewestBeyond && filled >= kThroughShare * rect.area();
  }

  /// Something in the room that is tall enough to have kept the hole from being seen.
  bool somethingCouldHide(const Rect& rect) const {
    std::size_t count = 0;
    for (const WallPoint& p : grid_.before) {
      const double column = p.along / kWallCell;
      if (column > rect.left - 8 && column < rect.right + 8 && p.height > 0.4 * rect.top * kWallCell) ++count;
    }
    return count >= kFewestBeyond;
  }

  void propose(const Rect& rect, const Edges& edges, bool isThrough) {
    const double left = rect.left * kWallCell;
    const double right = rect.right * kWallCell;
    const double bottom = rect.bottom * kWallCell;
    const double top = rect.top * kWallCell;
    const auto along = [](const WallPoint& p) { return static_cast<double>(p.along); };
    const auto height = [](const WallPoint& p) { return static_cast<double>(p.height); };
    const double inset = std::min(0.15, 0.2 * (top - bottom));
    const auto inRows = [&](const WallPoint& p) {
      return p.height > bottom + inset && p.height < top - inset;
    };
    const double margin = 0.2 * (right - left);
    const auto inColumns = [&](const WallPoint& p) {
      return p.along > left + margin && p.along < right - margin;
    };
    Place start = edgePlace(grid_, left, -1, along, inRows);
    Place end = edgePlace(grid_, right, 1, along, inRows);
    const Place head = edgePlace(grid_, top, 1, height, inColumns);
    Place sill = edgePlace(grid_, bottom, -1, height, inColumns);
    if (grid_.near > kSureNear) start.isSure = end.isSure = false;
    const bool isSureOfHeight = head.isSure && grid_.near <= kSureNear;
    if (edges.left == 0 && rect.left == 0) start = {0, false};
    if (edges.right == 0 && rect.right >= grid_.columns) end = {grid_.length, false};
    const bool isDoor = reachesFloor(rect);
    if (isDoor) sill = {0, true};
    start.at = std::max(start.at, 0.0);
    end.at = std::min(end.at, grid_.length);
    Opening opening;
    opening.offset = dimension(start.at, start.isSure);
    opening.width = dimension(end.at - start.at, start.isSure && end.isSure);
    opening.sill = dimension(std::max(0.0, sill.at), sill.isSure);
    opening.height = dimension(head.at - sill.at, isSureOfHeight && sill.isSure);
    // Without a lintel it is a way into the rest of the room, or another one.
    const bool hasLintel = rect.top + 2 < grid_.rows;
    opening.kind = !isDoor                                          ? OpeningKind::Window
                   : hasLintel && opening.width.value < kWideDoor   ? OpeningKind::HingedDoor
                   : !hasLintel || opening.width.value < kSectional ? OpeningKind::Passage
                                                                    : OpeningKind::SectionalDoor;
    result_.found.push_back({side_, opening});
    if (isDoor && !hasLintel)
      note(
          "The passage in wall % is open up to the ceiling: the room may go on there; scan it from there "
          "too.");
    if (!isThrough)
      note("The hole in wall %, " + sizeText(rect) + ", was taken for " +
           std::string(isDoor ? "a door" : "a window") +
           ", but nothing was seen through it: it may be a place that was not scanned.");
  }

  static std::string sizeText(const Rect& rect) {
    return metres(rect.width() * kWallCell) + " by " + metres(rect.height() * kWallCell) + ", " +
           metres(rect.left * kWallCell) + " from its start and " + metres(rect.bottom * kWallCell) +
           " above the floor";
  }

  void noteUnseen(const Rect& rect) {
    if (rect.area() * kWallCell * kWallCell >= kNotedUnseen) unseen_.push_back(rect);
  }

  /// Walls are seen right up to the ceiling.
  void noteLowTop() {
    constexpr int kAtTop = 1;  // the topmost row may be cut by the ceiling
    constexpr int kBelowTop = 10;
    if (grid_.rows < 2 * kBelowTop || grid_.length < kLeastDoor) return;
    double high = 0;
    double low = 0;
    for (int column = 0; column < grid_.columns; ++column) {
      const auto hasHits = [&](int fromTop) {
        return grid_.hits[grid_.at(column, grid_.rows - 1 - fromTop)] > 0;
      };
      high += hasHits(kAtTop) ? 1 : 0;
      low += hasHits(kBelowTop) ? 1 : 0;
    }
    if (low > kClearEdge * grid_.columns && high < 0.3 * low)
      note(
          "Wall % ends below the ceiling: it may be the front of a cupboard, with the room's wall behind "
          "it.");
  }

  void noteParts() {
    const auto goesOn = [&](const Rect& rect) {
      return rect.bottom * kWallCell < kThreshold && rect.top + 2 >= grid_.rows && seenThrough(rect);
    };
    if (const auto mouth = std::find_if(unseen_.begin(), unseen_.end(), goesOn); mouth != unseen_.end()) {
      note("The room may go on beyond wall %, through a gap of about " + sizeText(*mouth) +
           ", which is open up to the ceiling: scan it from there too.");
      unseen_.erase(mouth);
    }
    if (!unseen_.empty())
      note("A part of wall % of about " + sizeText(unseen_[0]) +
           (unseen_.size() > 1 ? ", and others were" : ", was") +
           " not seen and taken for wall: look whether there is a door or a window.");
    if (hidden_ < kNotedHidden) return;
    char text[32];
    std::snprintf(text, sizeof text, "%.0f", hidden_);
    note("About " + std::string(text) +
         " square metres of wall % are hidden behind things: a door or a window there was not found.");
  }

  void note(std::string sentence) {
    result_.notes.push_back(std::move(sentence));
    result_.noteSides.push_back(side_);
  }

  static constexpr double kNotedUnseen = 0.5;  // square metres

  const WallGrid& grid_;
  std::size_t side_;
  ScanOpenings& result_;
  std::vector<bool> taken_;
  double hidden_ = 0;
  std::vector<Rect> unseen_;  // the largest first
};

}  // namespace

ScanOpenings openingsOf(const std::vector<WallGrid>& grids) {
  ScanOpenings result;
  for (std::size_t i = 0; i < grids.size(); ++i) WallSearch(grids[i], i, result).search();
  std::stable_sort(result.found.begin(), result.found.end(), [](const ScanOpening& a, const ScanOpening& b) {
    return std::pair(a.side, a.opening.offset.value) < std::pair(b.side, b.opening.offset.value);
  });
  return result;
}

}  // namespace baywright
