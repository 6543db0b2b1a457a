// SPDX-License-Identifier: Apache-2.0
#include "optics/shadow.h"

#include "optics/aim.h"
#include "optics_scene.h"

namespace baywright {
namespace {

/// A rough person of 1.8 m, `behind` the strike point's line in d and to the left of the ball.
std::vector<Capsule> person(double d, double r) {
  return {Capsule{{d, r, 0.1}, {d, r, 0.9}, 0.12}, Capsule{{d, r, 0.9}, {d, r + 0.2, 1.45}, 0.18},
          Capsule{{d, r + 0.25, 1.68}, {d, r + 0.25, 1.68}, 0.11}};
}

/// An arm and club raised to a height.
std::vector<Capsule> raised(double d, double r, double top) {
  std::vector<Capsule> body = person(d, r);
  body.push_back({{d, r + 0.2, 1.4}, {d, r + 0.1, top}, 0.05});
  return body;
}

Picture fromCeiling(double distance) {
  Projector projector;
  projector.throwMin = 0.5;
  projector.throwMax = 3.0;
  projector.offset = 0.5;
  projector.keystoneMax = degrees(35);
  ProjectorMount mount;
  mount.lens = {-distance, 0, 2.5};
  const auto aim = aimAt(wideScreen(), projector, mount, {});
  EXPECT_TRUE(aim && aim->works);
  return aim->picture;
}

TEST(Shadow, NoneWhenTheProjectorHangsBetweenGolferAndScreen) {
  const Picture picture = fromCeiling(2.4);
  const std::vector<Capsule> golfer = person(-3, -0.8);
  const Shadow shadow = shadowOf(picture, golfer, {});
  EXPECT_EQ(shadow.atAddress, 0);
  EXPECT_EQ(shadow.worst, 0);
  EXPECT_TRUE(shadow.outlinesAtAddress.empty());
}

TEST(Shadow, GrowsAsTheProjectorHangsFartherBehindTheGolfer) {
  const std::vector<Capsule> golfer = person(-3, -0.8);
  double before = 0;
  for (const double distance : {4.5, 5.0, 5.5, 6.0, 7.0}) {
    const double share = shadowOf(fromCeiling(distance), golfer, {}).atAddress;
    EXPECT_GT(share, before) << distance;
    before = share;
  }
  EXPECT_GT(before, 0.05);
}

TEST(Shadow, WorstMomentIsTheOneThatShadesMost) {
  const Picture picture = fromCeiling(5);
  const std::vector<Capsule> address = person(-3, -0.8);
  const std::vector<Capsule> low = raised(-3, -0.8, 1.5), high = raised(-3, -0.8, 2.2),
                             middle = raised(-3, -0.8, 1.9);
  const std::vector<BodyAtMoment> swing{{0.0, low}, {0.1, high}, {0.2, middle}, {0.3, high}};
  const Shadow shadow = shadowOf(picture, address, swing);
  EXPECT_EQ(shadow.worstMoment, 1u) << "the first of equals";
  EXPECT_GT(shadow.worst, shadow.atAddress);
  EXPECT_LT(shadow.mean, shadow.worst);
  EXPECT_NEAR(shadow.worst, shadowOf(picture, high, {}).atAddress, 1e-15);
  EXPECT_GT(shadow.outlinesAtWorst.size(), 0u);
}

TEST(Shadow, OverlappingLimbsCountOnce) {
  const Picture picture = fromCeiling(5);
  std::vector<Capsule> golfer = person(-3, -0.8);
  const double once = shadowOf(picture, golfer, {}).atAddress;
  golfer.push_back(golfer.front());
  golfer.push_back(golfer.back());
  EXPECT_NEAR(shadowOf(picture, golfer, {}).atAddress, once, 1e-12);
}

TEST(Shadow, MirrorsForTheOtherHand) {
  const Picture picture = fromCeiling(5);
  std::vector<Capsule> golfer = raised(-3, -0.8, 2.0);
  const double right = shadowOf(picture, golfer, {}).atAddress;
  for (Capsule& limb : golfer) limb.a.y() = -limb.a.y(), limb.b.y() = -limb.b.y();
  EXPECT_NEAR(shadowOf(picture, golfer, {}).atAddress, right, 1e-12);
}

TEST(Shadow, NobodyShadesNothing) {
  const Shadow shadow = shadowOf(fromCeiling(5), {}, {});
  EXPECT_EQ(shadow.atAddress, 0);
  EXPECT_EQ(shadow.worst, 0);
}

}  // namespace
}  // namespace baywright
