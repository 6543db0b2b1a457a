// SPDX-License-Identifier: Apache-2.0
#include "drawing/turn.h"

#include <cmath>
#include <limits>

#include "job/edit_fixtures.h"
#include "job/edit_thing.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"

namespace baywright {
namespace {

constexpr double kStep = kPi / 12;
/// Walls that call for the same turn but for rounding: the first one is named.
constexpr double kSameTurn = 1e-9;

/// The angle that brings `from` to the nearest multiple of `step` beyond `zero`.
double toNearest(double from, double zero, double step) {
  return std::remainder(zero - from, step);
}

std::string degrees(double radians) {
  const double whole = std::round(radians * 180 / kPi);
  return std::to_string(static_cast<int>(std::remainder(whole, 360))) + "°";
}

}  // namespace

std::optional<Turnable> turnableOf(const Job& job, Id id) {
  const auto thing = findThing(job, id);
  if (!thing || !thing->position) return std::nullopt;
  const Option* option = optionOf(job, id);
  switch (thing->kind) {
    case ThingKind::Option:
    case ThingKind::Frame:
    case ThingKind::Screen:
      return Turnable{option->placement.bay.origin, option->placement.bay.heading};
    case ThingKind::Projector:
      return Turnable{*thing->position, option->placement.bay.heading - option->placement.projector.yaw};
    case ThingKind::Fixture: {
      const FixtureShape& shape = findById(job.room.fixtures, id)->shape;
      if (std::holds_alternative<CylinderShape>(shape)) return std::nullopt;
      const auto* box = std::get_if<BoxShape>(&shape);
      return Turnable{middleOf(shape), box ? box->heading : 0};
    }
    case ThingKind::CeilingPart:
      if (findById(job.room.ceiling, id)->region.empty()) return std::nullopt;
      return Turnable{*thing->position, 0};
    case ThingKind::PlanScan:
      if (findById(job.planScans, id)->locked) return std::nullopt;
      return Turnable{*thing->position, 0};
    default:
      return std::nullopt;
  }
}

Vec2 pointAhead(const Turnable& turnable, double distance) {
  return turnable.pivot + distance * Vec2(std::cos(turnable.heading), std::sin(turnable.heading));
}

double headingAfterDrag(const Turnable& turnable, const Vec2& from, const Vec2& to) {
  const Vec2 a = from - turnable.pivot;
  const Vec2 b = to - turnable.pivot;
  return turnable.heading + std::atan2(cross(a, b), a.dot(b));
}

SnappedHeading snappedHeading(const Job& job, double heading) {
  double least = kTurnReach;
  SnappedHeading best{heading, {}};
  for (const WallLine& wall : wallLines(job.room)) {
    const double wallHeading = std::atan2(wall.along.y(), wall.along.x());
    const double turn = toNearest(heading, wallHeading, kPi / 2);
    if (std::abs(turn) >= least - kSameTurn) continue;
    least = std::abs(turn);
    const Vec2 along(std::cos(heading), std::sin(heading));
    const bool isParallel = std::abs(along.dot(wall.along)) > std::abs(along.dot(wall.inward));
    best = {heading + turn, (isParallel ? "parallel to wall " : "square to wall ") + wall.name};
  }
  if (!best.what.empty()) return best;
  const double turn = toNearest(heading, 0, kStep);
  if (std::abs(turn) < kTurnReach) best = {heading + turn, degrees(heading + turn)};
  return best;
}

Result<Job> turnedTo(Job job, Id thing, double heading) {
  const auto turnable = turnableOf(job, thing);
  const double by = turnable ? std::remainder(heading - turnable->heading, 2 * kPi) : 0;
  return rotate(std::move(job), thing, by);
}

}  // namespace baywright
