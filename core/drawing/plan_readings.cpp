// SPDX-License-Identifier: Apache-2.0
#include "drawing/marks.h"
#include "drawing/plan_parts.h"
#include "job/measurement_place.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

constexpr double kArm = 1.2;  // of the mark, millimetres

/// Beside the mark, then above and below, then farther off, where corners have their letters.
std::vector<Text> placesBeside(const Board& board, const Vec2& at, Text label) {
  const double aside = board.mm(kArm + 1);
  std::vector<Text> places;
  for (const double rows : {-0.5, 0.7, -1.7, 2.2, -3.2}) {
    for (const auto& [anchor, side] :
         {std::pair{TextAnchor::Left, 1.0}, std::pair{TextAnchor::Right, -1.0}}) {
      label.anchor = anchor;
      label.at = at + Vec2(side * aside, rows * board.mm(label.heightMm));
      places.push_back(label);
    }
  }
  return places;
}

}  // namespace

void drawHeights(Board& board, const ViewInput& input) {
  for (const Measurement& reading : input.job.measurements) {
    if (reading.kind != MeasurementKind::CeilingHeight) continue;
    const Vec2 at = placeOf(input.job.room, reading);
    const double arm = board.mm(kArm);
    Path mark =
        strokes(Layer::Survey,
                {{at - Vec2(arm, arm), at + Vec2(arm, arm)}, {at - Vec2(arm, -arm), at + Vec2(arm, -arm)}},
                reading.id);
    mark.weight = LineWeight::Thick;
    board.add(std::move(mark));
    const std::string height = "h " + formatLength(reading.value, input.job.units);
    Text label = textAt(Layer::Survey, at, reading.used ? height : "(" + height + ")");
    label.heightMm = kSmallText;
    label.id = reading.id;
    label.onGround = true;
    board.addWhereFree(placesBeside(board, at, label));
  }
}

}  // namespace baywright::detail
