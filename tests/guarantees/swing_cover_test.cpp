// SPDX-License-Identifier: Apache-2.0
#include "swing/cover.h"

#include <gtest/gtest.h>

#include "swings.h"

namespace baywright {
namespace {

/// How far a ball about a point sticks out of the one capsule that holds it best.
double sticksOut(const Vec3& point, double radius, const std::vector<SwingCapsule>& cover) {
  double least = 1e9;
  for (const SwingCapsule& each : cover)
    least = std::min(least, distanceToCore(point, each.capsule) + radius - each.capsule.radius);
  return least;
}

/// Every pose of a path at twenty times as many moments as the cover has stretches, every capsule of the pose
/// cut in `slices`, is inside the cover. A failure names the moment and the part.
void expectHeld(const SwingPath& path, int slices) {
  const std::vector<SwingCapsule> cover = coverOf(path);
  constexpr int kMoments = 20 * 106;
  double worst = -1;
  SwingCapsule where;
  for (int i = 0; i <= kMoments; ++i) {
    for (const SwingCapsule& part : poseAt(path, static_cast<double>(i) / kMoments)) {
      for (int slice = 0; slice <= slices; ++slice) {
        const double t = static_cast<double>(slice) / slices;
        const Vec3 point = part.capsule.a + t * (part.capsule.b - part.capsule.a);
        const double out = sticksOut(point, part.capsule.radius, cover);
        if (out > worst) {
          worst = out;
          where = part;
        }
      }
    }
  }
  EXPECT_LT(worst, 1e-3) << "moment " << where.moment << " part " << static_cast<int>(where.part);
}

TEST(Cover, HoldsEveryPoseOfATallMansDriver) {
  expectHeld(pathOf(2.0, bag()[0]), 6);
}

TEST(Cover, HoldsEveryPoseOfAShortWomansWedge) {
  expectHeld(pathOf(1.525, bag()[4]), 6);
}

TEST(Cover, HoldsEveryPoseOfTheFullExtension) {
  expectHeld(pathOf(1.755, bag()[0], SwingStyle::FullExtension), 6);
}

TEST(Cover, HoldsALeftHandersSwing) {
  SwingPath path = pathOf(1.755, bag()[3]);
  path.hand = Hand::Left;
  expectHeld(path, 3);
}

TEST(Cover, HoldsASwingThatWasBentToATape) {
  const BodyLengths body = bodyOf(1.80);
  expectHeld(
      swingPathOf(
          {.body = body, .posture = postureOf(body, bag()[0]), .cock = 0.6, .arcShift = {0, -0.1, 0.15}}),
      3);
}

TEST(Cover, HoldsTheEdgesOfTheValidRange) {
  expectHeld(pathOf(1.0, clubOf("long", 49, 45)), 2);
  expectHeld(pathOf(2.3, clubOf("short", 18, 70)), 2);
}

TEST(Cover, WouldNotHoldWithoutItsAllowance) {
  // The check above can fail: a cover of bare poses has gaps.
  const SwingPath path = pathOf(1.755, bag()[0]);
  std::vector<SwingCapsule> bare;
  for (int i = 0; i <= 100; ++i) {
    const auto pose = poseAt(path, i / 100.0);
    bare.insert(bare.end(), pose.begin(), pose.end());
  }
  const SwingCapsule head = poseAt(path, 0.705).back();
  EXPECT_GT(sticksOut(head.capsule.a, head.capsule.radius, bare), 0.02);
}

TEST(Cover, AddsAboutACentimetreToTheHeadsOutline) {
  for (const double stature : {1.45, 1.755, 2.0}) {
    for (const SwingStyle style : {SwingStyle::Expected, SwingStyle::FullExtension}) {
      for (const SwingCapsule& each : coverOf(pathOf(stature, bag()[0], style))) {
        if (each.part != BodyPart::ClubHead) continue;
        EXPECT_DOUBLE_EQ(each.capsule.radius, kClubHeadRadius + kHeadBow) << stature;
      }
    }
  }
}

TEST(Cover, IsSmallEnoughToAssessQuickly) {
  EXPECT_LE(coverOf(pathOf(1.755, bag()[0])).size(), 270U);
  EXPECT_LE(coverOf(pathOf(1.755, bag()[0], SwingStyle::FullExtension)).size(), 200U);
}

TEST(Cover, OfTheClubIsPartOfTheWhole) {
  const SwingPath path = pathOf(1.755, bag()[0]);
  const std::vector<SwingCapsule> club = coverOfClub(path);
  const std::vector<SwingCapsule> whole = coverOf(path);
  for (std::size_t i = 0; i < club.size(); ++i) EXPECT_EQ(club[i], whole[i]);
}

}  // namespace
}  // namespace baywright
