// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "job/golfer.h"
#include "swing/body_path.h"
#include "swing/moment.h"

namespace baywright {

/// One motion from address to finish: the body's path, and the club that it swings. Right-hander's swing
/// frame (envelope.h) whatever `hand` says; poseAt and the envelopes mirror what they hand out.
///
/// The club turns in the plane of the two-link swing about the hands (schedule.h). The plane goes through the
/// target line and the hub; the hub shifts toward the target and rises, and the plane lies down as the club
/// goes over the shoulder and behind the back. Assumes a full swing at a ball on the ground, both feet level,
/// a straight shaft, the same swing with every club.
struct SwingPath {
  Hand hand = Hand::Right;
  BodyLengths body{};
  AddressPosture posture;
  BodyPath joints;
  double cock = 1;  ///< of the wrists, as a multiple of the usual

  bool operator==(const SwingPath&) const = default;
};

struct SwingPathInput {
  Hand hand = Hand::Right;
  BodyLengths body{};
  AddressPosture posture;
  SwingStyle style = SwingStyle::Expected;
  double cock = 1;
  Vec3 arcShift = Vec3::Zero();
};

SwingPath swingPathOf(const SwingPathInput& input);

double armAngle(const SwingPath& path, LegPlace place);

struct ClubPose {
  Vec3 butt;
  Vec3 grip;
  Vec3 head;  ///< middle of the ball that holds the club's head, kClubHeadRadius
};
ClubPose clubAt(const SwingPath& path, LegPlace place);

/// Bounds of the motion of the club's two ends over shares of one leg, per share.
struct ClubRates {
  Rates butt;
  Rates head;
};
ClubRates clubOver(const SwingPath& path, SwingLeg leg, double fromShare, double toShare);

}  // namespace baywright
