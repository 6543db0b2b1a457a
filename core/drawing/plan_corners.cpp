// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <cmath>

#include "drawing/marks.h"
#include "drawing/plan_parts.h"
#include "survey/adjustment.h"
#include "units/length_text.h"

namespace baywright::detail {
namespace {

// A corner is known to millimetres: at the scale of a room one would not see its ellipse.
constexpr double kEnlarged = 20;

std::vector<Vec2> ellipseRing(const Vec2& centre, const ErrorEllipse& ellipse) {
  const Vec2 along(std::cos(ellipse.heading), std::sin(ellipse.heading));
  const Vec2 across(-along.y(), along.x());
  std::vector<Vec2> ring = circleRing(Vec2::Zero(), 1);
  for (Vec2& p : ring)
    p = centre + kEnlarged * (ellipse.major * p.x() * along + ellipse.minor * p.y() * across);
  return ring;
}

}  // namespace

void drawCorners(Board& board, const ViewInput& input) {
  for (const Wall& wall : input.job.room.walls) {
    const ErrorEllipse ellipse = errorEllipse95(wall.startCovariance);
    if (!(ellipse.major > 0)) continue;  // the corner that all others are measured from
    board.add(polygon(Layer::Survey, ellipseRing(wall.start, ellipse), wall.id));
    Text text =
        textAt(Layer::Survey, wall.start, wall.name + " ± " + formatLength(ellipse.major, input.job.units));
    text.id = wall.id;
    const double away = board.mm(4);
    std::array<Text, 4> places{text, text, text, text};
    places[0].at += Vec2(away, away);
    places[1].at += Vec2(away, -away);
    places[2].at += Vec2(-away, away);
    places[3].at += Vec2(-away, -away);
    places[2].anchor = places[3].anchor = TextAnchor::Right;
    board.addWhereFree(places);
  }
}

}  // namespace baywright::detail
