// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "clearance/checks.h"
#include "clearance/freeing_move.h"
#include "clearance/kit_bodies.h"
#include "clearance/quantities.h"
#include "clearance/solid_margin.h"
#include "clearance/wording.h"
#include "geometry/rigid_map.h"
#include "job/room_geometry.h"
#include "units/length_text.h"

namespace baywright {
namespace {

/// One room that the frame needs round it.
struct Aspect {
  std::string_view name;
  std::optional<ConvexPolyhedron> room;  ///< bay frame, the required clearance included
  std::string_view place;                ///< "above the frame"
  std::string_view source;
};

PutBody putOf(const CheckInput& input, const ConvexPolyhedron& inBay) {
  const BayPose& bay = input.option.placement.bay;
  const Frame& frame = input.option.kit.frame;
  PutBody put{transformed(inBay, worldFromBay(bay))};
  put.ownSigma = frame.tolerance;
  put.placeSigma = input.option.placement.sigma;
  put.headingSigma = std::sqrt(2.0) * put.placeSigma / frame.width;  // set on two marks, a width apart
  put.pivot = bay.origin;
  return put;
}

Finding findingOf(const CheckInput& input, std::string_view aspect, Id other) {
  Finding finding;
  finding.check = "frame_fit";
  finding.key = "frame_fit/" + std::string(aspect);
  finding.subjects = {input.option.kit.frame.id};
  if (other) finding.subjects.push_back(other);
  finding.subject = "Frame";
  return finding;
}

/// What to move, and how far, to be clear of all of these.
std::string hintText(const CheckInput& input, const Aspect& aspect, const std::vector<std::size_t>& which,
                     const SolidMargin& worst) {
  const UnitSystem& units = input.job.units;
  const PutBody put = putOf(input, *aspect.room);
  const PlaceAfter after = [&](const Vec3& shift) -> std::optional<TightPlace> {
    PutBody moved = put;
    moved.body = transformed(put.body, RigidMap{Mat3::Identity(), shift});
    moved.pivot += flat(shift);
    const auto there = tightest(moved, input.obstacles, which);
    return there ? std::optional(TightPlace{there->closest, there->margin}) : std::nullopt;
  };
  const TightPlace now{worst.closest, worst.margin};
  if (const auto move = freeingMove(now, after, input.option.placement.bay, units))
    return movingText("the bay", move->distance, wayInRoom(move->way), units);
  const auto height = freeingDrop(now, after, units);
  return height ? " A frame " + formatLength(*height, units) + " lower would do." : std::string();
}

void addKnown(CheckResult& result, const CheckInput& input, const Aspect& aspect,
              const std::vector<std::size_t>& which) {
  const auto worst = tightest(putOf(input, *aspect.room), input.obstacles, which);
  if (!worst) return;
  const RoomObstacle& obstacle = input.obstacles[worst->obstacle];
  Finding finding = findingOf(input, aspect.name, obstacle.id);
  finding.margin = worst->margin;
  finding.verdict = verdictOf(worst->margin);
  finding.points = std::pair(worst->closest.onFirst, worst->closest.onSecond);
  finding.sentence =
      "Frame: " +
      marginText(worst->margin, "at " + obstacle.name + " for the room " + std::string(aspect.place),
                 input.job.units) +
      hintText(input, aspect, which, *worst);
  finding.source = aspect.source;
  result.findings.push_back(std::move(finding));
  result.figures.push_back({figureName({"frame", aspect.name, "margin"}), worst->margin.value, "m"});
}

/// Asks for a figure unless the frame is clear whatever it turns out to be.
void addMissing(CheckResult& result, const CheckInput& input, const Aspect& aspect, std::size_t index) {
  const auto worst = tightest(putOf(input, *aspect.room), input.obstacles, {&index, 1});
  if (!worst || verdictOf(worst->margin) == Verdict::Clear) return;
  const RoomObstacle& obstacle = input.obstacles[index];
  Finding finding =
      findingOf(input, std::string(aspect.name) + "/missing/" + idText(obstacle.id), obstacle.id);
  const auto sameKey = [&](const Finding& other) { return other.key == finding.key; };
  if (std::any_of(result.findings.begin(), result.findings.end(), sameKey)) return;
  finding.sentence = "Measure " + obstacle.missing + ": the frame may not fit.";
  finding.source = "a clearance needs a measurement";
  result.findings.push_back(std::move(finding));
}

void addAspect(CheckResult& result, const CheckInput& input, const Aspect& aspect,
               const std::vector<std::size_t>& which) {
  if (!aspect.room) return;
  std::vector<std::size_t> known;
  for (const std::size_t index : which) {
    if (input.obstacles[index].missing.empty()) {
      known.push_back(index);
    } else {
      addMissing(result, input, aspect, index);
    }
  }
  addKnown(result, input, aspect, known);
}

/// What hangs is asked about height, all the rest about the sides.
std::vector<std::size_t> obstaclesOf(const CheckInput& input, bool overhead) {
  std::vector<std::size_t> which;
  for (std::size_t i = 0; i < input.obstacles.size(); ++i) {
    const RoomObstacle& obstacle = input.obstacles[i];
    if (obstacle.inBay || obstacle.kind == ObstacleKind::Bystander) continue;
    if (obstacle.overhead == overhead) which.push_back(i);
  }
  return which;
}

/// Corners of the frame that stand outside the floor.
void addOutside(CheckResult& result, const CheckInput& input) {
  const Ring floor = outline(input.job.room);
  const auto box = frameBox(input.option.kit.frame);
  if (floor.size() < 3 || !box) return;
  std::optional<Finding> worst;
  const ConvexPolyhedron stands = putOf(input, *box).body;
  for (const Vec3& corner : stands.vertices()) {
    if (corner.z() > 0 || isInside(input.job.room, flat(corner))) continue;
    const BoundaryPoint edge = closestOnBoundary(Polygon{floor, {}}, flat(corner));
    if (worst && worst->margin->value <= -edge.distance) continue;
    worst = findingOf(input, "inside", {});
    worst->margin = Uncertain{-edge.distance, input.option.placement.sigma};
    worst->verdict = Verdict::Blocked;
    worst->points = std::pair(corner, raised(edge.point, 0));
    worst->sentence = "Frame: it stands " + missingText(*worst->margin, input.job.units) +
                      " outside the room. Move the bay.";
    worst->source = "the floor as surveyed";
  }
  if (!worst) return;
  result.figures.push_back({"frame.inside.margin", worst->margin->value, "m"});
  result.findings.push_back(std::move(*worst));
}

/// A screen that is larger than what is to carry it.
void addScreen(CheckResult& result, const CheckInput& input) {
  const Frame& frame = input.option.kit.frame;
  const Screen& screen = input.option.kit.screen;
  const UnitSystem& units = input.job.units;
  const double aside = (frame.width - screen.width) / 2;
  const double above = frame.height - screen.bottom - screen.height;
  const Uncertain margin{std::min(aside, above), frame.tolerance};
  if (verdictOf(margin) != Verdict::Blocked) return;
  Finding finding = findingOf(input, "screen", input.option.kit.screen.id);
  finding.margin = margin;
  finding.verdict = Verdict::Blocked;
  const BayPose& bay = input.option.placement.bay;
  const double top = screen.bottom + screen.height;
  finding.points = aside < above
                       ? std::pair(worldFromBay(bay, {0, screen.width / 2, top}),
                                   worldFromBay(bay, {0, frame.width / 2, top}))
                       : std::pair(worldFromBay(bay, {0, 0, top}), worldFromBay(bay, {0, 0, frame.height}));
  finding.sentence = "The screen reaches " + missingText(margin, units) +
                     (aside < above ? " beyond the frame on either side" : " above the frame") +
                     ": choose a larger frame or a smaller screen.";
  finding.source = "a frame carries its screen inside its outer size";
  result.findings.push_back(std::move(finding));
}

}  // namespace

CheckResult checkFrameFit(const CheckInput& input) {
  CheckResult result;
  const Frame& frame = input.option.kit.frame;
  const Requirements& required = input.job.requirements;
  const std::vector<std::size_t> above = obstaclesOf(input, true);
  const std::vector<std::size_t> beside = obstaclesOf(input, false);
  addAspect(result, input,
            {"above", frameBoxAbove(frame, required.frameAbove), "needed above it to fit its top cover",
             "about 3 in above a frame: common practice, no source"},
            above);
  addAspect(result, input,
            {"beside", frameBoxBeside(frame, required.frameBeside), "needed beside it for hands and ties",
             "common practice, no source"},
            beside);
  addAspect(result, input,
            {"behind", screenTravelBox(frame, input.option.kit.screen, required.frameBehind),
             "needed behind the screen when it is hit", "travel of the screen as its maker states it"},
            beside);
  addOutside(result, input);
  addScreen(result, input);
  result.figures.push_back({"room.floor_area", floorArea(input.job.room), "m2"});
  return result;
}

}  // namespace baywright
