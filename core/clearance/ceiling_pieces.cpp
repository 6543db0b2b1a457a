// SPDX-License-Identifier: Apache-2.0
#include "clearance/ceiling_pieces.h"

#include <algorithm>
#include <cmath>

#include "clearance/convex_ring.h"
#include "geometry/triangulation.h"

namespace baywright {
namespace {

/// Looking for what lies beyond a side: far above kPlanGrid, far below any step in a ceiling.
constexpr double kJustBeyond = 1e-3;
/// Undersides that differ by less at a common side are one ceiling.
constexpr double kSameHeight = 1e-3;
/// Corners that bend by less than this sine are none.
constexpr double kStraight = 1e-6;

Ring withoutStraightCorners(const Ring& ring) {
  Ring kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Vec2& before = ring[(i + ring.size() - 1) % ring.size()];
    const Vec2& after = ring[(i + 1) % ring.size()];
    const Vec2 in = (ring[i] - before).normalized();
    const Vec2 out = (after - ring[i]).normalized();
    if (std::abs(cross(in, out)) > kStraight) kept.push_back(ring[i]);
  }
  return kept;
}

/// The line just beyond an edge.
struct Edge {
  Vec2 from;
  Vec2 along;
  double length;

  Vec2 at(double t) const { return from + t * along; }
};
Edge beyond(const Ring& ring, std::size_t edge) {
  const Vec2& from = ring[edge];
  const Vec2 run = ring[(edge + 1) % ring.size()] - from;
  return {from + kJustBeyond * behindEdge(ring, edge).normal, run.normalized(), run.norm()};
}

class Cutter {
 public:
  Cutter(const Room& room, const CeilingPart& part) : room_(room), part_(part), floor_(outline(room)) {}

  /// Cuts the piece at the first change beyond one of its edges, and what comes of that, until there is none.
  void cut(const Ring& plan, std::vector<CeilingPiece>& pieces) const {
    if (plan.size() < 3) return;
    for (std::size_t i = 0; i < plan.size(); ++i) {
      const auto change = firstChange(beyond(plan, i));
      if (!change) continue;
      const Vec2 along = beyond(plan, i).along;
      const double offset = along.dot(plan[i]) + *change;
      cut(withoutStraightCorners(clipped(plan, {along, offset})), pieces);
      cut(withoutStraightCorners(clipped(plan, {-along, -offset})), pieces);
      return;
    }
    CeilingPiece piece{plan, {}};
    for (std::size_t i = 0; i < plan.size(); ++i) {
      const Edge edge = beyond(plan, i);
      const CeilingPart* higher = higherAt(edge.at(edge.length / 2));
      piece.openBelow.push_back(higher ? std::optional(planeOf(*higher)) : std::nullopt);
    }
    pieces.push_back(std::move(piece));
  }

 private:
  /// The part that is the ceiling there when it is higher than this one; null where there is no way out.
  const CeilingPart* higherAt(const Vec2& point) const {
    if (locate(floor_, point) != Location::Inside) return nullptr;
    const auto there = ceilingAt(room_, point);
    if (!there || there->height <= part_.heightAt(point) + kSameHeight) return nullptr;
    const auto found = std::find_if(room_.ceiling.begin(), room_.ceiling.end(),
                                    [&](const CeilingPart& part) { return part.id == there->part; });
    return &*found;
  }

  /// Where one edge of an outline crosses it.
  static void addCrossing(std::vector<double>& at, const Edge& edge, const Vec2& a, const Vec2& b) {
    const double sideA = cross(edge.along, a - edge.from);
    const double sideB = cross(edge.along, b - edge.from);
    if ((sideA > 0) == (sideB > 0)) return;
    at.push_back(edge.along.dot(a + sideA / (sideA - sideB) * (b - a) - edge.from));
  }

  /// Where the answer may change along an edge: outlines crossed, planes of one height.
  std::vector<double> candidates(const Edge& edge) const {
    std::vector<double> at;
    const auto addRing = [&](const Ring& ring) {
      for (std::size_t i = 0; i < ring.size(); ++i)
        addCrossing(at, edge, ring[i], ring[(i + 1) % ring.size()]);
    };
    addRing(floor_);
    for (const CeilingPart& a : room_.ceiling) {
      addRing(a.region);
      for (const CeilingPart& b : room_.ceiling) {
        const double start = a.heightAt(edge.from) - b.heightAt(edge.from);
        const double rate = (a.slope - b.slope).dot(edge.along);
        if (rate != 0) at.push_back(-start / rate);
      }
    }
    std::erase_if(at, [&](double t) { return !(t > kShortestCut && t < edge.length - kShortestCut); });
    std::sort(at.begin(), at.end());
    return at;
  }

  std::optional<double> firstChange(const Edge& edge) const {
    std::vector<double> at = candidates(edge);
    at.push_back(edge.length);
    double from = 0;
    const CeilingPart* before = higherAt(edge.at(at.front() / 2));
    for (const double to : at) {
      const CeilingPart* here = higherAt(edge.at((from + to) / 2));
      if (here != before) return from;
      from = to;
    }
    return std::nullopt;
  }

  const Room& room_;
  const CeilingPart& part_;
  Ring floor_;
};

}  // namespace

SlopedPlane planeOf(const CeilingPart& part) {
  return {part.anchor, part.height.value, part.slope};
}

std::vector<CeilingPiece> ceilingPieces(const Room& room, const CeilingPart& part) {
  std::vector<CeilingPiece> pieces;
  const auto convex = part.region.empty() ? Result<std::vector<Ring>>() : convexPieces({part.region, {}});
  if (!convex) return pieces;  // validate() refuses such regions
  const Cutter cutter(room, part);
  for (const Ring& ring : *convex) cutter.cut(withoutStraightCorners(ring), pieces);
  return pieces;
}

}  // namespace baywright
