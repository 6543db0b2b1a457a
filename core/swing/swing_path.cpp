// SPDX-License-Identifier: Apache-2.0
#include "swing/swing_path.h"

#include <algorithm>
#include <cmath>

#include "swing/two_link.h"

namespace baywright {

SwingPath swingPathOf(const SwingPathInput& input) {
  return {input.hand, input.body, input.posture,
          bodyPathOf({input.body, input.posture, input.style, input.arcShift}), input.cock};
}

double armAngle(const SwingPath& path, LegPlace place) {
  return legAngles(path.joints.style, place.leg).arms(place.share);
}

ClubPose clubAt(const SwingPath& path, LegPlace place) {
  const LegAngles& angles = legAngles(path.joints.style, place.leg);
  const double arms = angles.arms(place.share);
  const Vec3 shaft = linkDirection(angles.club(place.share, path.cock), planeSlopeAt(path.joints, arms));
  const Vec3 grip = jointAt(path.joints, Joint::Grip, arms);
  return {grip - path.posture.gripDown * shaft, grip, grip + path.posture.club * shaft};
}

ClubRates clubOver(const SwingPath& path, SwingLeg leg, double fromShare, double toShare) {
  const LegAngles& angles = legAngles(path.joints.style, leg);
  const Rates arms = angles.arms.over(fromShare, toShare);
  const auto [lo, hi] = std::minmax({angles.arms(fromShare), angles.arms(toShare)});

  // The club's angle is (1 - cock) arms + cock clubAtEnd share.
  Rates club = std::abs(1 - path.cock) * arms;
  club.first += path.cock * std::abs(angles.clubAtEnd);

  const Rates grip = chained(jointOver(path.joints, Joint::Grip, lo, hi), arms);
  const Rates shaft = turned(club, chained(planeSlopeOver(path.joints, lo, hi), arms));
  return {grip + path.posture.gripDown * shaft, grip + path.posture.club * shaft};
}

}  // namespace baywright
