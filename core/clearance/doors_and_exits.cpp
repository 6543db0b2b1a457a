// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "clearance/checks.h"
#include "clearance/door_geometry.h"
#include "clearance/freeing_move.h"
#include "clearance/quantities.h"
#include "clearance/solid_margin.h"
#include "clearance/ways.h"
#include "clearance/wording.h"
#include "geometry/rigid_map.h"
#include "job/find.h"
#include "job/room_geometry.h"
#include "units/length_text.h"

namespace baywright {
namespace {

Finding blank(Id opening, const std::string& aspect, const std::string& subject) {
  Finding finding;
  finding.check = "doors_and_exits";
  finding.key = "doors_and_exits/" + idText(opening) + "/" + aspect;
  finding.subjects = {opening};
  finding.subject = subject;
  return finding;
}

bool isMeasured(const Opening& opening) {
  return opening.offset.known && opening.width.known && opening.sill.known && opening.height.known;
}

/// What a moving door may run into: fixtures and kit. Walls and ceiling were there before the door.
std::vector<std::size_t> inTheWay(const CheckInput& input, Id door) {
  std::vector<std::size_t> which;
  for (std::size_t i = 0; i < input.obstacles.size(); ++i) {
    const RoomObstacle& obstacle = input.obstacles[i];
    const bool placed =
        obstacle.inBay || obstacle.kind == ObstacleKind::Fixture || obstacle.kind == ObstacleKind::DoorTrack;
    if (placed && obstacle.missing.empty() && obstacle.id != door) which.push_back(i);
  }
  return which;
}

/// How far the bay must go for the door to open past all of its kit.
std::string hintText(const CheckInput& input, Id door, const PutBody& put, const SolidMargin& worst) {
  const PlaceAfter after = [&](const Vec3& shift) -> std::optional<TightPlace> {
    PutBody moved = put;  // the door goes the other way instead, past what stands in the bay
    moved.body = transformed(put.body, RigidMap{Mat3::Identity(), -shift});
    std::vector<std::size_t> kit = inTheWay(input, door);
    std::erase_if(kit, [&](std::size_t index) { return !input.obstacles[index].inBay; });
    const auto there = tightest(moved, input.obstacles, kit);
    return there ? std::optional(TightPlace{reversed(there->closest), there->margin}) : std::nullopt;
  };
  const auto move = freeingMove({reversed(worst.closest), worst.margin}, after, input.option.placement.bay,
                                input.job.units);
  return move ? movingText("the bay", move->distance, wayInRoom(move->way), input.job.units) : std::string();
}

void addMoving(CheckResult& result, const CheckInput& input, const Opening& opening, const PutBody& put,
               const std::string& words) {
  const auto worst = tightest(put, input.obstacles, inTheWay(input, opening.id));
  if (!worst) return;
  const RoomObstacle& obstacle = input.obstacles[worst->obstacle];
  result.figures.push_back(
      {figureName({"door", idText(opening.id), "opens", "margin"}), worst->margin.value, "m"});
  Finding finding = blank(opening.id, "opens", opening.name);
  finding.subjects.push_back(obstacle.id);
  finding.margin = worst->margin;
  finding.verdict = verdictOf(worst->margin);
  finding.points = std::pair(worst->closest.onFirst, worst->closest.onSecond);
  finding.sentence =
      finding.verdict == Verdict::Blocked
          ? startingSentence(inSentence(opening.name)) + " hits " + obstacle.name + " " + words + ", by " +
                missingText(worst->margin, input.job.units) + "."
          : startingSentence(inSentence(opening.name)) + ": " +
                marginText(worst->margin, "at " + obstacle.name + " " + words, input.job.units);
  if (obstacle.inBay) {
    finding.sentence += hintText(input, opening.id, put, *worst);
  } else if (finding.verdict == Verdict::Blocked) {
    finding.sentence += " Move that, or have the door open the other way.";
  }
  finding.source = "two bodies cannot share a place";
  result.findings.push_back(std::move(finding));
}

double openingSigma(const Room& room, const Opening& opening) {
  const auto wall = wallLine(room, opening.wall);
  const double across = wall ? wall->sigmaAt(opening.offset.value) : 0;
  return std::hypot(across, combinedSigma(opening.offset.uncertain().sigma, opening.width.uncertain().sigma));
}

void addLeaf(CheckResult& result, const CheckInput& input, const Opening& opening) {
  const auto place = openingPlace(input.job.room, opening.id);
  if (!place || opening.swing == LeafSwing::OutOfRoom) return;
  const auto body = convexPrismFrom({leafSector(input.job.room, opening), SlopedPlane::level(place->bottom),
                                     SlopedPlane::level(place->top)});
  if (!body) return;
  PutBody put{*body};
  put.placeSigma = input.option.placement.sigma;
  put.ownSigma = openingSigma(input.job.room, opening);
  addMoving(result, input, opening, put, "as it opens");
}

void addSectional(CheckResult& result, const CheckInput& input, const Opening& opening) {
  const auto door = sectionalDoor(input.job.room, opening);
  if (!door || !door->open) return;
  const Aabb3& hangs = door->open->bounds();
  result.figures.push_back({figureName({"door", idText(opening.id), "open_underside"}), hangs.low.z(), "m"});
  PutBody put{*door->open};
  put.placeSigma = input.option.placement.sigma;
  put.ownSigma = std::hypot(openingSigma(input.job.room, opening), kTrackSigma);
  addMoving(result, input, opening, put, "when it is open");
}

/// " between the shelf and wall C": what stands at the two sides of the narrowest place.
std::string betweenText(const CheckInput& input, const Way& way) {
  const std::string left = sideName(input.obstacles, way.narrowA);
  const std::string right = sideName(input.obstacles, way.narrowB);
  if (left.empty() || right.empty() || left == right) return {};
  return ", between " + left + " and " + right;
}

std::string shortText(Uncertain margin, const UnitSystem& units) {
  return verdictOf(margin) == Verdict::Blocked ? ", " + missingText(margin, units) + " more" : std::string();
}

void addWay(CheckResult& result, const CheckInput& input, const Opening& opening, const Way& way) {
  const double required = input.job.requirements.wayWidth;
  const UnitSystem& units = input.job.units;
  Finding finding = blank(opening.id, "way", "Way to " + opening.name);
  finding.margin = Uncertain{way.clearWidth - required, way.sigma};
  finding.verdict = verdictOf(*finding.margin);
  finding.points = std::pair(raised(way.narrowA, 0), raised(way.narrowB, 0));
  finding.sentence = way.path.empty()
                         ? "No way leads from the strike point to " + inSentence(opening.name) + "."
                         : "The way to " + inSentence(opening.name) + " is " +
                               formatLength(way.clearWidth, units) + " wide at its narrowest" +
                               betweenText(input, way) + "; " + formatLength(required, units) +
                               " are wanted" + shortText(*finding.margin, units) + ".";
  if (way.path.empty()) finding.sentence += " Something stands right across it: move that or the bay.";
  finding.source = "36 in: IRC R311.6 and ADA 2010 403.5.1, as guidance; the local code decides";
  result.findings.push_back(std::move(finding));
  result.figures.push_back({figureName({"way", idText(opening.id), "clear_width"}), way.clearWidth, "m"});
}

void addExit(CheckResult& result, const CheckInput& input, const Opening& opening, const Way& way) {
  const double required = input.job.requirements.exitWidth;
  Uncertain width = clearOpeningWidth(opening);
  if (!way.path.empty()) width.value = std::min(width.value, way.clearWidth);
  Finding finding = blank(opening.id, "exit", opening.name);
  finding.margin = Uncertain{width.value - required, width.sigma};
  finding.verdict = verdictOf(*finding.margin);
  if (const auto place = openingPlace(input.job.room, opening.id)) {
    finding.points = std::pair(raised(place->start, 0), raised(place->end, 0));
  }
  const UnitSystem& units = input.job.units;
  finding.sentence = startingSentence(inSentence(opening.name)) + " leaves " +
                     formatLength(width.value, units) + " clear; " + formatLength(required, units) +
                     " are wanted" + shortText(*finding.margin, units) + ".";
  finding.source = "32 in at a right angle: IRC R311.2, as guidance; the local code decides";
  result.findings.push_back(std::move(finding));
  result.figures.push_back({figureName({"way", idText(opening.id), "opening_width"}), width.value, "m"});
}

void addUnmeasured(CheckResult& result, const Opening& opening) {
  Finding finding = blank(opening.id, "missing", opening.name);
  finding.sentence = "Measure where " + inSentence(opening.name) +
                     " is and how large it is: whether it opens and lets people out is not known.";
  finding.source = "a clearance needs a measurement";
  result.findings.push_back(std::move(finding));
}

void addNoExit(CheckResult& result, const CheckInput& input) {
  if (input.job.room.walls.size() < 3 || !input.ways.empty()) return;
  for (const Opening& opening : input.job.room.openings) {
    if (opening.isExit) return;
  }
  Finding finding = blank({}, "none", "Ways out");
  finding.key = "doors_and_exits/none";
  finding.subjects.clear();
  finding.sentence = "No door is marked as an exit yet: mark those that people count on to leave.";
  finding.source = "common practice, no source";
  result.findings.push_back(std::move(finding));
}

}  // namespace

CheckResult checkDoorsAndExits(const CheckInput& input) {
  CheckResult result;
  for (const Opening& opening : input.job.room.openings) {
    const bool matters = opening.kind == OpeningKind::HingedDoor ||
                         opening.kind == OpeningKind::SectionalDoor || opening.isExit;
    if (!matters) continue;
    if (!isMeasured(opening)) {
      addUnmeasured(result, opening);
      continue;
    }
    if (opening.kind == OpeningKind::HingedDoor) addLeaf(result, input, opening);
    if (opening.kind == OpeningKind::SectionalDoor) addSectional(result, input, opening);
  }
  for (const Way& way : input.ways) {
    const Opening* opening = findById(input.job.room.openings, way.exit);
    if (!opening) continue;
    addWay(result, input, *opening, way);
    addExit(result, input, *opening, way);
  }
  addNoExit(result, input);
  return result;
}

}  // namespace baywright
