// SPDX-License-Identifier: Apache-2.0
#include "drawing/elevation.h"

#include "drawing/elevation_parts.h"
#include "drawing/finding_marks.h"
#include "drawing/swing_zones.h"

namespace baywright::detail {

Sight sightOf(const ViewInput& input, ViewKind view) {
  const Placement& placement = input.placement();
  Sight sight{view, placement.bay, {}, {}, {}};
  if (view == ViewKind::Side) {
    sight.cut = {placement.bay.origin, placement.bay.down()};
    sight.away = -placement.bay.right();
  } else {
    sight.cut = {placement.bay.origin - placement.strikeDistance * placement.bay.down(),
                 placement.bay.right()};
    sight.away = placement.bay.down();
  }
  sight.section = sectionOf(input.job.room, sight.cut);
  return sight;
}

Linework elevationOf(const ViewInput& input, ViewKind view) {
  const ViewOptions& options = input.options;
  const Sight sight = sightOf(input, view);
  Board board(options.metresPerMm);
  drawSection(board, sight);
  drawOpeningsBeyond(board, input, sight);
  if (options.beam) drawBeam(board, input, sight);
  drawBay(board, input, sight);
  drawSwings(board, input, view == ViewKind::Side ? SwingSight::FromTheSide : SwingSight::DownRange,
             [&](const std::vector<Ring>& rings, const SwingZone& zone) {
               const Vec2 strike = sight.fromBay(zone.strikePointInBay);
               std::vector<Ring> placed = rings;
               for (Ring& ring : placed) {
                 for (Vec2& p : ring) p += strike;
               }
               return placed;
             });
  drawBall(board, input, sight);
  drawPeople(board, input, sight);
  drawTightest(board, input, sight);
  if (options.dimensions) drawDimensions(board, input, sight);
  drawFixtures(board, input, sight);
  if (options.labels) drawBallNames(board, input, sight);
  return std::move(board).take();
}

}  // namespace baywright::detail
