// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <memory>

#include "clearance/assessment.h"
#include "drawing/layers.h"
#include "support/job_builder.h"

namespace baywright::testing {

/// A rectangle with one right-hander, a shelf, a door and a window; metres.
inline Job smallGarage() {
  return garage(6.0, 4.0)
      .withCeiling(2.6)
      .withShelf("A", 0.5, 1.5, 0.4, 1.9, "Shelving")
      .withDoor("D", 0.4, 0.9)
      .withWindow("C", 1.0, 1.2, 0.9, 1.1)
      .withGolfer(1.80, Hand::Right, "Robin")
      .withClub()
      .bayAt(5.5, 2.0, 0)
      .withFrame(2.8, 2.3)
      .withScreen(2.6, 2.0)
      .withProjector(1.2, {-3.2, 0, 2.2})
      .strikingFrom(2.6)
      .job();
}

/// A concave floor under a slope with a lower part, two hands, a sectional door, everything in feet and
/// inches.
inline Job slopedWorkshop() {
  return lShapedRoom(7.0, 5.0, 2.0, 1.5)
      .withSlopedCeiling(2.3, 3.3, 5.0)
      .withCeilingPart({{0, 0}, {1.5, 0}, {1.5, 5}, {0, 5}}, 2.25)
      .withBeam({3.0, 0}, {3.0, 5.0}, 0.15, 2.2, 2.4)
      .withColumn({6.5, 3.0}, 0.1, 2.4)
      .withSectionalDoor("F", 1.0, 2.5, 2.1)
      .withGolfer(1.88, Hand::Right, "Robin")
      .withClub()
      .withGolfer(1.66, Hand::Left, "Sam")
      .withClub(1.13, 1.01, "Sam's driver")
      .withBystander({0.8, 4.2})
      .bayAt(6.4, 1.75, 0)
      .withFrame(3.0, 2.2)
      .withScreen(2.8, 1.9)
      .withProjector(1.3, {-3.4, 0, 2.1})
      .strikingFrom(2.9, 0.25, -0.25)
      .inUnits(LengthUnit::FeetInches)
      .job();
}

/// A swing of two bars, as simple as a swing can be: a body behind the ball and a club level at 1.8 m, 2.4 m
/// long.
inline std::shared_ptr<const Swing> barSwing(Hand hand) {
  const double side = hand == Hand::Right ? -1 : 1;
  const auto envelope = [&](double reach) {
    SwingEnvelope shape;
    shape.capsules = {{{{0, 0.8 * side, 0.3}, {0, 0.8 * side, 1.5}, 0.25}, 0, BodyPart::Torso},
                      {{{-reach, 0.5 * side, 1.8}, {reach, 0.5 * side, 1.8}, 0.05}, 0.5, BodyPart::Shaft}};
    return shape;
  };
  auto swing = std::make_shared<Swing>();
  swing->expected = envelope(1.2);
  swing->fullExtension = envelope(1.4);
  return swing;
}

/// What a checker might say of a job, put together by hand so that drawings do not depend on any model but
/// the pinhole of the projector. The first golfer is blocked, the others are tight.
inline Assessment handMadeAssessment(const Job& job) {
  Assessment assessment;
  assessment.obstacles = std::make_shared<std::vector<RoomObstacle>>();
  const Option& option = job.option();
  const BayPose& bay = option.placement.bay;
  for (const Golfer& golfer : job.golfers) {
    SwingZone zone;
    zone.golfer = golfer.id;
    zone.club = golfer.clubs.front().id;
    zone.hand = golfer.hand;
    zone.bay = bay;
    zone.strikePointInBay = option.placement.strikePoint(golfer.hand);
    zone.strikePoint = worldFromBay(bay, zone.strikePointInBay);
    zone.swing = barSwing(golfer.hand);
    zone.clearance = 0.15;
    zone.verdict = assessment.swings.empty() ? Verdict::Blocked : Verdict::Tight;
    assessment.swings.push_back(zone);

    BallZone ball;
    ball.hand = golfer.hand;
    const Vec3& at = zone.strikePointInBay;
    ball.ball = at;
    ball.heightAtScreen = 0.8;
    ball.fan.plan = {{at.x(), at.y()}, {0, at.y() + 0.4}, {0, at.y() - 0.4}};
    ball.fan.elevation = {{at.x(), 0.05}, {0, 0.4}, {0, 1.2}};
    ball.danger = DangerZone{{{at.x(), 1.0}, {at.x(), -1.0}, {0, -1.4}, {0, 1.4}},
                             {{-4, 0.3}, {-4, -0.3}, {0, -0.3}, {0, 0.3}}};
    assessment.balls.push_back(ball);
  }
  if (const auto picture = pictureOf(option.kit.screen, option.kit.projector, option.placement.projector)) {
    PictureZone zone;
    zone.picture = *picture;
    const auto corners = fitCorners(*picture, option.kit.projector, CornerFill::Screen);
    if (corners) zone.corners = *corners;
    zone.brightness =
        brightnessOf(*picture, lightOf(option.kit.projector, option.kit.screen, 20), zone.corners.target);
    assessment.picture = zone;
  }
  for (const Opening& opening : job.room.openings) {
    if (opening.kind != OpeningKind::HingedDoor) continue;
    assessment.doors.push_back({opening.id, {{0, 2.7}, {0.9, 2.7}, {0.6, 3.3}, {0, 3.6}}, Verdict::Tight});
    Way way;
    way.exit = opening.id;
    way.path = {{2.5, 2}, {1.2, 2.4}, {0, 3.1}};
    way.clearWidth = 0.95;
    way.narrowA = {1.0, 1.9};
    way.narrowB = {1.2, 2.83};
    way.verdict = Verdict::Clear;
    assessment.ways.push_back(way);
  }
  const auto find = [&](const char* key, Verdict verdict, std::optional<Uncertain> margin,
                        const char* sentence) -> Finding& {
    Finding finding;
    finding.check = "swing_room";
    finding.key = key;
    if (!job.golfers.empty()) finding.subjects = {job.golfers.front().id};
    finding.verdict = verdict;
    finding.margin = margin;
    finding.sentence = sentence;
    finding.source = "common practice, no source";
    assessment.findings.push_back(finding);
    return assessment.findings.back();
  };
  find("a", Verdict::Blocked, Uncertain{-0.064, 0.005}, "The club hits the shelving; 64 mm are missing.")
      .points = {{{2.0, 0.5, 1.8}, {2.0, 0.4, 1.8}}};
  find("b", Verdict::Tight, Uncertain{0.010, 0.020}, "The club passes 10 mm under the ceiling.").points = {
      {{3.0, 1.2, 2.4}, {3.0, 1.2, 2.6}}};
  find("c", Verdict::Unknown, std::nullopt, "The height of the beam was not measured. Measure it.");
  find("d", Verdict::Tight, Uncertain{0.020, 0.030}, "The frame stands 20 mm from wall B.").points = {
      {{5.6, 1.0, 1.0}, {6.0, 1.0, 1.0}}};
  find("e", Verdict::Tight, Uncertain{0.025, 0.030}, "The door opens 25 mm beside the mat.").points = {
      {{0.9, 3.0, 0.5}, {1.4, 3.0, 0.5}}};
  find("f", Verdict::Clear, Uncertain{0.500, 0.010}, "Half a metre is left at wall C.").points = {
      {{3.0, 3.5, 1.0}, {3.0, 4.0, 1.0}}};
  return assessment;
}

/// Number of marks of a kind on a layer.
template <class Marks>
std::size_t countOn(const Marks& marks, Layer layer) {
  return static_cast<std::size_t>(
      std::count_if(marks.begin(), marks.end(), [&](const auto& mark) { return mark.layer == layer; }));
}

}  // namespace baywright::testing
