// SPDX-License-Identifier: Apache-2.0
#include "optics/pixel_size.h"

#include "optics_scene.h"

namespace baywright {
namespace {

TEST(PixelSize, IsThePicturesWidthOverItsPixelsWhenSquare) {
  const Picture picture = seen(wideScreen(), centredProjector(), squareMount());
  const PixelSize size = pixelSize(picture, picture.litOnPanel);
  EXPECT_NEAR(size.smallest, 3.2 / 1920, 1e-12);
  EXPECT_NEAR(size.largest, 3.2 / 1920, 1e-12);
}

TEST(PixelSize, ExtremesHoldEveryPixelOfAKeystone) {
  RandomMounts mounts(21);
  for (int i = 0; i < 60; ++i) {
    const auto picture = pictureOf(wideScreen(), centredProjector(), mounts.next());
    if (!picture) continue;
    const auto corners = picture->lens.panelCorners();
    const PixelSize size = pixelSize(*picture, corners);
    double smallest = 1e9, largest = 0;
    for (int x = 0; x <= 48; ++x)
      for (int y = 0; y <= 27; ++y) {
        const Mat2 step = jacobianAt(picture->screenFromPanel, {x * 40.0, y * 40.0}).value();
        for (int axis : {0, 1}) {
          smallest = std::min(smallest, step.col(axis).norm());
          largest = std::max(largest, step.col(axis).norm());
        }
      }
    EXPECT_LE(size.smallest, smallest * (1 + 1e-12));
    EXPECT_GE(size.largest, largest * (1 - 1e-12));
    EXPECT_GT(size.smallest, smallest * 0.99) << "and no wider than they need to be";
    EXPECT_LT(size.largest, largest * 1.01);
  }
}

TEST(PixelSize, DependsOnThePartLookedAt) {
  ProjectorMount mount = squareMount();
  mount.throwRatio = 0.9;
  mount.pitch = degrees(20);
  const Picture picture = seen(wideScreen(), centredProjector(), mount);
  const std::array<Vec2, 3> lower{Vec2{0, 1080}, Vec2{1920, 1080}, Vec2{960, 900}};
  const auto corners = picture.lens.panelCorners();
  EXPECT_LT(pixelSize(picture, lower).largest, pixelSize(picture, corners).largest);
}

TEST(Acuity, OneMinuteOfArcAtTheFinestDistance) {
  const ScreenFace face = faceOf(wideScreen());
  const PixelSize pixel{0.001, 0.002};
  const Acuity far = acuityAt(face, pixel, {-10, 0, 1.2});
  EXPECT_NEAR(far.distance, 10, 1e-12);
  const Acuity there = acuityAt(face, pixel, {-far.finestDistance, 0, 1.2});
  EXPECT_NEAR(there.pixelAngle, kAcuity, 1e-15);
}

TEST(Acuity, MeasuresToTheNearestPointOfTheScreen) {
  const ScreenFace face = faceOf(wideScreen());
  const Acuity acuity = acuityAt(face, {0.001, 0.001}, {-3, 1.6 + 4, 1.5});
  EXPECT_NEAR(acuity.distance, 5, 1e-12);
}

}  // namespace
}  // namespace baywright
