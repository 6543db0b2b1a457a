// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>

#include "drawing/ball_marks.h"
#include "drawing/bay_plan.h"
#include "drawing/marks.h"
#include "drawing/plan_parts.h"
#include "geometry/polygon_sets.h"
#include "job/room_geometry.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

// What of the regions lies on the floor of the room, merged; all of it before survey.
std::vector<Ring> insideRoom(const Room& room, const PolygonSet& regions) {
  const auto merged =
      room.walls.empty() ? unionOf(regions) : intersectionOf(regions, {Polygon{outline(room), {}}});
  std::vector<Ring> rings;
  for (const Polygon& polygon : merged.value_or(PolygonSet{})) {
    rings.push_back(polygon.outer);
    rings.insert(rings.end(), polygon.holes.begin(), polygon.holes.end());
  }
  return rings;
}

// A way this many times as wide as is wanted has no narrow place worth an arrow.
constexpr double kWideWay = 2;

// An open arrowhead at the end of a way.
std::vector<Vec2> barbs(const Board& board, const std::vector<Vec2>& path) {
  const Vec2 tip = path.back();
  const Vec2 along = (tip - path[path.size() - 2]).stableNormalized();
  const Vec2 back = tip - board.mm(3) * along;
  return {back + board.mm(1) * leftOf(along), tip, back - board.mm(1) * leftOf(along)};
}

// At the first of these places that is free.
void smallLabel(Board& board, const std::vector<Vec2>& places, const std::string& words) {
  std::vector<Text> candidates;
  for (const Vec2& place : places) {
    Text text = textAt(Layer::Labels, place, words, TextAnchor::Centre);
    text.heightMm = kSmallText;
    text.onGround = true;
    candidates.push_back(std::move(text));
  }
  board.addWhereFree(candidates);
}

// Places on the floor to the right and to the left of the frame, where balls may fly.
std::vector<Vec2> besideTheFrame(const ViewInput& input) {
  const BayPlan bay{input.placement().bay};
  const double side = input.kit().frame.width / 2;
  std::vector<Vec2> places;
  for (const double down : {-0.25, -0.45, -0.1, -0.65}) {
    for (const double out : {0.7, 0.4, 1.2}) {
      for (const double across : {side + out, -side - out}) {
        const Vec2 at = bay(down * input.placement().strikeDistance, across);
        if (input.job.room.walls.empty() || isInside(input.job.room, at)) places.push_back(at);
      }
    }
  }
  return places;
}

}  // namespace

void drawBeam(Board& board, const ViewInput& input) {
  if (!input.assessment.picture) return;
  const Picture& picture = input.assessment.picture->picture;
  const BayPlan bay{input.placement().bay};
  std::vector<Vec2> points{bay(picture.lens.centre.x(), picture.lens.centre.y())};
  for (const Vec3& corner : picture.cornersInBay) points.push_back(bay(corner.x(), corner.y()));
  board.add(areaOf(Layer::Beam, {convexHull(std::move(points))}, Fill::Soft, input.kit().projector.id));
}

void drawBallZones(Board& board, const ViewInput& input) {
  const BayPlan bay{input.placement().bay};
  PolygonSet direct;
  PolygonSet returning;
  const auto collect = [&](PolygonSet& set, const Ring& ring) {
    if (ring.size() >= 3) set.push_back({bay.ring(ring), {}});
  };
  for (const BallZone& zone : input.assessment.balls) {
    if (!zone.danger) continue;
    collect(direct, zone.danger->direct);
    collect(returning, zone.danger->returning);
  }
  if (input.options.capture) {
    for (const BallZone* zone : differentShots(input.assessment)) {
      if (zone->fan.plan.size() >= 3)
        board.add(areaOf(Layer::Capture, {bay.ring(zone->fan.plan)}, Fill::Soft));
    }
  }
  if (!input.options.rebound) return;
  if (auto rings = insideRoom(input.job.room, direct); !rings.empty())
    board.add(areaOf(Layer::Rebound, std::move(rings), Fill::None));
  if (auto rings = insideRoom(input.job.room, returning); !rings.empty())
    board.add(areaOf(Layer::Rebound, std::move(rings), Fill::Soft));
}

void drawBallNames(Board& board, const ViewInput& input) {
  const BayPlan bay{input.placement().bay};
  const double distance = input.placement().strikeDistance;
  if (input.options.capture) {
    for (const BallZone* zone : differentShots(input.assessment)) {
      if (zone->fan.plan.size() < 3) continue;
      const double across = zone->ball.y();
      smallLabel(
          board,
          {bay(-0.25 * distance, across), bay(-0.15 * distance, across), bay(-0.35 * distance, across)},
          "shots");
    }
  }
  if (!input.options.rebound) return;
  const auto hasZone = [&](const Ring DangerZone::*ring) {
    return std::any_of(
        input.assessment.balls.begin(), input.assessment.balls.end(),
        [&](const BallZone& zone) { return zone.danger && ((*zone.danger).*ring).size() >= 3; });
  };
  if (hasZone(&DangerZone::direct)) smallLabel(board, besideTheFrame(input), "nobody here during a swing");
  if (hasZone(&DangerZone::returning)) {
    std::vector<Vec2> places;
    for (const double share : {0.55, 0.45, 0.65, 0.35}) {
      for (const double across : {0.0, 0.25, -0.25, 0.6, -0.6})
        places.push_back(bay(-share * distance, across));
    }
    smallLabel(board, places, "balls come back");
  }
}

void drawStanding(Board& board, const ViewInput& input) {
  const StandingMark& standing = input.options.standing;
  if (standing.zone.empty()) return;
  board.add(areaOf(Layer::Standing, standing.zone, Fill::Soft, standing.golfer));
  Text text =
      textAt(Layer::Labels, standing.zone.front().front(), "Ball here: " + standing.name, TextAnchor::Left);
  text.id = standing.golfer;
  text.onGround = true;
  board.addWhereFree(std::array{text});
}

void drawDoorSweeps(Board& board, const ViewInput& input) {
  for (const DoorSweep& sweep : input.assessment.doors) {
    if (sweep.sector.size() < 3 || sweep.verdict == Verdict::Clear) continue;
    Path area = areaOf(Layer::Openings, {sweep.sector}, Fill::Soft, sweep.opening);
    area.verdict = sweep.verdict;
    area.stroked = false;
    area.weight = LineWeight::Thin;
    board.addHatched(std::move(area));
  }
}

void drawWays(Board& board, const ViewInput& input) {
  for (const Way& way : input.assessment.ways) {
    if (way.path.size() < 2) continue;
    Path line = polyline(Layer::Ways, way.path, way.exit);
    board.add(std::move(line));
    Path head = polyline(Layer::Ways, barbs(board, way.path), way.exit);
    head.dash = LineDash::Continuous;
    board.add(std::move(head));
    if (!input.options.dimensions || way.clearWidth > kWideWay * input.job.requirements.wayWidth) continue;
    if ((way.narrowB - way.narrowA).norm() <= 0) continue;
    DimensionMark narrowest;
    narrowest.layer = Layer::Ways;
    narrowest.from = way.narrowA;
    narrowest.to = way.narrowB;
    narrowest.text = formatLength(way.clearWidth, input.job.units);
    narrowest.arrows = true;
    if (way.verdict != Verdict::Clear) narrowest.verdict = way.verdict;
    narrowest.id = way.exit;
    board.add(std::move(narrowest));
  }
}

}  // namespace baywright::detail
