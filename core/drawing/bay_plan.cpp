// SPDX-License-Identifier: Apache-2.0
#include "drawing/bay_plan.h"

#include <algorithm>

namespace baywright::detail {

std::vector<Vec3> strikePoints(const Job& job) {
  const Placement& placement = job.option().placement;
  const auto swings = [&](Hand hand) {
    return job.golfers.empty() ||
           std::any_of(job.golfers.begin(), job.golfers.end(),
                       [&](const Golfer& golfer) { return golfer.swings && golfer.hand == hand; });
  };
  std::vector<Vec3> points;
  for (const Hand hand : {Hand::Right, Hand::Left}) {
    const Vec3 at = placement.strikePoint(hand);
    if (swings(hand) && std::find(points.begin(), points.end(), at) == points.end()) points.push_back(at);
  }
  return points;
}

}  // namespace baywright::detail
