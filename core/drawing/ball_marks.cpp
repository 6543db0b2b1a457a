// SPDX-License-Identifier: Apache-2.0
#include "drawing/ball_marks.h"

#include <algorithm>
#include <cmath>

#include "units/quantity_text.h"

namespace baywright::detail {

std::vector<const BallZone*> differentShots(const Assessment& assessment) {
  std::vector<const BallZone*> zones;
  for (const BallZone& zone : assessment.balls) {
    const bool known = std::any_of(zones.begin(), zones.end(), [&](const BallZone* other) {
      return other->ball == zone.ball && other->fan.plan == zone.fan.plan &&
             other->fan.elevation == zone.fan.elevation;
    });
    if (!known) zones.push_back(&zone);
  }
  return zones;
}

std::optional<Eigen::AlignedBox2d> arrivalBox(const BallZone& zone) {
  constexpr double kOnScreen = 0.05;  // a ball's radius before the face, and some
  Eigen::AlignedBox2d box;
  for (const Vec2& p : zone.fan.elevation) {
    if (std::abs(p.x()) > kOnScreen) continue;
    for (const Vec2& q : zone.fan.plan) {
      if (std::abs(q.x()) <= kOnScreen) box.extend(Vec2(q.y(), p.y()));
    }
  }
  if (box.isEmpty() || box.volume() <= 0) return std::nullopt;
  return box;
}

std::string reboundText(const ReboundSafety& rebound, const UnitSystem& units) {
  const double speed = rebound.worst.speedAtStrike;
  return speed > 0 ? "comes back at " + formatQuantity(speed, QuantityKind::Speed, units)
                   : "stops before the ball";
}

}  // namespace baywright::detail
