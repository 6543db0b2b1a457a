// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>

#include "clearance/convex_ring.h"
#include "clearance/obstacles.h"
#include "clearance/wording.h"
#include "geometry/polygon_sets.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

/// Masonry starts below the floor, so that a club head at the floor is not found to slip under the wall.
constexpr double kBelowFloor = -0.5;
/// A slab is made thinner in halves down to this before its wall is given up to overlap the room.
constexpr double kThinnestSlab = 0.01;
/// Overlaps of slab and room below this are the rounding of kPlanGrid along a wall, square metres.
constexpr double kNoOverlap = 1e-4;

struct Slab {
  Ring plan;  ///< convex
  double bottom = 0;
  double top = 0;
};

double highestCeiling(const Room& room) {
  double highest = 0;
  for (const CeilingPart& part : room.ceiling) {
    if (!part.height.known) return kUnmeasuredTop;
    for (const Vec2& corner : outline(room)) highest = std::max(highest, part.heightAt(corner));
  }
  return room.ceiling.empty() ? kUnmeasuredTop : highest;
}

bool overlaps(const Ring& slab, const Ring& floor) {
  const Result<PolygonSet> common = intersectionOf({Polygon{slab, {}}}, {Polygon{floor, {}}});
  return common && area(*common) > kNoOverlap;
}

/// Behind one face, `depth` thick. Where the room turns left the slab runs on by its depth, so that no gap
/// opens in the corner; where it turns right (a corner that sticks into the room) it ends at the next face.
Ring slabBehind(const std::vector<WallLine>& walls, std::size_t index, double depth) {
  const WallLine& wall = walls[index];
  const WallLine& previous = walls[(index + walls.size() - 1) % walls.size()];
  const WallLine& next = walls[(index + 1) % walls.size()];
  const Vec2 out = -wall.inward;
  std::vector<HalfPlane> keep = {{wall.inward, wall.inward.dot(wall.start)},
                                 {out, out.dot(wall.start) + depth}};
  const auto endAt = [&](const WallLine& other, const Vec2& outward, const Vec2& corner, double turn) {
    if (turn < 0) {
      keep.push_back({other.inward, other.inward.dot(corner)});
    } else {
      keep.push_back({outward, outward.dot(corner) + depth});
    }
  };
  endAt(previous, -wall.along, wall.start, cross(previous.along, wall.along));
  endAt(next, wall.along, wall.end, cross(wall.along, next.along));
  return commonOf(keep, 0.5 * (wall.start + wall.end), wall.length + 4 * kWallDepth);
}

Ring thickestSlab(const std::vector<WallLine>& walls, std::size_t index, const Ring& floor) {
  double depth = kWallDepth;
  Ring slab = slabBehind(walls, index, depth);
  while (depth > kThinnestSlab && overlaps(slab, floor)) {
    depth /= 2;
    slab = slabBehind(walls, index, depth);
  }
  return slab;
}

bool isWayThrough(const Opening& opening) {
  const bool open = opening.kind == OpeningKind::Passage ||
                    (opening.kind == OpeningKind::SectionalDoor && opening.staysOpen);
  return open && opening.offset.known && opening.width.known && opening.sill.known && opening.height.known;
}

/// Cuts the hole of one opening out of every slab. What fills the hole goes to `filling`, if asked.
std::vector<Slab> cutRound(const std::vector<Slab>& slabs, const OpeningPlace& hole,
                           std::vector<Slab>* filling) {
  const double from = hole.along.dot(hole.start);
  const double to = hole.along.dot(hole.end);
  std::vector<Slab> pieces;
  const auto add = [](std::vector<Slab>& list, Slab piece) {
    if (!piece.plan.empty() && piece.top > piece.bottom) list.push_back(std::move(piece));
  };
  for (const Slab& slab : slabs) {
    add(pieces, {clipped(slab.plan, {hole.along, from}), slab.bottom, slab.top});
    add(pieces, {clipped(slab.plan, {-hole.along, -to}), slab.bottom, slab.top});
    const Ring between = clipped(clipped(slab.plan, {-hole.along, -from}), {hole.along, to});
    const double bottom = hole.bottom > 0 ? hole.bottom : slab.bottom;
    add(pieces, {between, slab.bottom, std::min(slab.top, bottom)});
    add(pieces, {between, std::max(slab.bottom, hole.top), slab.top});
    if (filling) add(*filling, {between, std::max(slab.bottom, bottom), std::min(slab.top, hole.top)});
  }
  return pieces;
}

void addSolids(Obstacles& obstacles, const std::vector<Slab>& slabs, const RoomObstacle& like) {
  for (const Slab& slab : slabs) {
    const auto body =
        convexPrismFrom({slab.plan, SlopedPlane::level(slab.bottom), SlopedPlane::level(slab.top)});
    if (body) obstacles.push_back(withSolid(like, *body));  // else too thin to meet anything
  }
}

RoomObstacle wallLike(const WallLine& wall) {
  RoomObstacle like;
  like.id = wall.wall;
  like.kind = ObstacleKind::Wall;
  like.name = "wall " + wall.name;
  like.uncertainty.atFrom = wall.startCovariance;
  like.uncertainty.atTo = wall.endCovariance;
  like.uncertainty.run = {wall.start, wall.end};
  return like;
}

}  // namespace

Obstacles wallObstacles(const Job& job) {
  const std::vector<WallLine> walls = wallLines(job.room);
  const Ring floor = outline(job.room);
  const double top = highestCeiling(job.room) + kAboveCeiling;
  Obstacles obstacles;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    if (walls[i].length <= 0) continue;
    std::vector<Slab> slabs = {{thickestSlab(walls, i, floor), kBelowFloor, top}};
    for (const Opening& opening : job.room.openings) {
      if (opening.wall != walls[i].wall) continue;
      const auto hole = openingPlace(job.room, opening.id);
      if (!hole) continue;
      if (isWayThrough(opening)) {
        slabs = cutRound(slabs, *hole, nullptr);
      } else if (opening.kind == OpeningKind::Window) {
        std::vector<Slab> glass;
        slabs = cutRound(slabs, *hole, &glass);
        RoomObstacle window = wallLike(walls[i]);
        window.id = opening.id;
        window.kind = ObstacleKind::Window;
        window.name = inSentence(opening.name);
        window.breakable = true;
        addSolids(obstacles, glass, window);
      }
    }
    addSolids(obstacles, slabs, wallLike(walls[i]));
  }
  return obstacles;
}

}  // namespace baywright
