// SPDX-License-Identifier: Apache-2.0
#include "drawing/view_move.h"

#include "drawing/thing_heights.h"
#include "job/edit.h"
#include "job/find.h"
#include "job/measurement_place.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"

namespace baywright {
namespace {

Result<Job> raise(Job job, const Thing& thing, double by) {
  const auto heights = heightsOf(job, thing.id);
  if (by == 0 || !heights || !heights->canRise) return job;
  switch (thing.kind) {
    case ThingKind::Projector:
      return moveProjector(std::move(job), {0, 0, by});
    case ThingKind::Monitor:
      return moveMonitor(std::move(job), {0, 0, by});
    case ThingKind::Fixture: {
      Fixture fixture = *findById(job.room.fixtures, thing.id);
      fixture.bottom.value += by;
      fixture.top.value += by;
      return setFixture(std::move(job), fixture);
    }
    case ThingKind::Opening: {
      Opening opening = *findById(job.room.openings, thing.id);
      opening.sill.value = std::max(0.0, opening.sill.value + by);
      return setOpening(std::move(job), opening);
    }
    case ThingKind::CeilingPart: {
      CeilingPart part = *findById(job.room.ceiling, thing.id);
      part.height.value += by;
      return setCeilingPart(std::move(job), part);
    }
    default:
      return job;
  }
}

bool belongsToRoom(ThingKind kind) {
  return kind == ThingKind::Fixture || kind == ThingKind::Opening || kind == ThingKind::CeilingPart;
}

}  // namespace

Vec2 horizontalOf(const DrawnView& view, const Job& job) {
  const BayPose& bay = job.option().placement.bay;
  switch (view.kind) {
    case ViewKind::DownRange:
      return bay.right();
    case ViewKind::Side:
      return bay.down();
    case ViewKind::Wall:
      if (const auto wall = wallLine(job.room, view.wall)) return -wall->along;
      break;
    case ViewKind::Plan:
    case ViewKind::ScreenFace:
      break;
  }
  return {1, 0};
}

Vec2 viewShift(ViewKind view, const BayPose& from, const BayPose& to) {
  const Vec3 moved = bayFromWorld(to, raised(from.origin, 0));
  switch (view) {
    case ViewKind::DownRange:
      return {moved.y(), 0};
    case ViewKind::Side:
      return {moved.x(), 0};
    case ViewKind::Wall:
    case ViewKind::Plan:
    case ViewKind::ScreenFace:
      break;
  }
  return Vec2::Zero();
}

bool canMoveIn(const DrawnView& view, const Job& job, Id id) {
  const auto thing = findThing(job, id);
  if (!thing || view.kind == ViewKind::ScreenFace) return false;
  if (view.kind == ViewKind::Wall && !belongsToRoom(thing->kind)) return false;
  switch (thing->kind) {
    case ThingKind::Measurement:
      return view.kind == ViewKind::Plan && isFreeHeight(job.room, *findById(job.measurements, id));
    case ThingKind::Wall:
    case ThingKind::RoomScan:
    case ThingKind::Original:
      return false;
    case ThingKind::PlanScan:
      return view.kind == ViewKind::Plan && !findById(job.planScans, id)->locked;
    case ThingKind::CeilingPart:
      return view.kind != ViewKind::Plan;
    default:
      return true;
  }
}

Result<Job> moveInView(const DrawnView& view, Job job, Id id, const Vec2& by) {
  const auto thing = findThing(job, id);
  if (!thing) return fail("The thing is not in this job any more.");
  if (view.kind == ViewKind::Plan) return translate(std::move(job), id, by);
  if (!canMoveIn(view, job, id))
    return fail(thing->name + " cannot be moved here.", {}, "Move it on the plan.");
  const bool staysOverThePlan = thing->kind == ThingKind::CeilingPart || by.x() == 0;
  if (staysOverThePlan) return raise(std::move(job), *thing, by.y());
  const Vec2 horizontal = horizontalOf(view, job);
  auto moved = translate(std::move(job), id, by.x() * horizontal);
  if (!moved) return moved;
  return raise(std::move(*moved), *thing, by.y());
}

}  // namespace baywright
