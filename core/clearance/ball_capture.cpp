// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>

#include "clearance/checks.h"
#include "clearance/quantities.h"
#include "clearance/wording.h"
#include "units/quantity_text.h"

namespace baywright {
namespace {

struct MeetsRow {
  Meets meets;
  std::string_view figure;
  std::string_view words;
};
constexpr std::array<MeetsRow, kMeetsCount> kRows = {{
    {Meets::Screen, "screen", "the screen"},
    {Meets::Surround, "surround", "what is round the screen"},
    {Meets::SideFabric, "side_fabric", "the side fabric"},
    {Meets::RoofFabric, "roof_fabric", "the roof fabric"},
    {Meets::FrameTube, "frame_tube", "a member of the frame"},
    {Meets::Floor, "floor", "the floor"},
    {Meets::Obstacle, "obstacle", "something in the room"},
    {Meets::Nothing, "nothing", "nothing in the bay"},
}};

/// Of the shots that must be caught, what may end on something that breaks: one in a thousand (invented).
constexpr double kBreakingShare = 0.001;

Finding blank(const CheckInput& input, const BallSetting& ball, const std::string& aspect) {
  const bool right = ball.zone.hand == Hand::Right;
  Finding finding;
  finding.check = "ball_capture";
  finding.key = std::string("ball_capture/") + (right ? "right" : "left") + aspect;
  finding.subjects = {input.option.kit.screen.id};
  finding.subject = right ? "Balls struck right-handed" : "Balls struck left-handed";
  finding.unit = MarginUnit::Share;
  finding.source = "ball flight after Bearman & Harvey 1976; shares as agreed in the job's requirements";
  return finding;
}

std::string share(double value, const CheckInput& input) {
  return formatQuantity(value, QuantityKind::Ratio, input.job.units);
}

/// What is taken by obstacles is known less well, but no more of it can be wrong than there is.
double caughtError(const Capture& capture) {
  return std::hypot(kShareError, std::min(kObstacleShareError, capture.of(Meets::Obstacle)));
}

/// What is met, by its name where it is one thing in the room.
std::string wordsFor(const CheckInput& input, const Capture& capture, const MeetsRow& row) {
  if (row.meets != Meets::Obstacle || capture.hits.empty()) return std::string(row.words);
  const auto what = std::find_if(input.obstacles.begin(), input.obstacles.end(),
                                 [&](const RoomObstacle& o) { return o.id == capture.hits.front().id; });
  return what == input.obstacles.end() ? std::string(row.words) : what->name;
}

/// What to move.
std::string hintFor(Meets most) {
  switch (most) {
    case Meets::Obstacle:
      return " Move that out of the way, or strike nearer to the screen.";
    case Meets::Floor:
      return " Such shots are topped: no frame catches them.";
    case Meets::Screen:
      return {};
    default:
      return " Striking nearer to the screen, or a larger screen, catches more.";
  }
}

void addCaught(CheckResult& result, const CheckInput& input, const BallSetting& ball) {
  Finding finding = blank(input, ball, "");
  const Capture& capture = ball.zone.capture;
  const double wanted = input.job.requirements.captureShare;
  finding.margin = Uncertain{capture.onScreen() - wanted, caughtError(capture)};
  finding.verdict = verdictOf(*finding.margin);
  finding.sentence = finding.subject + ": " + share(capture.onScreen(), input) + " end on the screen, " +
                     share(wanted, input) + " are wanted";
  const MeetsRow* most = nullptr;
  for (const MeetsRow& row : kRows) {
    if (row.meets != Meets::Screen && (!most || capture.of(row.meets) > capture.of(most->meets))) most = &row;
  }
  if (capture.of(most->meets) > kShareError)
    finding.sentence += "; most of the others meet " + wordsFor(input, capture, *most);
  finding.sentence += ".";
  if (finding.verdict != Verdict::Clear) finding.sentence += hintFor(most->meets);
  result.findings.push_back(std::move(finding));
}

void addBreaking(CheckResult& result, const CheckInput& input, const BallSetting& ball) {
  for (const ObstacleHit& hit : ball.zone.capture.hits) {
    const auto what = std::find_if(input.obstacles.begin(), input.obstacles.end(),
                                   [&](const RoomObstacle& o) { return o.id == hit.id && o.breakable; });
    if (what == input.obstacles.end()) continue;
    Finding finding = blank(input, ball, "/" + idText(hit.id));
    finding.subjects.push_back(hit.id);
    finding.margin = Uncertain{kBreakingShare - hit.share, kObstacleShareError};
    finding.verdict = verdictOf(*finding.margin);
    const BayPose& bay = input.option.placement.bay;
    finding.points = std::pair(worldFromBay(bay, ball.zone.ball), worldFromBay(bay, hit.arrival.position));
    finding.sentence =
        finding.subject + ": " + share(hit.share, input) + " meet " + what->name + " at up to " +
        formatQuantity(hit.arrival.velocity.norm(), QuantityKind::Speed, input.job.units) + ".";
    result.findings.push_back(std::move(finding));
  }
}

void addFigures(CheckResult& result, const BallSetting& ball) {
  const std::string_view hand = ball.zone.hand == Hand::Right ? "right" : "left";
  for (const MeetsRow& row : kRows) {
    result.figures.push_back(
        {figureName({"ball", hand, "share", row.figure}), ball.zone.capture.of(row.meets), "1"});
  }
  const auto add = [&](std::string_view name, double value, const char* unit) {
    result.figures.push_back({figureName({"ball", hand, name}), value, unit});
  };
  add("air_density", ball.zone.air.density, "kg/m3");
  if (ball.zone.heightAtScreen) add("height_at_screen", *ball.zone.heightAtScreen, "m");
  if (ball.zone.highShotAtScreen) add("high_shot_at_screen", *ball.zone.highShotAtScreen, "m");
  if (!ball.zone.meanShot) return;
  const ShotFigures& shot = *ball.zone.meanShot;
  if (shot.atScreen) {
    add("time_to_screen", shot.atScreen->time, "s");
    add("speed_at_screen", shot.atScreen->speed, "m/s");
    add("energy_at_screen", shot.atScreen->energy, "J");
  }
  add("carry", shot.carry, "m");
  add("apex", shot.apex, "m");
  add("flight_time", shot.time, "s");
  add("landing_speed", shot.landingSpeed, "m/s");
  add("landing_angle", shot.landingAngle, "rad");
}

}  // namespace

CheckResult checkBallCapture(const CheckInput& input) {
  CheckResult result;
  for (const BallSetting& ball : input.balls) {
    if (ball.problem) {
      Finding finding = blank(input, ball, "");
      finding.sentence = ball.problem->sentence();
      result.findings.push_back(std::move(finding));
      continue;
    }
    addCaught(result, input, ball);
    addBreaking(result, input, ball);
    addFigures(result, ball);
  }
  return result;
}

}  // namespace baywright
