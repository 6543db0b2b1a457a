// SPDX-License-Identifier: Apache-2.0
#include "swing/swing_capsule.h"

namespace baywright {

std::vector<SwingCapsule> poseAt(const SwingPath& path, double moment) {
  const LegPlace place = placeAt(moment);
  const double arms = armAngle(path, place);
  std::vector<SwingCapsule> pose;
  for (const Limb& limb : limbs()) {
    pose.push_back(
        {{jointAt(path.joints, limb.from, arms), jointAt(path.joints, limb.to, arms), path.body.*limb.radius},
         moment,
         limb.part});
  }
  const ClubPose club = clubAt(path, place);
  pose.push_back({{club.butt, club.head, kShaftRadius}, moment, BodyPart::Shaft});
  pose.push_back({{club.head, club.head, kClubHeadRadius}, moment, BodyPart::ClubHead});
  mirrorFor(path.hand, pose);
  return pose;
}

void mirrorFor(Hand hand, std::vector<SwingCapsule>& capsules) {
  if (hand == Hand::Right) return;
  for (SwingCapsule& each : capsules) {
    each.capsule.a.y() = -each.capsule.a.y();
    each.capsule.b.y() = -each.capsule.b.y();
  }
}

}  // namespace baywright
