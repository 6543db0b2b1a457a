// SPDX-License-Identifier: Apache-2.0
#include "clearance/checks.h"
#include "clearance/quantities.h"
#include "clearance/swing_findings.h"
#include "geometry/polygon_sets.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

bool isOverhead(const RoomObstacle& obstacle) {
  switch (obstacle.kind) {
    case ObstacleKind::Ceiling:
    case ObstacleKind::SectionalDoor:
    case ObstacleKind::DoorTrack:
      return true;
    case ObstacleKind::Fixture:
      return obstacle.overhead;
    default:
      return false;
  }
}

/// Parts of the floor smaller than this are slips between a region and the walls, square metres.
constexpr double kSlip = 0.01;

/// The floor that no ceiling part covers.
PolygonSet bareFloor(const Room& room) {
  PolygonSet covered;
  for (const CeilingPart& part : room.ceiling) covered.push_back({ceilingRegion(room, part), {}});
  const auto bare = differenceOf({Polygon{outline(room), {}}}, covered);
  return bare ? *bare : PolygonSet{};
}

Ring planOf(const Aabb3& bounds, double grow) {
  const Vec2 low = flat(bounds.low).array() - grow;
  const Vec2 high = flat(bounds.high).array() + grow;
  return {low, {high.x(), low.y()}, high, {low.x(), high.y()}};
}

void addUncovered(CheckResult& result, const CheckInput& input) {
  const PolygonSet bare = bareFloor(input.job.room);
  if (area(bare) < kSlip) return;
  for (const SwingSetting& setting : input.swings) {
    if (!setting.zone.swing) continue;
    const auto under =
        intersectionOf(bare, {Polygon{planOf(setting.expected.bounds, setting.zone.clearance), {}}});
    if (!under || area(*under) < kSlip) continue;
    Finding finding;
    finding.check = "swing_headroom";
    finding.key =
        "swing_headroom/" + idText(setting.zone.golfer) + "/" + idText(setting.zone.club) + "/uncovered";
    finding.subjects = {setting.zone.golfer, setting.zone.club};
    finding.subject = swingSubject(setting);
    finding.sentence = "Measure the ceiling above " + setting.golfer->name + ": " +
                       (input.job.room.ceiling.empty() ? "the room has no ceiling yet."
                                                       : "part of the floor there has no ceiling yet.");
    finding.source = "a clearance needs a measurement";
    result.findings.push_back(std::move(finding));
  }
}

}  // namespace

CheckResult checkSwingHeadroom(const CheckInput& input) {
  CheckResult result = swingFindings(input, {"swing_headroom", isOverhead});
  if (input.job.room.walls.size() >= 3) addUncovered(result, input);
  return result;
}

}  // namespace baywright
