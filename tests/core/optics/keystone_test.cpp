// SPDX-License-Identifier: Apache-2.0
#include "optics/keystone.h"

#include "optics_scene.h"

namespace baywright {
namespace {

CornerFit fitted(const Picture& picture, CornerFill fill = CornerFill::Screen) {
  return fitCorners(picture, centredProjector(), fill).value();
}

TEST(Keystone, NothingToMoveWhenThePictureFillsTheScreen) {
  const CornerFit fit = fitted(seen(wideScreen(), centredProjector(), squareMount()));
  for (const Vec2& move : fit.moves) expectNear(move, Vec2::Zero(), 1e-8);
  EXPECT_NEAR(fit.pixelLoss, 0, 1e-9);
  EXPECT_TRUE(fit.reachable);
  EXPECT_TRUE(fit.withinRange);
}

// 3.84 x 2.16 m on 3.2 x 1.8 m: a twelfth of each side is cut off, 160 and 90 native pixels.
TEST(Keystone, MovesEveryCornerInwardForAPictureThatIsTooLarge) {
  ProjectorMount mount = squareMount();
  mount.throwRatio = 1.0;
  const CornerFit fit = fitted(seen(wideScreen(), centredProjector(), mount));
  expectNear(fit.moves[0], {160, 90}, 1e-8);
  expectNear(fit.moves[1], {-160, 90}, 1e-8);
  expectNear(fit.moves[2], {-160, -90}, 1e-8);
  expectNear(fit.moves[3], {160, -90}, 1e-8);
  EXPECT_NEAR(fit.pixelLoss, 1 - 25.0 / 36, 1e-12);
  EXPECT_NEAR(fit.lightLoss, fit.pixelLoss, 1e-12);
  EXPECT_NEAR(fit.overshoot, -90, 1e-8);
}

TEST(Keystone, MovedCornersFallOnTheScreensCorners) {
  RandomMounts mounts(11);
  int tried = 0;
  for (int i = 0; i < 200; ++i) {
    const auto picture = pictureOf(wideScreen(), centredProjector(), mounts.next());
    if (!picture) continue;
    for (const CornerFill fill : {CornerFill::Screen, CornerFill::PanelAspect}) {
      const auto fit = fitCorners(*picture, centredProjector(), fill);
      if (!fit) continue;
      ++tried;
      const auto own = picture->lens.panelCorners();
      for (std::size_t k = 0; k < 4; ++k) {
        const Vec3 ray = bayRayFromPanel(picture->lens, own[k] + fit->moves[k]);
        const Vec3 hit = picture->lens.centre - picture->lens.centre.x() / ray.x() * ray;
        expectNear(screenFromBay(picture->face, hit), fit->target[k], 1e-8);
      }
    }
  }
  EXPECT_GT(tried, 200);
}

TEST(Keystone, LossIsWhatTheMovedQuadrangleLeavesOfThePanel) {
  RandomMounts mounts(12);
  constexpr int kPoints = 20000;
  const Picture picture = seen(wideScreen(), centredProjector(), turnedMount(degrees(8), degrees(5), 0.9));
  const CornerFit fit = fitted(picture);
  ASSERT_TRUE(fit.reachable);
  int dark = 0;
  for (int i = 0; i < kPoints; ++i) {
    const Vec2 pixel{mounts.between(0, 1920), mounts.between(0, 1080)};
    const Vec2 p = mapped(picture.screenFromPanel, pixel).value();
    dark += p.x() < 0 || p.x() > 3.2 || p.y() < 0 || p.y() > 1.8;
  }
  EXPECT_NEAR(fit.pixelLoss, dark / double(kPoints), 0.015);
}

TEST(Keystone, SaysWhenThePictureDoesNotReach) {
  ProjectorMount mount = squareMount();
  mount.throwRatio = 1.5;  // 2.56 m wide: 0.32 m short on either side, 240 pixels of 2.56 m / 1920
  const CornerFit fit = fitted(seen(wideScreen(), centredProjector(), mount));
  EXPECT_FALSE(fit.reachable);
  EXPECT_NEAR(fit.overshoot, 240, 1e-6);
  EXPECT_NEAR(fit.pixelLoss, 0, 1e-9) << "all of the panel is used";
}

TEST(Keystone, LetterboxesInsideAScreenOfAnotherAspect) {
  Screen tall = wideScreen();
  tall.height = 2.4;  // 4:3
  const Picture picture = seen(tall, centredProjector(), squareMount());
  const CornerFit fit = fitted(picture, CornerFill::PanelAspect);
  expectNear(fit.target[0], {0, 2.1}, 1e-12);
  expectNear(fit.target[2], {3.2, 0.3}, 1e-12);
  tall.width = 2.0;
  const auto narrow = largestInside(faceOf(tall), 16.0 / 9);
  expectNear(narrow[1], {2.0, 1.2 + 0.5625}, 1e-12);
  Screen wide = wideScreen();
  wide.width = 6;
  const auto barsBeside = largestInside(faceOf(wide), 16.0 / 9);
  expectNear(barsBeside[3], {1.4, 0}, 1e-12);
}

TEST(Keystone, JudgesTheAngleOnEitherAxis) {
  Projector projector = centredProjector();
  projector.keystoneMax = degrees(10);
  ProjectorMount mount = squareMount();
  mount.throwRatio = 0.8;
  mount.pitch = degrees(10);
  EXPECT_TRUE(fitCorners(seen(wideScreen(), projector, mount), projector, CornerFill::Screen)->withinRange);
  mount.pitch = degrees(-10.1);
  EXPECT_FALSE(fitCorners(seen(wideScreen(), projector, mount), projector, CornerFill::Screen)->withinRange);
  mount.pitch = 0;
  mount.yaw = degrees(10.1);
  EXPECT_FALSE(fitCorners(seen(wideScreen(), projector, mount), projector, CornerFill::Screen)->withinRange);
  projector.keystoneMax = 0;
  mount.yaw = 0;
  EXPECT_TRUE(fitCorners(seen(wideScreen(), projector, mount), projector, CornerFill::Screen)->withinRange)
      << "cutting a square picture needs no keystone correction";
}

TEST(Keystone, MoreTiltCostsMorePixels) {
  double before = -1;
  for (double tilt = 0; tilt <= 25; tilt += 5) {
    const CornerFit fit = fitted(seen(wideScreen(), centredProjector(), turnedMount(degrees(tilt), 0, 0.8)));
    ASSERT_TRUE(fit.reachable);
    EXPECT_GT(fit.pixelLoss, before);
    before = fit.pixelLoss;
  }
}

TEST(Keystone, LosesLessLightThanPixelsWhenThePanelsEdgesAreDarker) {
  ProjectorMount mount = squareMount();
  mount.throwRatio = 1.0;
  const Picture picture = seen(wideScreen(), centredProjector(), mount);
  const auto fit = fitCorners(picture, centredProjector(), CornerFill::Screen, LightSpread{0.5}).value();
  EXPECT_LT(fit.lightLoss, fit.pixelLoss - 0.02);
}

TEST(Keystone, RefusesATargetBehindTheLens) {
  Screen wide = wideScreen();
  wide.width = 400;
  ProjectorMount mount = squareMount();
  mount.yaw = degrees(40);
  const Picture picture = seen(wide, centredProjector(), mount);
  EXPECT_FALSE(fitCorners(picture, centredProjector(), CornerFill::Screen));
}

}  // namespace
}  // namespace baywright
