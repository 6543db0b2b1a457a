// SPDX-License-Identifier: Apache-2.0
#include "optics/aim.h"

#include "optics_scene.h"

namespace baywright {
namespace {

ProjectorMount at(const Vec3& lens, MountKind kind = MountKind::Ceiling) {
  return {.kind = kind, .lens = lens};
}

TEST(Aim, NeedsNeitherShiftNorTurnOppositeTheMiddle) {
  const Aim aim = aimAt(wideScreen(), centredProjector(), at({-3.84, 0, 1.2}), {}).value();
  EXPECT_TRUE(aim.works);
  EXPECT_NEAR(aim.mount.throwRatio, 1.2, 1e-12);
  EXPECT_EQ(aim.mount.yaw, 0);
  EXPECT_EQ(aim.mount.pitch, 0);
  EXPECT_NEAR(aim.mount.shiftUp, 0, 1e-12);
  EXPECT_NEAR(aim.picture.coverage, 1, 1e-9);
  EXPECT_NEAR(aim.picture.spill, 0, 1e-9);
}

TEST(Aim, UsesShiftBeforeItTurns) {
  Projector projector = centredProjector();
  projector.shiftUpMax = 0.7;
  projector.shiftSideMax = 0.3;
  const Aim aim = aimAt(wideScreen(), projector, at({-3.84, 0.5, 2.2}), {}).value();
  EXPECT_TRUE(aim.works);
  EXPECT_EQ(aim.mount.pitch, 0);
  EXPECT_EQ(aim.mount.yaw, 0);
  EXPECT_NEAR(aim.mount.shiftUp, -1.0 / 1.8, 1e-9);
  EXPECT_NEAR(aim.mount.shiftSide, -0.5 / 3.2, 1e-9);
  EXPECT_NEAR(aim.picture.coverage, 1, 1e-9);
}

TEST(Aim, TurnsTheMiddleOfThePictureToTheMiddleOfTheScreen) {
  RandomMounts random(61);
  Projector projector = centredProjector();
  projector.keystoneMax = degrees(60);
  projector.shiftUpMax = 0.1;
  projector.throwMin = 0.3;
  projector.throwMax = 2.5;
  for (int i = 0; i < 100; ++i) {
    projector.offset = random.between(-0.6, 0.6);
    const Vec3 lens{-random.between(2.5, 4.5), random.between(-1, 1), random.between(0.3, 2.5)};
    const Aim aim =
        aimAt(wideScreen(), projector, at(lens, i % 2 ? MountKind::Ceiling : MountKind::Floor), {}).value();
    const Vec2 middle = mapped(aim.picture.screenFromPanel, {960, 540}).value();
    expectNear(middle, {1.6, 0.9}, 1e-9);
    EXPECT_TRUE(aim.works);
    EXPECT_NEAR(aim.picture.coverage, 1, 1e-9) << "and covers the screen";
    double inside = 1e9;  // the tightest screen corner lies on the picture's edge: no longer zoom covers it
    for (const Vec2& corner : aim.picture.face.corners()) {
      const Vec2 pixel = mapped(aim.picture.panelFromScreen, corner).value();
      inside = std::min({inside, pixel.minCoeff(), (aim.picture.lens.panel - pixel).minCoeff()});
    }
    EXPECT_NEAR(inside, 0, 1e-6);
  }
}

TEST(Aim, SaysWhichLimitIsMissing) {
  Projector projector = centredProjector();
  Aim aim = aimAt(wideScreen(), projector, at({-2.0, 0, 1.2}), {}).value();
  EXPECT_FALSE(aim.works) << "too near for the widest zoom";
  EXPECT_LT(aim.margins.coverage, 0);
  EXPECT_EQ(aim.margins.zoomWide, 0);
  aim = aimAt(wideScreen(), projector, at({-7.0, 0, 1.2}), {.coverage = 0.98, .spill = 0.05}).value();
  EXPECT_FALSE(aim.works) << "too far for the longest";
  EXPECT_LT(aim.margins.spill, 0);
  EXPECT_EQ(aim.margins.zoomLong, 0);
  projector.distanceMin = 3.9;
  aim = aimAt(wideScreen(), projector, at({-3.84, 0, 1.2}), {}).value();
  EXPECT_FALSE(aim.works);
  EXPECT_NEAR(aim.margins.focusNear, -0.06, 1e-12);
}

TEST(Aim, DoesNotTurnAProjectorWithoutKeystoneCorrection) {
  Projector projector = centredProjector();
  projector.keystoneMax = 0;
  const Aim aim = aimAt(wideScreen(), projector, at({-3.84, 0, 2.0}), {}).value();
  EXPECT_EQ(aim.mount.pitch, 0);
  EXPECT_FALSE(aim.works);
  EXPECT_LT(aim.margins.coverage, 0);
}

TEST(Aim, DoesNotBlameTheZoomForDifferingAspects) {
  Screen tall = wideScreen();
  tall.height = 2.4;
  tall.bottom = 0;
  const AimNeeds needs{.coverage = 0.99, .spill = 0.01};
  const Aim aim = aimAt(tall, centredProjector(), at({-4.5, 0, 1.2}), needs).value();
  EXPECT_NEAR(aim.picture.spill, 0.25, 1e-9);
  EXPECT_TRUE(aim.works);
}

TEST(Aim, MarginsOfAMountAreWhatIsLeft) {
  Projector projector = centredProjector();
  projector.shiftUpMax = 0.5;
  ProjectorMount mount = squareMount();
  mount.shiftUp = -0.2;
  mount.pitch = degrees(10);
  const Picture picture = seen(wideScreen(), projector, mount);
  const MountMargins margins = mountMargins(picture, projector, mount, {.coverage = 0.5, .spill = 1});
  EXPECT_NEAR(margins.zoomWide, 0.2, 1e-12);
  EXPECT_NEAR(margins.zoomLong, 0.3, 1e-12);
  EXPECT_NEAR(margins.focusNear, 2.84, 1e-12);
  EXPECT_NEAR(margins.focusFar, 4.16, 1e-12);
  EXPECT_NEAR(margins.shiftUp, 0.3, 1e-12);
  EXPECT_NEAR(margins.shiftSide, 0, 1e-12);
  EXPECT_NEAR(margins.keystone, degrees(20), 1e-12);
  EXPECT_NEAR(margins.coverage, picture.coverage - 0.5, 1e-12);
}

TEST(Aim, RefusesALensBehindTheScreen) {
  EXPECT_FALSE(aimAt(wideScreen(), centredProjector(), at({1, 0, 1.2}), {}));
}

}  // namespace
}  // namespace baywright
