// SPDX-License-Identifier: Apache-2.0
#include "geometry/triangulation.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "geometry/detail/ring_edges.h"
#include "geometry/polygon_validity.h"

namespace baywright {

namespace {

using Loop = std::vector<int>;  ///< indices of corners, inside to the left

/// The corners of a polygon by index, and a loop over them that is being cut down.
class Cutter {
 public:
  explicit Cutter(const Polygon& polygon) {
    loop_ = append(polygon.outer);
    for (const Ring& hole : polygon.holes) holes_.push_back(append(hole));
    const auto rightmost = [&](const Loop& hole) {
      return *std::max_element(hole.begin(), hole.end(), [&](int a, int b) { return at(a).x() < at(b).x(); });
    };
    // From right to left, a hole always finds its bridge to the right, on what is joined already.
    std::stable_sort(holes_.begin(), holes_.end(), [&](const Loop& a, const Loop& b) {
      return at(rightmost(a)).x() > at(rightmost(b)).x();
    });
    for (const Loop& hole : holes_) {
      const auto tip = std::find(hole.begin(), hole.end(), rightmost(hole)) - hole.begin();
      joined_ = joined_ && join(hole, static_cast<std::size_t>(tip));
    }
  }

  Result<Triangulation> run() {
    Triangulation result{corners_, {}};
    while (joined_ && loop_.size() > 2) {
      const auto ear = bestEar();
      if (!ear) break;
      if (turnAt(*ear) > 0) result.triangles.push_back({before(*ear), loop_[*ear], after(*ear)});
      loop_.erase(loop_.begin() + static_cast<std::ptrdiff_t>(*ear));
    }
    if (!joined_ || loop_.size() > 2) {
      return fail("The region could not be cut into triangles.", {},
                  "Move corners that almost touch an edge.");
    }
    return result;
  }

 private:
  Loop append(const Ring& ring) {
    Loop loop;
    for (const Vec2& p : ring) {
      loop.push_back(static_cast<int>(corners_.size()));
      corners_.push_back(p);
    }
    return loop;
  }
  const Vec2& at(int corner) const { return corners_[static_cast<std::size_t>(corner)]; }
  int before(std::size_t i) const { return loop_[(i + loop_.size() - 1) % loop_.size()]; }
  int after(std::size_t i) const { return loop_[(i + 1) % loop_.size()]; }
  double turnAt(std::size_t i) const { return turn(before(i), loop_[i], after(i)); }
  double turn(int a, int b, int c) const { return cross(at(b) - at(a), at(c) - at(a)); }

  /// Cuts the loop open at the nearest corner that sees the hole's tip, and goes round the hole there.
  bool join(const Loop& hole, std::size_t tip) {
    std::optional<std::size_t> best;
    double shortest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < loop_.size(); ++i) {
      const double length = (at(loop_[i]) - at(hole[tip])).norm();
      if (length < shortest && opensTowards(i, hole[tip]) && sees(hole[tip], loop_[i])) {
        best = i;
        shortest = length;
      }
    }
    if (!best) return false;
    Loop detour;
    for (std::size_t i = 0; i <= hole.size(); ++i) detour.push_back(hole[(tip + i) % hole.size()]);
    detour.push_back(loop_[*best]);
    loop_.insert(loop_.begin() + static_cast<std::ptrdiff_t>(*best) + 1, detour.begin(), detour.end());
    return true;
  }

  /// Whether `target` lies in the inner angle of the loop at i.
  bool opensTowards(std::size_t i, int target) const {
    const bool leftOfIn = turn(before(i), loop_[i], target) > 0;
    const bool leftOfOut = turn(loop_[i], after(i), target) > 0;
    return turnAt(i) > 0 ? leftOfIn && leftOfOut : leftOfIn || leftOfOut;
  }

  /// Whether the way from one corner to another meets no edge but at its own ends.
  bool sees(int from, int to) const {
    const auto clear = [&](const Loop& ring) {
      for (std::size_t i = 0; i < ring.size(); ++i) {
        const int a = ring[i];
        const int b = ring[(i + 1) % ring.size()];
        if (a == from || b == from || a == to || b == to) continue;
        if (detail::nearestPair({at(a), at(b)}, {at(from), at(to)}).distance == 0) return false;
      }
      return true;
    };
    return clear(loop_) && std::all_of(holes_.begin(), holes_.end(), clear);
  }

  /// The corner to cut off next: any that is straight, else the free one with the shortest cut.
  std::optional<std::size_t> bestEar() const {
    std::optional<std::size_t> best;
    double shortest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < loop_.size(); ++i) {
      const double turned = turnAt(i);
      if (turned == 0) return i;
      const double cut = (at(before(i)) - at(after(i))).norm();
      if (turned > 0 && cut < shortest && isFree(i)) {
        best = i;
        shortest = cut;
      }
    }
    return best;
  }

  /// Whether no other corner lies in the triangle at i, its border included.
  bool isFree(std::size_t i) const {
    const int a = before(i);
    const int b = loop_[i];
    const int c = after(i);
    return std::none_of(loop_.begin(), loop_.end(), [&](int p) {
      if (p == a || p == b || p == c) return false;
      return turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0;
    });
  }

  std::vector<Vec2> corners_;
  Loop loop_;
  std::vector<Loop> holes_;
  bool joined_ = true;
};

/// The two loops as one without their common edge, if they have one and the result stays convex.
std::optional<Loop> mergedConvex(const Loop& first, const Loop& second, const std::vector<Vec2>& corners) {
  const auto next = [](const Loop& loop, std::size_t i) { return loop[(i + 1) % loop.size()]; };
  for (std::size_t i = 0; i < first.size(); ++i) {
    for (std::size_t j = 0; j < second.size(); ++j) {
      if (first[i] != next(second, j) || next(first, i) != second[j]) continue;
      Loop merged;
      for (std::size_t k = 1; k <= first.size(); ++k) merged.push_back(first[(i + k) % first.size()]);
      for (std::size_t k = 2; k < second.size(); ++k) merged.push_back(second[(j + k) % second.size()]);
      Ring ring;
      for (const int corner : merged) ring.push_back(corners[static_cast<std::size_t>(corner)]);
      if (isConvex(ring)) return merged;
    }
  }
  return std::nullopt;
}

}  // namespace

Result<Triangulation> triangulated(const Polygon& polygon) {
  if (const auto ok = validated(polygon); !ok) return tl::unexpected(ok.error());
  return Cutter(normalised(polygon)).run();
}

Result<std::vector<Ring>> convexPieces(const Polygon& polygon) {
  const auto cut = triangulated(polygon);
  if (!cut) return tl::unexpected(cut.error());
  std::vector<Loop> pieces;
  for (const auto& t : cut->triangles) pieces.push_back({t[0], t[1], t[2]});
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    for (std::size_t j = i + 1; j < pieces.size();) {
      const auto merged = mergedConvex(pieces[i], pieces[j], cut->corners);
      if (!merged) {
        ++j;
        continue;
      }
      pieces[i] = *merged;
      pieces.erase(pieces.begin() + static_cast<std::ptrdiff_t>(j));
      j = i + 1;  // the larger piece may now fit one that it did not fit before
    }
  }
  std::vector<Ring> rings;
  for (const Loop& piece : pieces) {
    Ring& ring = rings.emplace_back();
    for (const int corner : piece) ring.push_back(cut->corners[static_cast<std::size_t>(corner)]);
  }
  return rings;
}

}  // namespace baywright
