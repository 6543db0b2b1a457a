// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>

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
  PolygonSet danger;
  for (const BallZone& zone : input.assessment.balls) {
    if (zone.danger) {
      for (const Ring* ring : {&zone.danger->direct, &zone.danger->returning}) {
        if (ring->size() >= 3) danger.push_back({bay.ring(*ring), {}});
      }
    }
    if (input.options.capture && zone.fan.plan.size() >= 3)
      board.add(polygon(Layer::Capture, bay.ring(zone.fan.plan)));
  }
  if (!input.options.rebound || danger.empty()) return;
  auto rings = insideRoom(input.job.room, danger);
  if (!rings.empty()) board.add(areaOf(Layer::Rebound, std::move(rings), Fill::None));
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
