// SPDX-License-Identifier: Apache-2.0
#include "swing/posture.h"

#include <gtest/gtest.h>

#include "swing/swing_path.h"
#include "swing/two_link.h"
#include "swings.h"

namespace baywright {
namespace {

constexpr double kStatures[] = {1.0, 1.45, 1.755, 2.0, 2.3};

TEST(Posture, HoldsTheClubOnItsAxis) {
  const Club driver = bag()[0];
  const AddressPosture posture = postureOf(bodyOf(1.80), driver);
  // From the floor at the heel up the shaft: what is above the hands and what is below make up the club.
  const double below = posture.grip.z() / std::sin(posture.shaftSlope);
  EXPECT_NEAR(below + posture.gripDown, driver.length, 1e-12);
  EXPECT_NEAR((posture.grip - Vec3(0, 0, kClubHeadRadius)).norm(), posture.club, 1e-12);
}

TEST(Posture, HangsStraightArmsFromTheShoulders) {
  const BodyLengths body = bodyOf(1.80);
  const AddressPosture posture = postureOf(body, bag()[0]);
  const Vec3 shoulder = posture.hub + Vec3(body.halfShoulders, 0, 0);
  EXPECT_NEAR((shoulder - posture.grip).norm(), body.arm(), 1e-12);
}

TEST(Posture, PutsThePlaneThroughHeadAndHub) {
  const AddressPosture posture = postureOf(bodyOf(1.80), bag()[3]);
  const Vec3 head = posture.hub + (posture.arm() + posture.club) * linkDirection(0, posture.planeSlope);
  EXPECT_LT((head - Vec3(0, 0, kClubHeadRadius)).norm(), 1e-12);
}

TEST(Posture, GripsDownOnlyWhenTheClubIsTooLong) {
  const Club driver = bag()[0];
  EXPECT_NEAR(postureOf(bodyOf(1.90), driver).gripDown, 0.10, 0.005);
  EXPECT_GT(postureOf(bodyOf(1.30), driver).gripDown, 0.25);
  EXPECT_LE(postureOf(bodyOf(1.30), driver).grip.z(), 0.5 * 1.30);
}

TEST(Posture, MovesAwayAndUpWithStatureAndLength) {
  for (const Club& club : bag()) {
    double lastZ = 0;
    double lastReach = 0;
    for (const double stature : kStatures) {
      const AddressPosture posture = postureOf(bodyOf(stature), club);
      EXPECT_GT(posture.hub.z(), lastZ) << club.name << stature;
      EXPECT_GT(-posture.hub.y(), lastReach) << club.name << stature;
      lastZ = posture.hub.z();
      lastReach = -posture.hub.y();
    }
  }
  const BodyLengths body = bodyOf(1.755);
  Club club = bag()[0];
  double last = 0;
  for (club.length = 0.80; club.length < 1.25; club.length += 0.05) {
    const double reach = -postureOf(body, club).hub.y();
    EXPECT_GT(reach, last) << club.length;
    last = reach;
  }
}

TEST(Posture, StandsMoreUprightOverALongerClub) {
  const BodyLengths body = bodyOf(1.755);
  EXPECT_LT(postureOf(body, bag()[0]).spineTilt, postureOf(body, bag()[4]).spineTilt);
  EXPECT_LT(postureOf(body, bag()[0]).planeSlope, postureOf(body, bag()[4]).planeSlope);
}

TEST(Posture, IsFiniteOverTheWholeRange) {
  for (const double stature : kStatures) {
    for (const double length : {0.457, 0.8, 1.25}) {
      for (const double lie : {0.7, 1.0, 1.3}) {
        Club club;
        club.length = length;
        club.lie = lie;
        const AddressPosture posture = postureOf(bodyOf(stature), club);
        EXPECT_TRUE(posture.hub.allFinite() && posture.pelvis.allFinite());
        EXPECT_GT(posture.arm(), 0);
        EXPECT_GT(posture.club, 0.1) << length << " " << lie;
        EXPECT_GT(posture.pelvis.z(), 0.25 * stature);
        EXPECT_LT(posture.hub.z(), 0.83 * stature);
        EXPECT_LT(posture.pelvis.y(), posture.hub.y());
      }
    }
  }
}

}  // namespace
}  // namespace baywright
