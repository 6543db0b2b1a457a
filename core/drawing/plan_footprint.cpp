// SPDX-License-Identifier: Apache-2.0
#include "drawing/plan_footprint.h"

#include <algorithm>

#include "clearance/kit_bodies.h"
#include "drawing/bay_plan.h"
#include "drawing/fixture_outline.h"
#include "drawing/marks.h"
#include "drawing/silhouette.h"
#include "job/find.h"
#include "job/measurement_place.h"
#include "job/room_geometry.h"
#include "job/thing_lookup.h"
#include "optics/projector_body.h"
#include "units/length_text.h"

namespace baywright {
namespace {

using detail::BayPlan;

MiddleLine bayMiddle(const Placement& placement) {
  return {placement.bay.origin, placement.bay.down(), "the bay's middle line"};
}

PlanFootprint ofFrame(const Job& job, const Option& option) {
  const Frame& frame = option.kit.frame;
  const Placement& placement = option.placement;
  const BayPlan bay{placement.bay};
  PlanFootprint result;
  result.ring =
      bay.box(frame.behindScreen - frame.depth, frame.behindScreen, -frame.width / 2, frame.width / 2);
  result.middles = {bayMiddle(placement)};
  const double beside = job.requirements.frameBeside;
  const double behind = option.kit.screen.travel + job.requirements.frameBehind - frame.behindScreen;
  const Vec2 right = placement.bay.right();
  const std::string besideText = formatLength(beside, job.units) + " beside the frame";
  result.gaps = {{right, beside, besideText}, {-right, beside, besideText}};
  if (behind > 0) result.gaps.push_back({placement.bay.down(), behind, "room for the screen's travel"});
  return result;
}

PlanFootprint ofBox(const BayPlan& bay, const Vec2& centre, const Vec2& size, const std::string& what) {
  const Vec2 half = size / 2;
  PlanFootprint result;
  result.ring =
      bay.box(centre.x() - half.x(), centre.x() + half.x(), centre.y() - half.y(), centre.y() + half.y());
  result.middles = {{bay(centre.x(), centre.y()), bay.pose.down(), what}};
  return result;
}

PlanFootprint ofProjector(const Option& option) {
  const BayPlan bay{option.placement.bay};
  const ProjectorMount& mount = option.placement.projector;
  PlanFootprint result;
  result.middles = {{bay(mount.lens.x(), mount.lens.y()), option.placement.bay.down(), "the lens"}};
  const auto body = projectorBody(option.kit.projector, mount);
  if (body)
    result.ring = detail::silhouetteOf(*body, [&](const Vec3& p) { return bay(p.x(), p.y()); });
  else
    result.ring = {result.middles.front().through};
  return result;
}

PlanFootprint ofGolfer(const Job& job, const Golfer& golfer) {
  const Placement& placement = job.option().placement;
  const Vec3 strike = placement.strikePoint(golfer.hand);
  const Vec2 at = BayPlan{placement.bay}(strike.x(), strike.y());
  PlanFootprint result;
  result.ring = {at};
  result.middles = {{at, placement.bay.down(), "the strike point"}};
  return result;
}

PlanFootprint ofFixture(const Fixture& fixture) {
  PlanFootprint result;
  result.ring = outlineOf(fixture.shape);
  Vec2 along(1, 0);
  if (const auto* box = std::get_if<BoxShape>(&fixture.shape))
    along = {std::cos(box->heading), std::sin(box->heading)};
  if (std::holds_alternative<PrismShape>(fixture.shape)) return result;
  const Vec2 middle = centroid(Polygon{result.ring, {}});
  result.middles = {{middle, along, "the middle of " + fixture.name},
                    {middle, leftOf(along), "the middle of " + fixture.name}};
  return result;
}

PlanFootprint ofOpening(const Opening& opening, const OpeningPlace& place) {
  PlanFootprint result;
  result.ring = {place.start, place.end};
  result.middles = {{place.middle(), place.inward, "the middle of " + opening.name}};
  return result;
}

std::optional<PlanFootprint> ofKit(const Job& job, const Thing& thing) {
  const Option* option = optionOf(job, thing.id);
  if (!option) return std::nullopt;
  const BayPlan bay{option->placement.bay};
  const LaunchMonitor& monitor = option->kit.monitor;
  switch (thing.kind) {
    case ThingKind::Mat:
      return ofBox(bay, option->placement.matCentre, {option->kit.mat.length, option->kit.mat.width},
                   "the mat");
    case ThingKind::Monitor:
      return ofBox(bay, option->placement.monitor.head<2>(), monitor.size.head<2>(), "the monitor");
    case ThingKind::Projector:
      return ofProjector(*option);
    default:
      return ofFrame(job, *option);
  }
}

}  // namespace

std::optional<PlanFootprint> planFootprint(const Job& job, Id id) {
  const auto thing = findThing(job, id);
  if (!thing) return std::nullopt;
  switch (thing->kind) {
    case ThingKind::Option:
    case ThingKind::Frame:
    case ThingKind::Screen:
    case ThingKind::Mat:
    case ThingKind::Monitor:
    case ThingKind::Projector:
      return ofKit(job, *thing);
    case ThingKind::Golfer:
      return ofGolfer(job, *findById(job.golfers, id));
    case ThingKind::Club:
      return ofGolfer(job, *findById(job.golfers, thing->owner));
    case ThingKind::Fixture:
      return ofFixture(*findById(job.room.fixtures, id));
    case ThingKind::Bystander: {
      const Bystander& person = *findById(job.bystanders, id);
      return PlanFootprint{detail::circleRing(person.position, person.radius), {}, {}};
    }
    case ThingKind::Opening: {
      const auto place = openingPlace(job.room, id);
      return place ? std::optional(ofOpening(*findById(job.room.openings, id), *place)) : std::nullopt;
    }
    case ThingKind::CeilingPart: {
      const CeilingPart& part = *findById(job.room.ceiling, id);
      return part.region.empty() ? std::nullopt : std::optional(PlanFootprint{part.region, {}, {}});
    }
    case ThingKind::Measurement: {
      const Measurement& reading = *findById(job.measurements, id);
      return isFreeHeight(job.room, reading) ? std::optional(PlanFootprint{{reading.position}, {}, {}})
                                             : std::nullopt;
    }
    case ThingKind::Wall:
    case ThingKind::PlanScan:
    case ThingKind::RoomScan:
    case ThingKind::Original:
      return std::nullopt;
  }
  return std::nullopt;
}

}  // namespace baywright
