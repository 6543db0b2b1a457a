// SPDX-License-Identifier: Apache-2.0
#include "swing/swing_path.h"

#include <gtest/gtest.h>

#include "swing/swing_capsule.h"
#include "swings.h"

namespace baywright {
namespace {

TEST(SwingPath, MeetsTheBallAtAddressAndAtImpact) {
  for (const Club& club : bag()) {
    const SwingPath path = pathOf(1.80, club);
    for (const double moment : {0.0, kImpactMoment})
      EXPECT_LT((clubAt(path, placeAt(moment)).head - Vec3(0, 0, kClubHeadRadius)).norm(), 1e-9) << club.name;
  }
}

TEST(SwingPath, SwingsAClubOfConstantLength) {
  const SwingPath path = pathOf(1.80, bag()[0]);
  for (double moment = 0; moment <= 1; moment += 0.01) {
    const ClubPose club = clubAt(path, placeAt(moment));
    EXPECT_NEAR((club.head - club.grip).norm(), path.posture.club, 1e-12);
    EXPECT_NEAR((club.butt - club.grip).norm(), path.posture.gripDown, 1e-12);
  }
}

TEST(SwingPath, NeverDropsTheHeadBelowTheBall) {
  for (const double stature : {1.525, 1.755, 2.0}) {
    for (const Club& club : bag()) {
      const SwingPath path = pathOf(stature, club);
      for (double moment = 0; moment <= 1; moment += 0.002)
        EXPECT_GT(clubAt(path, placeAt(moment)).head.z(), kClubHeadRadius - 0.01) << club.name << moment;
    }
  }
}

TEST(SwingPath, GoesUpTheTrailSideAndFinishesBehindTheBack) {
  const SwingPath path = pathOf(1.755, bag()[0]);
  const ClubPose takeaway = clubAt(path, placeAt(0.2));
  EXPECT_LT(takeaway.head.x(), -1.0);
  const ClubPose through = clubAt(path, placeAt(0.72));
  EXPECT_GT(through.head.x(), 1.4);
  const ClubPose finish = clubAt(path, placeAt(1));
  const Vec3 hub = jointAt(path.joints, Joint::Hub, armAngle(path, placeAt(1)));
  EXPECT_GT(finish.grip.x(), hub.x());        // hands ahead of the lead shoulder
  EXPECT_GT(finish.grip.z(), hub.z());        // and above it
  EXPECT_LT(finish.head.x(), hub.x() - 0.5);  // club behind the back of one who faces the target
  EXPECT_LT(finish.head.z(), finish.grip.z());
}

TEST(SwingPath, KeepsTheClubClearOfThePersonsHead) {
  for (const double stature : {1.525, 1.755, 2.0}) {
    for (const Club& club : {bag()[0], bag()[4]}) {
      const SwingPath path = pathOf(stature, club);
      for (double moment = 0; moment <= 1; moment += 0.005) {
        const double arms = armAngle(path, placeAt(moment));
        const ClubPose pose = clubAt(path, placeAt(moment));
        const Vec3 skull = jointAt(path.joints, Joint::HeadHigh, arms);
        EXPECT_GT(distanceToCore(skull, {pose.butt, pose.head, 0}), path.body.headRadius)
            << stature << " " << club.name << " " << moment;
      }
    }
  }
}

TEST(SwingPath, BoundsTheMotionOfTheClub) {
  for (const SwingStyle style : {SwingStyle::Expected, SwingStyle::FullExtension}) {
    SwingPath path = pathOf(1.755, bag()[0], style);
    for (const double cock : {1.0, 0.5, 1.25}) {
      path.cock = cock;
      for (const SwingLeg leg : {SwingLeg::Backswing, SwingLeg::Downswing, SwingLeg::FollowThrough}) {
        for (double from = 0; from < 0.99; from += 0.1) {
          const ClubRates bound = clubOver(path, leg, from, from + 0.1);
          const double h = 5e-4;
          for (double share = from + h; share < from + 0.1 - h; share += h) {
            const ClubPose a = clubAt(path, {leg, share - h});
            const ClubPose b = clubAt(path, {leg, share});
            const ClubPose c = clubAt(path, {leg, share + h});
            EXPECT_GE(bound.head.first, (c.head - b.head).norm() / h - 1e-6);
            EXPECT_GE(bound.butt.first, (c.butt - b.butt).norm() / h - 1e-6);
            EXPECT_GE(bound.head.second, (c.head - 2 * b.head + a.head).norm() / (h * h) - 1e-3);
          }
        }
      }
    }
  }
}

TEST(SwingPath, PosesTheWholePerson) {
  const std::vector<SwingCapsule> pose = poseAt(pathOf(1.755, bag()[0]), 0.3);
  EXPECT_EQ(pose.size(), limbs().size() + 2);
  EXPECT_EQ(pose.back().part, BodyPart::ClubHead);
  for (const SwingCapsule& each : pose) EXPECT_EQ(each.moment, 0.3);
}

TEST(SwingPath, PosesALeftHanderInTheMirror) {
  SwingPath path = pathOf(1.755, bag()[0]);
  const std::vector<SwingCapsule> right = poseAt(path, 0.4);
  path.hand = Hand::Left;
  const std::vector<SwingCapsule> left = poseAt(path, 0.4);
  ASSERT_EQ(right.size(), left.size());
  for (std::size_t i = 0; i < right.size(); ++i) {
    EXPECT_EQ(left[i].capsule.a, right[i].capsule.a.cwiseProduct(Vec3(1, -1, 1)));
    EXPECT_EQ(left[i].capsule.b, right[i].capsule.b.cwiseProduct(Vec3(1, -1, 1)));
  }
}

}  // namespace
}  // namespace baywright
