// SPDX-License-Identifier: Apache-2.0
#include <cmath>

#include "clearance/checks.h"
#include "clearance/freeing_move.h"
#include "clearance/quantities.h"
#include "clearance/solid_margin.h"
#include "clearance/wording.h"
#include "geometry/rigid_map.h"
#include "job/room_geometry.h"
#include "units/length_text.h"

namespace baywright {
namespace {

/// Free height under what hangs where people walk: 80 in (ADA Standards, fig. 8(a); IBC 1003.3.1 alike, from
/// memory).
constexpr double kHeadHeight = 2.032;

Finding blank(const CheckInput& input, const std::string& aspect) {
  Finding finding;
  finding.check = "projector_mount";
  finding.key = "projector_mount/" + aspect;
  finding.subjects = {input.option.kit.projector.id};
  finding.subject = "Projector";
  return finding;
}

const RoomObstacle* bodyOf(const CheckInput& input) {
  for (const RoomObstacle& obstacle : input.obstacles) {
    if (obstacle.kind == ObstacleKind::Projector) return &obstacle;
  }
  return nullptr;
}

/// How far to move the projector to be clear of all of these.
std::string hintText(const CheckInput& input, const PutBody& put, const std::vector<std::size_t>& which,
                     const SolidMargin& worst) {
  const UnitSystem& units = input.job.units;
  const PlaceAfter after = [&](const Vec3& shift) -> std::optional<TightPlace> {
    PutBody moved = put;
    moved.body = transformed(put.body, RigidMap{Mat3::Identity(), shift});
    const auto there = tightest(moved, input.obstacles, which);
    return there ? std::optional(TightPlace{there->closest, there->margin}) : std::nullopt;
  };
  const TightPlace now{worst.closest, worst.margin};
  if (const auto drop = freeingDrop(now, after, units))
    return " Hanging it " + formatLength(*drop, units) + " lower would clear it.";
  const auto move = freeingMove(now, after, input.option.placement.bay, units);
  return move ? movingText("the projector", move->distance, wayInBay(move->way), units) : std::string();
}

/// The body among what is fixed in the room: it may touch nothing.
void addRoom(CheckResult& result, const CheckInput& input, const ConvexPolyhedron& body) {
  PutBody put{body};
  put.placeSigma = input.option.placement.sigma;
  std::vector<std::size_t> which;
  for (std::size_t i = 0; i < input.obstacles.size(); ++i) {
    const RoomObstacle& obstacle = input.obstacles[i];
    if (!obstacle.inBay && obstacle.kind != ObstacleKind::Bystander && obstacle.missing.empty())
      which.push_back(i);
  }
  const auto worst = tightest(put, input.obstacles, which);
  if (!worst) return;
  const RoomObstacle& obstacle = input.obstacles[worst->obstacle];
  Finding finding = blank(input, "room");
  finding.subjects.push_back(obstacle.id);
  finding.margin = worst->margin;
  finding.verdict = verdictOf(worst->margin);
  finding.points = std::pair(worst->closest.onFirst, worst->closest.onSecond);
  finding.sentence = finding.verdict == Verdict::Blocked
                         ? "The projector's body runs " + missingText(worst->margin, input.job.units) +
                               " into " + obstacle.name + "."
                         : "Projector: " + marginText(worst->margin, "at " + obstacle.name, input.job.units);
  finding.sentence += hintText(input, put, which, *worst);
  finding.source = "two bodies cannot share a place";
  result.findings.push_back(std::move(finding));
}

void addInside(CheckResult& result, const CheckInput& input, const ConvexPolyhedron& body) {
  const Vec2 at = flat(body.middle());
  if (isInside(input.job.room, at)) return;
  const BoundaryPoint edge = closestOnBoundary(Polygon{outline(input.job.room), {}}, at);
  Finding finding = blank(input, "inside");
  finding.margin = Uncertain{-edge.distance, input.option.placement.sigma};
  finding.verdict = Verdict::Blocked;
  finding.points = std::pair(body.middle(), raised(edge.point, body.middle().z()));
  finding.sentence =
      "The projector is " + missingText(*finding.margin, input.job.units) + " outside the room.";
  finding.source = "the floor as surveyed";
  result.findings.push_back(std::move(finding));
}

/// A pole needs a ceiling to hang from, or a room without one measured there to be asked for.
void addCeiling(CheckResult& result, const CheckInput& input, const ConvexPolyhedron& body) {
  const auto above = ceilingAt(input.job.room, flat(body.middle()));
  bool known = above.has_value();
  for (const CeilingPart& part : input.job.room.ceiling) {
    if (above && part.id == above->part) known = part.height.known;
  }
  if (known) {
    result.figures.push_back({"mount.drop", above->height - input.option.placement.projector.lens.z(), "m"});
    return;
  }
  if (!isInside(input.job.room, flat(body.middle()))) return;
  Finding finding = blank(input, "ceiling");
  finding.sentence = "Measure the ceiling above the projector: its mount hangs from there.";
  finding.source = "a mount needs a measured height";
  result.findings.push_back(std::move(finding));
}

void addHeadHeight(CheckResult& result, const CheckInput& input, const ConvexPolyhedron& body) {
  const Vec3* lowest = &body.vertices().front();
  for (const Vec3& corner : body.vertices()) {
    if (corner.z() < lowest->z()) lowest = &corner;
  }
  Finding finding = blank(input, "head");
  finding.margin = Uncertain{lowest->z() - kHeadHeight, input.option.placement.sigma};
  finding.verdict = verdictOf(*finding.margin);
  finding.points = std::pair(*lowest, Vec3(lowest->x(), lowest->y(), kHeadHeight));
  finding.sentence = "The projector hangs " + formatLength(lowest->z(), input.job.units) +
                     " above the floor; people pass under " + formatLength(kHeadHeight, input.job.units);
  if (finding.verdict == Verdict::Blocked)
    finding.sentence += ": hang it " + missingText(*finding.margin, input.job.units) + " higher";
  finding.sentence += ".";
  finding.source = "80 in of headroom: ADA Standards fig. 8(a), as guidance; the local code decides";
  result.findings.push_back(std::move(finding));
}

}  // namespace

CheckResult checkProjectorMount(const CheckInput& input) {
  CheckResult result;
  const RoomObstacle* projector = bodyOf(input);
  if (!projector) return result;
  const auto& body = std::get<ConvexPolyhedron>(projector->solid);
  if (input.job.room.walls.size() >= 3) {
    addRoom(result, input, body);
    addInside(result, input, body);
  }
  if (input.option.placement.projector.kind == MountKind::Ceiling) {
    if (input.job.room.walls.size() >= 3) addCeiling(result, input, body);
    addHeadHeight(result, input, body);
  }
  if (input.picture.zone && input.picture.zone->mountingZone) {
    const MountingZone& zone = *input.picture.zone->mountingZone;
    if (zone.farthest > 0) {
      result.figures.push_back({"mount.nearest", zone.nearest, "m"});
      result.figures.push_back({"mount.farthest", zone.farthest, "m"});
      const double area = zone.region.size() < 3 ? 0 : std::abs(signedArea(zone.region));
      result.figures.push_back({"mount.zone_area", area, "m2"});
    }
  }
  return result;
}

}  // namespace baywright
