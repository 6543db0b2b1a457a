// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_openings.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <utility>

#include "survey/scan_hole_places.h"
#include "survey/scan_hole_rect.h"

namespace baywright {
namespace {

using detail::HoleEdges;
using detail::HoleRect;

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

template <class Test>
double shareOf(const HoleRect& rect, Test test) {
  double count = 0;
  for (int column = rect.left; column < rect.right; ++column)
    for (int row = rect.bottom; row < rect.top; ++row) count += test(column, row) ? 1 : 0;
  return rect.area() > 0 ? count / rect.area() : 0;
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
      const HoleRect rect = detail::grown(grid_, taken_, detail::largestRect(grid_, taken_));
      if (rect.width() * kWallCell < kLeastWidth || rect.height() * kWallCell < kLeastHeight) break;
      judge(rect);
      for (int column = rect.left; column < rect.right; ++column)
        for (int row = rect.bottom; row < rect.top; ++row) taken_[grid_.at(column, row)] = true;
    }
    noteParts();
    noteLowTop();
  }

 private:
  /// Wall over most of it.
  bool hasLintel(const HoleRect& rect) const {
    int under = 0;
    for (int column = rect.left; column < rect.right; ++column)
      under += rect.top + 1 < grid_.lastRow(std::min(column, grid_.columns - 1)) ? 1 : 0;
    return 2 * under > rect.width();
  }
  bool reachesFloor(const HoleRect& rect) const { return rect.bottom * kWallCell < kThreshold; }

  /// A column most of which things stand before.
  bool isHiddenColumn(const HoleRect& rect, int column) const {
    if (column < 0 || column >= grid_.columns) return false;
    const HoleRect strip{column, column + 1, rect.bottom, rect.top};
    return shareOf(strip, [&](int c, int r) { return grid_.hidden[grid_.at(c, r)] > 0; }) > 0.5;
  }

  /// Without the columns at both sides that things hide, as curtains do: what was not seen is no hole.
  HoleRect withoutHiddenSides(HoleRect rect) const {
    const HoleRect whole = rect;
    while (rect.width() > 1 && isHiddenColumn(whole, rect.left)) ++rect.left;
    while (rect.width() > 1 && isHiddenColumn(whole, rect.right - 1)) --rect.right;
    return rect;
  }

  void judge(const HoleRect& whole) {
    const HoleRect rect = withoutHiddenSides(whole);
    if (rect.width() * kWallCell < kLeastWidth) {
      hidden_ += whole.area() * kWallCell * kWallCell;
      return;
    }
    const double hidden = shareOf(rect, [&](int c, int r) { return grid_.hidden[grid_.at(c, r)] > 0; });
    const bool isThrough = seenThrough(rect);
    if (hidden > (isThrough ? kHiddenThrough : kHidden)) {
      hidden_ += rect.area() * kWallCell * kWallCell;
      return;
    }
    HoleEdges edges = detail::edgesOf(grid_, rect);
    // What hides a side of it may hide its edge; it then lies somewhere behind that.
    if (rect.left > whole.left) edges.left = 1;
    if (rect.right < whole.right) edges.right = 1;
    const bool isDoor = reachesFloor(rect);
    const double width = rect.width() * kWallCell;
    const double height = rect.top * kWallCell;
    // A garage's door may fill its wall; a door's lintel may have been missed.
    const double leastSide = std::min(edges.left, edges.right);
    const double ends = isDoor ? 1 : edges.bottom;
    if (isDoor && (width < kLeastDoor || height < kLowestDoor)) return noteUnseen(rect);
    const double wanted = isThrough ? kEdge : kClearEdge;
    const bool hasSides = leastSide >= wanted || (isThrough && hasLintel(rect) && width > kSectional);
    if (!hasSides || ends < wanted || edges.top < wanted) return noteUnseen(rect);
    if (!isThrough && (isDoor && somethingCouldHide(rect))) return noteUnseen(rect);
    propose(rect, edges, isThrough);
  }

  /// A reveal, a leaf or anything farther off that is seen straight through the hole.
  bool seenThrough(const HoleRect& rect) const {
    // Reveals begin at the hole's edge, which lies in or beside the squares along it.
    constexpr int kBeside = 2;
    const HoleRect wide{rect.left - kBeside, rect.right + kBeside, rect.bottom - kBeside, rect.top + kBeside};
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
  bool somethingCouldHide(const HoleRect& rect) const {
    std::size_t count = 0;
    for (const WallPoint& p : grid_.before) {
      const double column = p.along / kWallCell;
      if (column > rect.left - 8 && column < rect.right + 8 && p.height > 0.4 * rect.top * kWallCell) ++count;
    }
    return count >= kFewestBeyond;
  }

  void propose(const HoleRect& rect, const HoleEdges& edges, bool isThrough) {
    auto [start, end, sill, head] = detail::placesOf(grid_, rect);
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
    const bool isUnderLintel = hasLintel(rect);
    opening.kind = !isDoor                                              ? OpeningKind::Window
                   : isUnderLintel && opening.width.value < kWideDoor   ? OpeningKind::HingedDoor
                   : !isUnderLintel || opening.width.value < kSectional ? OpeningKind::Passage
                                                                        : OpeningKind::SectionalDoor;
    result_.found.push_back({side_, opening});
    if (isDoor && !isUnderLintel)
      note(
          "The passage in wall % is open up to the ceiling: the room may go on there; scan it from there "
          "too.");
    if (!isThrough)
      note("The hole in wall %, " + sizeText(rect) + ", was taken for " +
           std::string(isDoor ? "a door" : "a window") +
           ", but nothing was seen through it: it may be a place that was not scanned.");
  }

  static std::string sizeText(const HoleRect& rect) {
    return metres(rect.width() * kWallCell) + " by " + metres(rect.height() * kWallCell) + ", " +
           metres(rect.left * kWallCell) + " from its start and " + metres(rect.bottom * kWallCell) +
           " above the floor";
  }

  void noteUnseen(const HoleRect& rect) {
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
        const int row = grid_.lastRow(column) - fromTop;
        return row >= 0 && row < grid_.rows && grid_.hits[grid_.at(column, row)] > 0;
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
    const auto goesOn = [&](const HoleRect& rect) {
      return rect.bottom * kWallCell < kThreshold && !hasLintel(rect) && seenThrough(rect);
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
  std::vector<HoleRect> unseen_;  // the largest first
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
