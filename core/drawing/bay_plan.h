// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "clearance/assessment.h"
#include "geometry/frames.h"
#include "geometry/polygon.h"
#include "job/job.h"

namespace baywright::detail {

/// Takes (d, r) of the bay to the plan. Internal to `drawing`.
struct BayPlan {
  BayPose pose;

  Vec2 operator()(double d, double r) const { return pose.origin + d * pose.down() + r * pose.right(); }
  /// Counter-clockwise on the plan: r runs to the right of d.
  Ring box(double dLow, double dHigh, double rLow, double rHigh) const {
    const BayPlan& at = *this;
    return {at(dLow, rHigh), at(dHigh, rHigh), at(dHigh, rLow), at(dLow, rLow)};
  }
  /// Points given as (d, r).
  Ring ring(const std::vector<Vec2>& points) const {
    Ring result;
    result.reserve(points.size());
    for (const Vec2& p : points) result.push_back((*this)(p.x(), p.y()));
    return result;
  }
};

/// Rings of a swing seen from above, on the plan.
inline std::vector<Ring> planRings(const std::vector<Ring>& rings, const SwingZone& zone) {
  const BayPlan bay{zone.bay};
  const Vec2 strike = flat(zone.strikePointInBay);
  std::vector<Ring> result = rings;
  for (Ring& ring : result) {
    for (Vec2& p : ring) p = bay(p.x() + strike.x(), p.y() + strike.y());
  }
  return result;
}

/// Where balls are struck from in the bay frame: one for each hand that somebody swings with, both when
/// nobody is in the job yet; one where they coincide.
std::vector<Vec3> strikePoints(const Job& job);

}  // namespace baywright::detail
