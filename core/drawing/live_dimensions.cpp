// SPDX-License-Identifier: Apache-2.0
#include "drawing/live_dimensions.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "drawing/plan_footprint.h"
#include "drawing/room_ray.h"
#include "drawing/thing_heights.h"
#include "drawing/view_move.h"
#include "drawing/wall_face.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"

namespace baywright {
namespace {

/// Walls whose normals differ by less face the same way: ten degrees.
constexpr double kSameWay = 0.985;
constexpr double kTogether = 1e-6;  // metres, see snap_rules.cpp

LiveDimension between(const Vec2& from, const Vec2& to, const Vec2& grow, std::string what) {
  return {std::move(what), from, to, (to - from).norm(), grow};
}

/// From the part of the ring that is nearest to the wall's line, at the middle of what both share along it.
std::optional<LiveDimension> toWall(const WallLine& wall, const Ring& ring) {
  double nearest = std::numeric_limits<double>::infinity();
  for (const Vec2& corner : ring) nearest = std::min(nearest, (corner - wall.start).dot(wall.inward));
  if (nearest < 0) return std::nullopt;
  double low = std::numeric_limits<double>::infinity();
  double high = -low;
  for (const Vec2& corner : ring) {
    if ((corner - wall.start).dot(wall.inward) > nearest + kTogether) continue;
    low = std::min(low, (corner - wall.start).dot(wall.along));
    high = std::max(high, (corner - wall.start).dot(wall.along));
  }
  low = std::max(low, 0.0);
  high = std::min(high, wall.length);
  if (high < low) return std::nullopt;
  const Vec2 to = wall.at((low + high) / 2);
  return between(to + nearest * wall.inward, to, wall.inward, "to wall " + wall.name);
}

bool isInSight(const Room& room, const LiveDimension& dimension) {
  const auto clear = detail::distanceToWall(room, dimension.from, -dimension.grow);
  return clear && *clear > dimension.value - kTogether;
}

std::vector<LiveDimension> toWalls(const Room& room, const Ring& ring) {
  std::vector<LiveDimension> found;
  for (const WallLine& wall : wallLines(room)) {
    const auto dimension = toWall(wall, ring);
    if (dimension && isInSight(room, *dimension)) found.push_back(*dimension);
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.value < b.value; });
  std::vector<LiveDimension> result;
  for (LiveDimension& dimension : found) {
    const bool known = std::any_of(result.begin(), result.end(), [&](const LiveDimension& other) {
      return other.grow.dot(dimension.grow) > kSameWay;
    });
    if (!known) result.push_back(std::move(dimension));
  }
  return result;
}

std::vector<LiveDimension> alongWall(const Room& room, const Opening& opening) {
  const auto place = openingPlace(room, opening.id);
  const auto wall = wallLine(room, opening.wall);
  if (!place || !wall) return {};
  return {between(place->start, wall->start, wall->along, "from the start of wall " + wall->name),
          between(place->end, wall->end, -wall->along, "from the end of wall " + wall->name)};
}

std::vector<LiveDimension> besideWall(const Room& room, Id id) {
  const auto lines = wallLines(room);
  const auto found =
      std::find_if(lines.begin(), lines.end(), [&](const WallLine& line) { return line.wall == id; });
  if (found == lines.end() || lines.size() < 3) return {};
  const auto at = static_cast<std::size_t>(found - lines.begin());
  const WallLine& before = lines[(at + lines.size() - 1) % lines.size()];
  const WallLine& after = lines[(at + 1) % lines.size()];
  return {between(before.end, before.start, before.along, "length of wall " + before.name),
          between(after.start, after.end, -after.along, "length of wall " + after.name)};
}

std::vector<LiveDimension> onPlan(const Job& job, const Thing& thing) {
  if (thing.kind == ThingKind::Opening) return alongWall(job.room, *findById(job.room.openings, thing.id));
  if (thing.kind == ThingKind::Wall) return besideWall(job.room, thing.id);
  const auto footprint = planFootprint(job, thing.id);
  return footprint ? toWalls(job.room, footprint->ring) : std::vector<LiveDimension>{};
}

/// The lens against what it throws at.
void addLens(std::vector<LiveDimension>& dimensions, ViewKind view, const Vec3& lens) {
  if (view == ViewKind::Side) {
    const Vec2 at(lens.x(), lens.z());
    dimensions.push_back(between(at, {0, lens.z()}, {-1, 0}, "from the lens to the screen"));
    return;
  }
  const double side = lens.y() < 0 ? -1 : 1;
  dimensions.push_back(between({lens.y(), lens.z()}, {0, lens.z()}, {side, 0}, "from the bay's middle line"));
}

std::vector<LiveDimension> inElevation(const DrawnView& view, const Job& job, const Thing& thing) {
  std::vector<LiveDimension> dimensions;
  const auto heights = heightsOf(job, thing.id);
  if (!heights) return dimensions;
  const double x = viewFromWorld(view, job, raised(heights->at, 0)).x();
  const auto ceiling = ceilingHeightAt(job.room, heights->at);
  if (thing.kind == ThingKind::CeilingPart)
    return {between({x, heights->bottom}, {x, 0}, {0, 1}, "above the floor")};
  if (!heights->canRise) return dimensions;
  if (thing.kind == ThingKind::Projector) {
    const Vec3& lens = job.option().placement.projector.lens;
    dimensions.push_back(between({x, lens.z()}, {x, 0}, {0, 1}, "from the lens to the floor"));
    addLens(dimensions, view.kind, lens);
  } else {
    dimensions.push_back(between({x, heights->bottom}, {x, 0}, {0, 1}, "above the floor"));
  }
  if (ceiling && *ceiling >= heights->top)
    dimensions.push_back(between({x, heights->top}, {x, *ceiling}, {0, -1}, "below the ceiling"));
  return dimensions;
}

std::vector<LiveDimension> onWall(const DrawnView& view, const Job& job, const Thing& thing) {
  const auto heights = heightsOf(job, thing.id);
  const auto box = faceBoxOf(job.room, view.wall, thing.id);
  if (!heights || !box) return inElevation(view, job, thing);
  return faceDimensions(job.room, view.wall, *box, heights->canRise);
}

}  // namespace

std::vector<LiveDimension> liveDimensions(const DrawnView& view, const Job& job, Id id) {
  const auto thing = findThing(job, id);
  if (!thing) return {};
  switch (view.kind) {
    case ViewKind::Plan:
      return onPlan(job, *thing);
    case ViewKind::DownRange:
    case ViewKind::Side:
      return inElevation(view, job, *thing);
    case ViewKind::Wall:
      return onWall(view, job, *thing);
    case ViewKind::ScreenFace:
      break;
  }
  return {};
}

std::vector<LiveDimension> wallDistances(const Room& room, const Vec2& point) {
  return toWalls(room, {point});
}

Result<Job> withDimension(const DrawnView& view, Job job, Id thing, const LiveDimension& dimension,
                          double value) {
  return moveInView(view, std::move(job), thing, pointWith(dimension, Vec2::Zero(), value));
}

Vec2 pointWith(const LiveDimension& dimension, const Vec2& point, double value) {
  return point + (value - dimension.value) * dimension.grow;
}

LiveDimension dimensionBetween(const Vec2& from, const Vec2& to, std::string what) {
  const double length = (to - from).norm();
  return {std::move(what), from, to, length, length > 0 ? Vec2((to - from) / length) : Vec2(1, 0)};
}

}  // namespace baywright
