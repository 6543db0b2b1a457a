// SPDX-License-Identifier: Apache-2.0
#include "drawing/plan.h"

#include "drawing/bay_plan.h"
#include "drawing/finding_marks.h"
#include "drawing/marks.h"
#include "drawing/plan_parts.h"
#include "drawing/swing_zones.h"

namespace baywright::detail {
namespace {

// Whose swing is whose, at the golfer's feet.
void drawGolferNames(Board& board, const ViewInput& input) {
  const BayPlan bay{input.placement().bay};
  for (const Golfer& golfer : input.job.golfers) {
    if (golfer.name.empty() || !golfer.swings) continue;
    const double side = golfer.hand == Hand::Right ? -1 : 1;
    const Vec3 strike = input.placement().strikePoint(golfer.hand);
    std::vector<Text> candidates;
    for (const double r : {1.0, 1.3, 0.7, 1.6}) {
      Text name =
          textAt(Layer::Labels, bay(strike.x(), strike.y() + side * r), golfer.name, TextAnchor::Centre);
      name.id = golfer.id;
      name.onGround = true;
      candidates.push_back(std::move(name));
    }
    board.addWhereFree(candidates);
  }
}

void drawNames(Board& board, const ViewInput& input) {
  drawGolferNames(board, input);
  drawFixtureNames(board, input);
}

}  // namespace

Linework planOf(const ViewInput& input) {
  const ViewOptions& options = input.options;
  Board board(options.metresPerMm);
  drawFloorAndWalls(board, input);
  drawOpenings(board, input);
  drawFixtures(board, input);
  // Over a plan that waits for its room to be drawn, kit would only lie in the way.
  if (input.job.room.walls.empty() && !input.job.planScans.empty()) return std::move(board).take();
  drawStanding(board, input);
  if (options.beam) drawBeam(board, input);
  drawBay(board, input);
  drawSwings(board, input, SwingSight::FromAbove, planRings);
  drawBallZones(board, input);
  drawDoorSweeps(board, input);
  // Texts find a place in the order of their weight: findings, dimensions, names.
  drawTightest(board, input, [](const Vec3& p) { return flat(p); });
  if (options.ways) drawWays(board, input);
  if (options.dimensions) {
    drawWallLengths(board, input);
    drawBayDimensions(board, input);
  }
  if (options.corners) {
    drawHeights(board, input);
    drawCorners(board, input);
  }
  drawPeople(board, input);
  drawCeiling(board, input);
  if (options.labels) {
    drawNames(board, input);
    drawBallNames(board, input);
  }
  return std::move(board).take();
}

}  // namespace baywright::detail
