// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "clearance/convex_ring.h"
#include "clearance/obstacles.h"
#include "clearance/wording.h"
#include "geometry/polygon_sets.h"
#include "geometry/triangulation.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

/// A ceiling part runs on this far behind the walls, so that what goes up through it close to a wall is not
/// found to have a way out sideways; less where that would cover another part of the room.
constexpr double kBehindWalls = 1.0;
/// Looking for what lies beyond a side: far above kPlanGrid, far below any step in a ceiling.
constexpr double kJustBeyond = 1e-3;
/// Undersides that differ by less at a common side are one ceiling.
constexpr double kSameHeight = 1e-3;
/// Overlaps below this are rounding along an edge, square metres.
constexpr double kNoOverlap = 1e-4;

/// Parts of the floor smaller than this are slips between a region and the walls, square metres.
constexpr double kSlip = 0.01;

struct Piece {
  Ring plan;
  std::vector<std::size_t> sharedEdges;
};

Vec2 beyondEdge(const Ring& ring, std::size_t edge) {
  const Vec2 middle = 0.5 * (ring[edge] + ring[(edge + 1) % ring.size()]);
  return middle + kJustBeyond * behindEdge(ring, edge).normal;
}

Ring pushedOut(const Ring& ring, const std::vector<std::size_t>& edges, double by) {
  std::vector<HalfPlane> keep;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    keep.push_back(behindEdge(ring, i));
    if (std::find(edges.begin(), edges.end(), i) != edges.end()) keep.back().offset += by;
  }
  const Aabb3 bounds = [&] {
    std::vector<Vec3> corners;
    for (const Vec2& p : ring) corners.push_back(raised(p, 0));
    return boundsOf(corners);
  }();
  return commonOf(keep, flat(bounds.centre()), bounds.size().norm() + 2 * by);
}

/// The piece with its sides at and beyond the walls moved out, and which of its sides are no way out.
Piece extended(const Room& room, const CeilingPart& part, const Ring& piece, const Ring& floor) {
  std::vector<std::size_t> atWalls;
  Piece result;
  for (std::size_t i = 0; i < piece.size(); ++i) {
    const Vec2 beyond = beyondEdge(piece, i);
    if (locate(floor, beyond) != Location::Inside) {
      atWalls.push_back(i);
    } else if (const auto there = ceilingHeightAt(room, beyond);
               there && *there <= part.heightAt(beyond) + kSameHeight) {
      result.sharedEdges.push_back(i);
    }
  }
  const Polygon own{piece, {}};
  for (double by = kBehindWalls; by > 0.05; by /= 2) {
    result.plan = pushedOut(piece, atWalls, by);
    const auto added = differenceOf({Polygon{result.plan, {}}}, {own});
    const auto phantom = added ? intersectionOf(*added, {Polygon{floor, {}}}) : added;
    if (phantom && area(*phantom) < kNoOverlap) return result;
  }
  result.plan = piece;
  return result;
}

/// The part over the whole floor: a rectangle well beyond the walls, so that it is one piece.
Ring overEverything(const Room& room) {
  const PlanBox box = *planBox(room);
  const Vec2 more = Vec2::Constant(kBehindWalls);
  const Vec2 low = box.low - more;
  const Vec2 high = box.high + more;
  return {low, {high.x(), low.y()}, high, {low.x(), high.y()}};
}

RoomObstacle ceilingLike(const CeilingPart& part) {
  RoomObstacle like;
  like.id = part.id;
  like.kind = ObstacleKind::Ceiling;
  like.name = inSentence(part.name.empty() ? "Ceiling" : part.name);
  like.overhead = true;
  const double sigma = part.height.uncertain().sigma;
  like.uncertainty.bottom = like.uncertainty.top = sigma;
  // The outline of a part has no instrument of its own: it was taken with that of its height.
  like.uncertainty.atFrom = like.uncertainty.atTo = PlanCovariance::isotropic(sigma);
  if (!part.height.known) like.missing = "the height of " + like.name;
  return like;
}

void addPiece(Obstacles& obstacles, const CeilingPart& part, const Piece& piece) {
  SlopedPlane underside{part.anchor, part.height.value, part.slope};
  if (!part.height.known) underside = SlopedPlane::level(0);
  double highest = 0;
  for (const Vec2& corner : piece.plan) highest = std::max(highest, underside.heightAt(corner));
  const auto body = convexPrismFrom({piece.plan, underside, SlopedPlane::level(highest + kAboveCeiling)});
  if (!body) return;
  obstacles.push_back(withSolid(ceilingLike(part), *body));
}

/// The floor that no part covers: a ceiling that nobody measured.
void addUncovered(Obstacles& obstacles, const Room& room, const Ring& floor) {
  PolygonSet covered;
  for (const CeilingPart& part : room.ceiling) covered.push_back({ceilingRegion(room, part), {}});
  const auto bare = differenceOf({Polygon{floor, {}}}, covered);
  if (!bare) return;
  RoomObstacle like;
  like.kind = ObstacleKind::Ceiling;
  like.name = "the ceiling";
  like.missing =
      room.ceiling.empty() ? "the height of the ceiling" : "the ceiling where no part of it is drawn";
  like.overhead = true;
  for (const Polygon& place : *bare) {
    if (area(place) < kSlip) continue;
    for (const Ring& piece : convexPieces(place).value_or(std::vector<Ring>())) {
      const auto body = convexPrismFrom({piece, SlopedPlane::level(0), SlopedPlane::level(kUnmeasuredTop)});
      if (body) obstacles.push_back(withSolid(like, *body));
    }
  }
}

}  // namespace

Obstacles ceilingObstacles(const Job& job) {
  Obstacles obstacles;
  const Ring floor = outline(job.room);
  if (floor.size() < 3) return obstacles;
  for (const CeilingPart& part : job.room.ceiling) {
    if (part.region.empty()) {
      addPiece(obstacles, part, {overEverything(job.room), {}});
      continue;
    }
    const auto pieces = convexPieces({part.region, {}});
    if (!pieces) continue;  // validate() refuses such regions
    for (const Ring& ring : *pieces) {
      const Piece piece = extended(job.room, part, ring, floor);
      std::vector<Vec3> sharedSides;
      for (std::size_t edge : piece.sharedEdges) {
        sharedSides.push_back(raised(behindEdge(ring, edge).normal, 0));
      }
      const std::size_t before = obstacles.size();
      addPiece(obstacles, part, piece);
      if (obstacles.size() > before) obstacles.back().sharedSides = std::move(sharedSides);
    }
  }
  addUncovered(obstacles, job.room, floor);
  return obstacles;
}

}  // namespace baywright
