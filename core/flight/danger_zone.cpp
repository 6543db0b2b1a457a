// SPDX-License-Identifier: Apache-2.0
#include "flight/danger_zone.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "flight/arrival.h"
#include "flight/detail/slice.h"
#include "flight/detail/way_back.h"
#include "geometry/polygon_sets.h"

namespace baywright {
namespace {

/// A slice of a circle about `centre`, between two angles to the right of d; the arc's chords lie outside the
/// circle.
Polygon sector(const Vec2& centre, double radius, double from, double to) {
  constexpr double kChordAngle = 5 * kPi / 180;
  const int chords = std::max(1, static_cast<int>(std::ceil((to - from) / kChordAngle)));
  const double outer = radius / std::cos(0.5 * (to - from) / chords);
  Polygon polygon;
  polygon.outer.push_back(centre);
  for (int i = 0; i <= chords; ++i) {
    const double angle = from + (to - from) * i / chords;
    polygon.outer.push_back(centre + outer * Vec2(std::cos(angle), std::sin(angle)));
  }
  return polygon;
}

PolygonSet directRegion(const DangerInput& input) {
  const Frame& frame = input.rebound.frame;
  const Vec2 ball = flat(input.rebound.ball);
  const double half = frame.width / 2;
  const double mouth = detail::mouthOf(frame);
  const double left = std::min(-half, ball.y());
  const double right = std::max(half, ball.y());
  const double behind = std::max(frame.behindScreen, input.rebound.screen.travel);

  PolygonSet region;
  region.push_back({{{ball.x(), left}, {behind, left}, {behind, right}, {ball.x(), right}}, {}});
  // Beside the frame's posts; a ball that stands between them is shut in by the side walls.
  const double toRight = input.hand == Hand::Right ? kShankAngle : kPullAngle;
  const double toLeft = input.hand == Hand::Right ? kPullAngle : kShankAngle;
  const double rightPost = std::atan2(right - ball.y(), mouth - ball.x());
  const double leftPost = std::atan2(left - ball.y(), mouth - ball.x());
  if (rightPost < toRight) region.push_back(sector(ball, input.sectorRadius, rightPost, toRight));
  if (leftPost > -toLeft) region.push_back(sector(ball, input.sectorRadius, -toLeft, leftPost));
  return region;
}

/// Where one ball comes back to while it is faster than the limit.
void addReach(std::vector<Vec2>& points, const std::vector<detail::BackLeg>& legs, double limit) {
  for (const detail::BackLeg& leg : legs) {
    const double first = leg.velocity.norm();
    const double last = leg.velocityAt(leg.duration).norm();
    if (first > limit) points.push_back(flat(leg.start));
    if (leg.rolls() && first > limit && last < limit) {
      points.push_back(flat(leg.at((first - limit) / leg.acceleration.norm())));
    } else if (first > limit || last > limit) {
      points.push_back(flat(leg.at(leg.duration)));
    }
  }
}

Ring returningRegion(const DangerInput& input) {
  const ReboundInput& rebound = input.rebound;
  const CaptureInput shot = detail::shotInput(rebound);
  const detail::FlightSpace space(shot);
  std::vector<Vec2> points;
  for (int side = -2; side <= 2; ++side) {
    const detail::Slice slice(space, shot.shots.meanDirection + side * shot.shots.sigmaDirection);
    for (int up = -2; up <= 2; ++up) {
      const double angle = shot.shots.meanLaunch + up * shot.shots.sigmaLaunch;
      if (!(std::abs(angle) < kPi / 2)) continue;
      const Arrival arrival = slice.arrival(angle);
      if (!detail::reachesScreen(arrival)) continue;
      addReach(points, detail::wayBack(rebound, detail::thrownBack(rebound, arrival)), input.returningSpeed);
    }
  }
  return convexHull(std::move(points));
}

}  // namespace

Result<DangerZone> dangerZone(const DangerInput& input) {
  if (auto problem = problemWith(input.rebound)) return tl::unexpected(*problem);
  if (!(input.sectorRadius > 0 && input.sectorRadius <= 50) || !(input.returningSpeed >= 0))
    return fail("The zone's radius or the speed of a harmless ball is impossible.", "",
                "Give a radius up to 50 m and a speed from zero on.");
  const auto direct = unionOf(directRegion(input));
  if (!direct) return tl::unexpected(direct.error());
  DangerZone zone;
  for (const Polygon& part : *direct)
    if (signedArea(part.outer) > signedArea(zone.direct)) zone.direct = part.outer;
  zone.returning = returningRegion(input);
  return zone;
}

}  // namespace baywright
