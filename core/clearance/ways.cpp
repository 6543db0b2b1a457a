// SPDX-License-Identifier: Apache-2.0
#include "clearance/ways.h"

#include <algorithm>
#include <cmath>

#include "clearance/door_geometry.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

/// Things that hang higher are walked under (80 in, ADA Standards fig. 8(a)).
constexpr double kHeadHeight = 2.032;
/// A point of an outline lies on every obstacle this near, metres: far above rounding, far below a gap.
constexpr double kTouching = 2e-3;
/// Corners that stand for a round column, circumscribed: its radius is exceeded by half a per cent.
constexpr int kRoundCorners = 32;

Ring planOf(const Solid& solid) {
  std::vector<Vec2> points;
  if (const auto* body = std::get_if<ConvexPolyhedron>(&solid)) {
    for (const Vec3& corner : body->vertices()) points.push_back(flat(corner));
  } else {
    const auto& round = std::get<Cylinder>(solid);
    const double radius = round.radius / std::cos(kPi / kRoundCorners);
    for (int i = 0; i < kRoundCorners; ++i) {
      const double angle = 2 * kPi * i / kRoundCorners;
      const Vec2 out = radius * Vec2(std::cos(angle), std::sin(angle));
      points.push_back(flat(round.a) + out);
      points.push_back(flat(round.b) + out);
    }
  }
  return convexHull(std::move(points));
}

/// Walls and ceiling: the floor's outline stands for them.
bool isShell(const RoomObstacle& obstacle) {
  return obstacle.kind == ObstacleKind::Wall || obstacle.kind == ObstacleKind::Window ||
         obstacle.kind == ObstacleKind::Ceiling;
}

/// The strike points of those who swing; the right-hander's when nobody does.
std::vector<Vec2> strikePoints(const Job& job) {
  std::vector<Vec2> points;
  const Placement& placement = job.option().placement;
  const auto add = [&](Hand hand) {
    const Vec2 at = flat(worldFromBay(placement.bay, placement.strikePoint(hand)));
    if (points.empty() || points.front() != at) points.push_back(at);
  };
  for (const Hand hand : {Hand::Right, Hand::Left}) {
    if (std::any_of(job.golfers.begin(), job.golfers.end(),
                    [&](const Golfer& golfer) { return golfer.swings && golfer.hand == hand; }))
      add(hand);
  }
  if (points.empty()) add(Hand::Right);
  return points;
}

/// Whether the outline of what stands in people's way passes through that point.
bool passesThrough(const RoomObstacle& obstacle, const Vec2& at) {
  if (!standsInTheWay(obstacle, kHeadHeight) || obstacle.overhead) return false;
  const double height = std::clamp(1.0, obstacle.bounds.low.z(), obstacle.bounds.high.z());
  return std::abs(closest(raised(at, height), obstacle.solid).distance) <= kTouching;
}

/// Uncertainty of a gap between a wall or fixture and another, or kit: both sides, and where kit is put.
double gapSigma(const Job& job, std::span<const RoomObstacle> obstacles, const Way& way) {
  const Vec2 across = (way.narrowB - way.narrowA).normalized();
  const auto sideSigma = [&](const Vec2& at) {
    double sigma = 0;
    for (const RoomObstacle& obstacle : obstacles) {
      if (!passesThrough(obstacle, at)) continue;
      const double own = sigmaAlong(obstacle, raised(at, 0), raised(across, 0));
      sigma = std::max(sigma, std::hypot(own, obstacle.inBay ? job.option().placement.sigma : 0));
    }
    return sigma;
  };
  return std::hypot(sideSigma(way.narrowA), sideSigma(way.narrowB));
}

}  // namespace

WalkInput walkInput(const Job& job, std::span<const RoomObstacle> obstacles) {
  WalkInput input;
  input.floor = outline(job.room);
  for (const RoomObstacle& obstacle : obstacles) {
    if (isShell(obstacle) || obstacle.kind == ObstacleKind::Bystander) continue;
    if (!standsInTheWay(obstacle, kHeadHeight)) continue;
    input.obstacles.push_back(planOf(obstacle.solid));
  }
  input.from = strikePoints(job);
  return input;
}

std::vector<Way> waysOf(const Job& job, std::span<const RoomObstacle> obstacles) {
  WalkInput input = walkInput(job, obstacles);
  std::vector<Way> ways;
  for (const Opening& opening : job.room.openings) {
    const auto place = openingPlace(job.room, opening.id);
    if (!opening.isExit || !place || !opening.offset.known || !opening.width.known) continue;
    input.exits.push_back({place->segment(), place->inward});
    ways.emplace_back();
    ways.back().exit = opening.id;
  }
  const std::vector<WidestWay> widest = widestWays(input);
  for (std::size_t i = 0; i < ways.size(); ++i) {
    ways[i].path = widest[i].path;
    ways[i].clearWidth = widest[i].clearWidth;
    ways[i].narrowA = widest[i].narrowA;
    ways[i].narrowB = widest[i].narrowB;
    if (!ways[i].path.empty()) ways[i].sigma = gapSigma(job, obstacles, ways[i]);
  }
  return ways;
}

std::string sideName(std::span<const RoomObstacle> obstacles, const Vec2& at) {
  std::string wall;
  for (const RoomObstacle& obstacle : obstacles) {
    if (obstacle.kind == ObstacleKind::Bystander || !passesThrough(obstacle, at)) continue;
    if (!isShell(obstacle)) return obstacle.name;
    if (wall.empty()) wall = obstacle.name;
  }
  return wall;
}

std::vector<DoorSweep> doorSweeps(const Job& job) {
  std::vector<DoorSweep> sweeps;
  for (const Opening& opening : job.room.openings) {
    DoorSweep sweep{opening.id, {}, Verdict::Unknown};
    if (opening.kind == OpeningKind::HingedDoor && opening.swing == LeafSwing::IntoRoom) {
      sweep.sector = leafSector(job.room, opening);
    } else if (opening.kind == OpeningKind::SectionalDoor) {
      const auto door = sectionalDoor(job.room, opening);
      if (door && door->open) sweep.sector = planOf(*door->open);
    }
    if (!sweep.sector.empty()) sweeps.push_back(std::move(sweep));
  }
  return sweeps;
}

}  // namespace baywright
