// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "clearance/ceiling_pieces.h"
#include "clearance/convex_ring.h"
#include "clearance/obstacles.h"
#include "clearance/wording.h"
#include "geometry/polygon_sets.h"
#include "geometry/triangulation.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

/// The part over the whole floor runs on this far behind the walls, so that what goes up through it close to
/// a wall is not found to have a way out sideways.
constexpr double kBehindWalls = 1.0;
/// Parts of the floor smaller than this are slips between a region and the walls, square metres.
constexpr double kSlip = 0.01;

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

void addPiece(Obstacles& obstacles, const CeilingPart& part, const CeilingPiece& piece) {
  const SlopedPlane underside = part.height.known ? planeOf(part) : SlopedPlane::level(0);
  double highest = 0;
  for (const Vec2& corner : piece.plan) highest = std::max(highest, underside.heightAt(corner));
  const auto body = convexPrismFrom({piece.plan, underside, SlopedPlane::level(highest + kAboveCeiling)});
  if (!body) return;
  RoomObstacle obstacle = withSolid(ceilingLike(part), *body);
  for (std::size_t i = 0; i < piece.openBelow.size(); ++i) {
    obstacle.sharedSides.push_back({raised(behindEdge(piece.plan, i).normal, 0), piece.openBelow[i]});
  }
  obstacles.push_back(std::move(obstacle));
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
    for (const CeilingPiece& piece : ceilingPieces(job.room, part)) addPiece(obstacles, part, piece);
  }
  addUncovered(obstacles, job.room, floor);
  return obstacles;
}

}  // namespace baywright
