// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <limits>

#include "clearance/checks.h"
#include "clearance/quantities.h"
#include "clearance/swing_findings.h"
#include "clearance/wording.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

bool isRoom(const RoomObstacle& obstacle) {
  switch (obstacle.kind) {
    case ObstacleKind::Wall:
    case ObstacleKind::Window:
    case ObstacleKind::Bystander:
      return true;
    case ObstacleKind::Fixture:  // what is as flat as a rug is stood on
      return !obstacle.overhead && standsInTheWay(obstacle, std::numeric_limits<double>::infinity());
    default:
      return false;
  }
}

Finding unknown(const std::string& aspect, std::vector<Id> subjects, const std::string& subject,
                const std::string& sentence) {
  Finding finding;
  finding.check = "swing_room";
  finding.key = "swing_room/" + aspect;
  finding.subjects = std::move(subjects);
  finding.subject = subject;
  finding.sentence = sentence;
  finding.source = "a clearance needs a measurement";
  return finding;
}

void addWhatIsMissing(CheckResult& result, const CheckInput& input) {
  if (input.job.room.walls.empty()) {
    result.findings.push_back(
        unknown("walls", {}, "Room",
                "The room has no walls yet: measure it, trace a plan, or start from a simple shape."));
  }
  const bool somebody = std::any_of(input.job.golfers.begin(), input.job.golfers.end(),
                                    [](const Golfer& golfer) { return golfer.swings; });
  if (input.swings.empty() && !somebody) {
    result.findings.push_back(
        unknown("golfers", {}, "Golfers", "Nobody swings yet: add a golfer with a club."));
  }
  for (const Golfer& golfer : input.job.golfers) {
    if (!golfer.swings || !golfer.clubs.empty()) continue;
    result.findings.push_back(
        unknown(idText(golfer.id) + "/clubs", {golfer.id}, golfer.name,
                golfer.name + " has no club yet: add the longest one to be swung here."));
  }
  for (const SwingSetting& setting : input.swings) {
    if (!setting.problem) continue;
    result.findings.push_back(unknown(
        idText(setting.zone.golfer) + "/" + idText(setting.zone.club) + "/swing",
        {setting.zone.golfer, setting.zone.club}, swingSubject(setting), setting.problem->sentence()));
  }
}

/// Strike points out of the room: distances to walls say nothing there.
void addOutside(CheckResult& result, const CheckInput& input) {
  const Ring floor = outline(input.job.room);
  if (floor.size() < 3) return;
  for (const BallSetting& ball : input.balls) {
    const Vec3 at =
        worldFromBay(input.option.placement.bay, input.option.placement.strikePoint(ball.zone.hand));
    if (isInside(input.job.room, flat(at))) continue;
    const BoundaryPoint edge = closestOnBoundary(Polygon{floor, {}}, flat(at));
    const std::string hand = ball.zone.hand == Hand::Right ? "right" : "left";
    Finding finding = unknown("outside/" + hand, {input.option.kit.mat.id}, "Strike point", "");
    finding.margin = Uncertain{-edge.distance, input.option.placement.sigma};
    finding.verdict = Verdict::Blocked;
    finding.points = std::pair(at, raised(edge.point, at.z()));
    finding.sentence = "The " + hand + "-hander's strike point is " +
                       missingText(*finding.margin, input.job.units) + " outside the room. Move the bay.";
    finding.source = "the floor as surveyed";
    result.findings.push_back(std::move(finding));
  }
}

void addFigures(CheckResult& result, const SwingSetting& setting) {
  const std::string swing = figureName({"swing", idText(setting.zone.golfer), idText(setting.zone.club)});
  const auto add = [&](const std::string& prefix, const EnvelopeFigures& figures) {
    const auto addExtreme = [&](const char* name, const Extreme& extreme) {
      result.figures.push_back({prefix + name, extreme.value, "m"});
      result.figures.push_back({prefix + name + ".moment", extreme.moment, "1"});
    };
    addExtreme(".highest", figures.highest);
    addExtreme(".behind", figures.behindGolfer);
    addExtreme(".toward_target", figures.towardTarget);
    addExtreme(".away", figures.awayFromTarget);
    addExtreme(".beyond_ball", figures.beyondBall);
  };
  add(swing, setting.zone.swing->expected.figures);
  add(swing + ".bound", setting.zone.swing->fullExtension.figures);
  const SwingPath& path = setting.zone.swing->path;
  const AddressPosture& posture = path.posture;
  result.figures.push_back({swing + ".posture.hub_height", posture.hub.z(), "m"});
  result.figures.push_back({swing + ".posture.hub_to_ball", -posture.hub.y(), "m"});
  result.figures.push_back({swing + ".posture.toes_to_ball", posture.toesToBall(path.body), "m"});
  result.figures.push_back({swing + ".posture.arm", posture.arm(), "m"});
  result.figures.push_back({swing + ".posture.spine_tilt", posture.spineTilt, "rad"});
  result.figures.push_back({swing + ".posture.shaft_slope", posture.shaftSlope, "rad"});
  result.figures.push_back({swing + ".posture.plane_slope", posture.planeSlope, "rad"});
  result.figures.push_back({swing + ".ceiling_needed",
                            setting.zone.strikePoint.z() +
                                setting.zone.swing->expected.figures.highest.value + setting.zone.clearance,
                            "m"});
  result.figures.push_back({swing + ".sigma_up", setting.zone.swing->expected.sigmaUp, "m"});
  result.figures.push_back({swing + ".sigma_level", setting.zone.swing->expected.sigmaLevel, "m"});
}

}  // namespace

CheckResult checkSwingRoom(const CheckInput& input) {
  CheckResult result = swingFindings(input, {"swing_room", isRoom, true});
  addWhatIsMissing(result, input);
  addOutside(result, input);
  for (const SwingSetting& setting : input.swings) {
    if (setting.zone.swing) addFigures(result, setting);
  }
  return result;
}

}  // namespace baywright
