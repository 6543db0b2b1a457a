// SPDX-License-Identifier: Apache-2.0
#include "optics/lens.h"

#include <limits>

#include "optics_scene.h"

namespace baywright {
namespace {

ProjectorLens lensAt(const ProjectorMount& mount, const Projector& projector = centredProjector()) {
  return lensOf(projector, mount).value();
}

TEST(Lens, LooksAlongTheBayWhenNotTurned) {
  const ProjectorLens lens = lensAt(squareMount());
  expectNear(lens.axis, Vec3::UnitX(), 1e-15);
  expectNear(bayRayFromPanel(lens, {960, 540}), Vec3::UnitX(), 1e-15);
}

TEST(Lens, PicturesWidthIsDistanceOverThrowRatio) {
  const ProjectorLens lens = lensAt(squareMount());
  const Vec3 left = bayRayFromPanel(lens, {0, 540}), right = bayRayFromPanel(lens, {1920, 540});
  EXPECT_NEAR(right.y() - left.y(), 1 / 1.2, 1e-15);
  EXPECT_LT(left.y(), 0) << "the panel's left is the golfer's left";
}

TEST(Lens, TopOfThePanelIsTopOfThePicture) {
  const ProjectorLens lens = lensAt(squareMount());
  EXPECT_GT(bayRayFromPanel(lens, {960, 0}).z(), bayRayFromPanel(lens, {960, 1080}).z());
}

TEST(Lens, YawTurnsRightPitchTurnsUp) {
  ProjectorMount mount = squareMount();
  mount.yaw = degrees(20);
  EXPECT_NEAR(lensAt(mount).axis.y(), std::sin(degrees(20)), 1e-15);
  mount.yaw = 0;
  mount.pitch = degrees(-10);
  EXPECT_NEAR(lensAt(mount).axis.z(), -std::sin(degrees(10)), 1e-15);
}

TEST(Lens, RollTurnsClockwiseSeenFromBehind) {
  ProjectorMount mount = squareMount();
  mount.roll = degrees(5);
  const Vec3 top = bayRayFromPanel(lensAt(mount), {960, 0});
  EXPECT_GT(top.y(), 0) << "the top goes to the right";
  const Vec3 right = bayRayFromPanel(lensAt(mount), {1920, 540});
  EXPECT_LT(right.z(), 0) << "and the right goes down";
}

TEST(Lens, OffsetWorksUpwardStandingAndDownwardHanging) {
  Projector projector = centredProjector();
  projector.offset = 0.5;
  ProjectorMount mount = squareMount();
  mount.kind = MountKind::Floor;
  EXPECT_NEAR(bayRayFromPanel(lensAt(mount, projector), {960, 1080}).z(), 0, 1e-15)
      << "lower edge on the axis";
  mount.kind = MountKind::Wall;
  EXPECT_NEAR(bayRayFromPanel(lensAt(mount, projector), {960, 1080}).z(), 0, 1e-15);
  mount.kind = MountKind::Ceiling;
  EXPECT_NEAR(bayRayFromPanel(lensAt(mount, projector), {960, 0}).z(), 0, 1e-15) << "upper edge on the axis";
}

TEST(Lens, ShiftMovesThePictureByItsShareOfTheSizeWhicheverWayItHangs) {
  for (const MountKind kind : {MountKind::Ceiling, MountKind::Floor}) {
    ProjectorMount mount = squareMount();
    mount.kind = kind;
    const ProjectorLens still = lensAt(mount);
    mount.shiftUp = 0.25;
    mount.shiftSide = -0.1;
    const ProjectorLens shifted = lensAt(mount);
    const Vec3 move = bayRayFromPanel(shifted, {0, 0}) - bayRayFromPanel(still, {0, 0});
    EXPECT_NEAR(move.z(), 0.25 * still.extent.y(), 1e-15);
    EXPECT_NEAR(move.y(), -0.1 * still.extent.x(), 1e-15);
  }
}

TEST(Lens, AxesStaySquareAndUnitHoweverItIsTurned) {
  RandomMounts mounts(1);
  for (int i = 0; i < 100; ++i) {
    const ProjectorLens lens = lensAt(mounts.next());
    Mat3 axes;
    axes << lens.axis, lens.right, lens.up;
    EXPECT_NEAR((axes.transpose() * axes - Mat3::Identity()).norm(), 0, 1e-14);
    EXPECT_NEAR(axes.determinant(), 1, 1e-14) << "as the bay's own d, r, u";
  }
}

TEST(Lens, PixelToRayToPointToPixelComesBack) {
  RandomMounts mounts(2);
  for (int i = 0; i < 100; ++i) {
    const ProjectorLens lens = lensAt(mounts.next());
    const Vec2 pixel{mounts.between(-500, 2500), mounts.between(-500, 1500)};
    const Vec3 point = lens.centre + mounts.between(0.1, 9) * bayRayFromPanel(lens, pixel);
    const auto back = panelFromBay(lens, point);
    ASSERT_TRUE(back);
    expectNear(*back, pixel, 1e-9);
  }
}

TEST(Lens, SeesNothingBehindIt) {
  const ProjectorLens lens = lensAt(squareMount());
  EXPECT_FALSE(panelFromBay(lens, {-4, 0, 1.2}));
  EXPECT_FALSE(panelFromBay(lens, lens.centre));
}

TEST(Lens, RefusesWhatMakesNoPicture) {
  const Projector good = centredProjector();
  ProjectorMount mount = squareMount();
  mount.throwRatio = 0;
  EXPECT_NE(lensOf(good, mount).error().sentence().find("throw ratio"), std::string::npos);
  mount = squareMount();
  mount.yaw = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(lensOf(good, mount));
  Projector projector = good;
  projector.panelHeight = 0;
  EXPECT_NE(lensOf(projector, squareMount()).error().sentence().find("pixels"), std::string::npos);
  projector = good;
  projector.offset = std::numeric_limits<double>::infinity();
  EXPECT_FALSE(lensOf(projector, squareMount()));
}

}  // namespace
}  // namespace baywright
