// SPDX-License-Identifier: Apache-2.0
#include "job/detail/angle.h"
#include "job/detail/editing.h"
#include "job/detail/place.h"
#include "job/edit_fixtures.h"
#include "job/edit_openings.h"
#include "job/edit_people.h"
#include "job/edit_room.h"
#include "job/edit_thing.h"
#include "job/measurement_place.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"

namespace baywright {
namespace {

Vec2 inBay(const BayPose& bay, const Vec2& vector) {
  return {vector.dot(bay.down()), vector.dot(bay.right())};
}

/// The placement that a thing of a bay stands in: its own option's, or the active one for golfers and clubs.
Placement& placementOf(Job& job, const Thing& thing) {
  const Option* owner = optionOf(job, thing.id);
  return (owner ? *findById(job.options, owner->id) : job.option()).placement;
}

Result<Job> translateInBay(Job job, const Thing& thing, const Vec2& by) {
  if (job.options.empty()) return detail::notThere("option");
  Placement& placement = placementOf(job, thing);
  const Vec2 step = inBay(placement.bay, by);
  switch (thing.kind) {
    case ThingKind::Mat:
      detail::moveMat(placement, step);
      break;
    case ThingKind::Monitor:
      placement.monitor += raised(step, 0);
      break;
    case ThingKind::Projector:
      placement.projector.lens += raised(step, 0);
      break;
    case ThingKind::Golfer:
    case ThingKind::Club: {
      const Golfer* golfer = findById(job.golfers, thing.kind == ThingKind::Club ? thing.owner : thing.id);
      detail::moveStrikePoint(placement, golfer->hand, step);
      break;
    }
    default:
      placement.bay.origin += by;
  }
  return validated(std::move(job));
}

Result<Job> translateCeiling(Job job, Id id, const Vec2& by) {
  CeilingPart& part = *findById(job.room.ceiling, id);
  if (part.region.empty())
    return fail(part.name + " covers the whole floor and cannot be moved.", {}, "Give it an outline first.");
  for (Vec2& corner : part.region) corner += by;
  part.anchor += by;
  return validated(std::move(job));
}

/// Puts a motion of the plan behind the scan's own map.
Result<Job> movePlan(Job job, const Thing& thing, const Mat3& motion) {
  PlanScan& scan = *findById(job.planScans, thing.id);
  if (scan.locked) return detail::cannot(thing, "moved", "Unlock it first.");
  scan.worldFromPixel = motion * scan.worldFromPixel;
  return validated(std::move(job));
}

Mat3 translation(const Vec2& by) {
  Mat3 motion = Mat3::Identity();
  motion.topRightCorner<2, 1>() = by;
  return motion;
}

Mat3 rotation(double angle, const Vec2& pivot) {
  Mat3 turn = Mat3::Identity();
  turn.topLeftCorner<2, 2>() = Eigen::Rotation2Dd(angle).toRotationMatrix();
  return translation(pivot) * turn * translation(-pivot);
}

Result<Job> rotateCeiling(Job job, const Thing& thing, double angle) {
  CeilingPart& part = *findById(job.room.ceiling, thing.id);
  if (part.region.empty()) return detail::cannot(thing, "turned", "Give it an outline first.");
  const Mat2 turn = Eigen::Rotation2Dd(angle).toRotationMatrix();
  const Vec2 pivot = *thing.position;
  for (Vec2& corner : part.region) corner = pivot + turn * (corner - pivot);
  part.anchor = pivot + turn * (part.anchor - pivot);
  part.slope = turn * part.slope;
  return validated(std::move(job));
}

}  // namespace

Result<Job> translate(Job job, Id id, const Vec2& by) {
  const auto thing = findThing(job, id);
  if (!thing) return detail::notThere("thing");
  switch (thing->kind) {
    case ThingKind::Wall: {
      const double inward = by.dot(wallLine(job.room, id)->inward);
      return moveWall(std::move(job), id, inward);
    }
    case ThingKind::Opening: {
      const auto place = openingPlace(job.room, id);
      if (!place) return detail::notThere("opening's wall");
      return moveOpening(std::move(job), id, by.dot(place->along));
    }
    case ThingKind::CeilingPart:
      return translateCeiling(std::move(job), id, by);
    case ThingKind::Fixture:
      return moveFixture(std::move(job), id, by);
    case ThingKind::Bystander:
      return moveBystander(std::move(job), id, by);
    case ThingKind::PlanScan:
      return movePlan(std::move(job), *thing, translation(by));
    case ThingKind::Measurement:
      if (Measurement& reading = *findById(job.measurements, id); isFreeHeight(job.room, reading)) {
        reading.position += by;
        return validated(std::move(job));
      }
      return detail::cannot(*thing, "moved", "Its place follows from the corners that it names.");
    case ThingKind::RoomScan:
      return detail::cannot(*thing, "moved", "Import it again at another place.");
    case ThingKind::Original:
      return detail::cannot(*thing, "moved", "Move the walls that came from it.");
    default:
      return translateInBay(std::move(job), *thing, by);
  }
}

Result<Job> rotate(Job job, Id id, double angle) {
  const auto thing = findThing(job, id);
  if (!thing) return detail::notThere("thing");
  switch (thing->kind) {
    case ThingKind::Option:
    case ThingKind::Frame:
    case ThingKind::Screen: {
      Placement& placement = placementOf(job, *thing);
      detail::turnBay(placement, angle, placement.bay.origin);
      return validated(std::move(job));
    }
    case ThingKind::Projector: {
      double& yaw = placementOf(job, *thing).projector.yaw;
      yaw = detail::wrappedAngle(yaw - angle);  // yaw runs clockwise on the plan
      return validated(std::move(job));
    }
    case ThingKind::Fixture:
      return turnFixture(std::move(job), id, angle);
    case ThingKind::CeilingPart:
      return rotateCeiling(std::move(job), *thing, angle);
    case ThingKind::PlanScan:
      return movePlan(std::move(job), *thing, rotation(angle, thing->position.value_or(Vec2::Zero())));
    default:
      return detail::cannot(*thing, "turned", "");
  }
}

}  // namespace baywright
