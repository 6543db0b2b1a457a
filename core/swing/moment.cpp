// SPDX-License-Identifier: Apache-2.0
#include "swing/moment.h"

#include <algorithm>
#include <cmath>

namespace baywright {

LegPlace placeAt(double moment) {
  const double m = std::clamp(moment, 0.0, 1.0);
  if (m <= kTopMoment) {
    const double s = m / kTopMoment;
    return {SwingLeg::Backswing, s * s * (3 - 2 * s)};
  }
  if (m <= kImpactMoment) {
    const double s = (m - kTopMoment) / (kImpactMoment - kTopMoment);
    return {SwingLeg::Downswing, 1 - s * s};
  }
  const double left = (1 - m) / (1 - kImpactMoment);
  return {SwingLeg::FollowThrough, 1 - left * left * left};
}

double momentOf(LegPlace place) {
  const double share = std::clamp(place.share, 0.0, 1.0);
  switch (place.leg) {
    case SwingLeg::Backswing:
      return kTopMoment * (0.5 - std::sin(std::asin(1 - 2 * share) / 3));
    case SwingLeg::Downswing:
      return kTopMoment + (kImpactMoment - kTopMoment) * std::sqrt(1 - share);
    case SwingLeg::FollowThrough:
      break;
  }
  return 1 - (1 - kImpactMoment) * std::cbrt(1 - share);
}

SwingPhase phaseAt(double moment) {
  if (moment <= 0.02) return SwingPhase::Address;
  if (moment < 0.18) return SwingPhase::Takeaway;
  if (moment < 0.47) return SwingPhase::Backswing;
  if (moment <= 0.53) return SwingPhase::Top;
  if (moment < 0.65) return SwingPhase::Downswing;
  if (moment <= 0.68) return SwingPhase::Impact;
  return moment < 0.97 ? SwingPhase::FollowThrough : SwingPhase::Finish;
}

}  // namespace baywright
