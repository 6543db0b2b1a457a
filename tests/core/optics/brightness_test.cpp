// SPDX-License-Identifier: Apache-2.0
#include "optics/brightness.h"

#include "optics/keystone.h"
#include "optics_scene.h"

namespace baywright {
namespace {

const PictureLight kLight{.lumens = 3600, .nativeContrast = 2000, .gain = 0.9, .ambient = 20, .spread = {}};

TEST(Brightness, IsEvenWhenTheAxisIsSquareWhateverTheShift) {
  ProjectorMount mount = squareMount();
  mount.lens.z() = 2.4;
  mount.shiftUp = -1.2 / 1.8;
  const Picture picture = seen(wideScreen(), centredProjector(), mount);
  const Brightness light = brightnessOf(picture, kLight, picture.face.corners());
  EXPECT_NEAR(light.meanIlluminance, 3600 / 5.76, 1e-9);
  EXPECT_NEAR(light.meanLuminance, 3600 / 5.76 * 0.9 / kPi, 1e-9);
  for (const double lux : light.ninePoints) EXPECT_NEAR(lux, 625, 1e-8);
  EXPECT_NEAR(light.uniformity, 1, 1e-12);
  EXPECT_NEAR(light.lumensOnScreen, 3600, 1e-8);
}

TEST(Brightness, LightOnTheWholePictureIsTheLampsLight) {
  RandomMounts mounts(31);
  for (int i = 0; i < 10; ++i) {
    const auto picture = pictureOf(wideScreen(), centredProjector(), mounts.next());
    if (!picture) continue;
    for (const double corner : {1.0, 0.6}) {
      PictureLight light = kLight;
      light.spread.cornerShare = corner;
      // Midpoints of small patches of the panel, each with its own area on the screen.
      constexpr int kColumns = 64, kRows = 36;
      double lumens = 0;
      for (int x = 0; x < kColumns; ++x)
        for (int y = 0; y < kRows; ++y) {
          const Vec2 pixel{(x + 0.5) * 1920 / kColumns, (y + 0.5) * 1080 / kRows};
          const Vec2 point = mapped(picture->screenFromPanel, pixel).value();
          const double patch = std::abs(jacobianAt(picture->screenFromPanel, pixel)->determinant()) * 30 * 30;
          lumens += illuminanceAt(*picture, light, point) * patch;
        }
      EXPECT_NEAR(lumens, 3600, corner == 1 ? 1e-6 : 1.0);
    }
  }
}

TEST(Brightness, PointsOfTheScreenAddUpToTheLightOnIt) {
  ProjectorMount mount = squareMount();
  mount.throwRatio = 0.9;
  mount.pitch = degrees(15);
  mount.yaw = degrees(-7);
  const Picture picture = seen(wideScreen(), centredProjector(), mount);
  constexpr int kColumns = 320, kRows = 180;
  double lumens = 0;
  for (int x = 0; x < kColumns; ++x)
    for (int y = 0; y < kRows; ++y) {
      const Vec2 point{(x + 0.5) * 3.2 / kColumns, (y + 0.5) * 1.8 / kRows};
      lumens += illuminanceAt(picture, kLight, point) * 5.76 / (kColumns * kRows);
    }
  const Brightness light = brightnessOf(picture, kLight, picture.face.corners());
  EXPECT_NEAR(lumens, light.lumensOnScreen, 0.005 * light.lumensOnScreen);
}

TEST(Brightness, NearSideOfAKeystoneIsBrighter) {
  // Looks up: the lower edge is nearer.
  const Picture picture = seen(wideScreen(), centredProjector(), turnedMount(degrees(15), 0, 0.9));
  const Brightness light =
      brightnessOf(picture, kLight, fitCorners(picture, centredProjector(), CornerFill::Screen)->target);
  EXPECT_GT(light.ninePoints[7], light.ninePoints[1]);
  EXPECT_LT(light.uniformity, 0.9);
  EXPECT_LT(light.contrastLowest, light.contrast);
}

TEST(Brightness, NinePointsRunRowByRowFromTheTopLeft) {
  ProjectorMount mount = squareMount();
  mount.lens.y() = -1.6;  // half a picture to the left: the right half is dark
  const Picture picture = seen(wideScreen(), centredProjector(), mount);
  const Brightness light = brightnessOf(picture, kLight, picture.face.corners());
  for (const std::size_t lit : {0, 3, 6}) EXPECT_NEAR(light.ninePoints[lit], 625, 1e-8);
  for (const std::size_t dark : {2, 5, 8}) EXPECT_EQ(light.ninePoints[dark], 0);
  EXPECT_EQ(light.uniformity, 0);
  EXPECT_EQ(light.contrastLowest, 1);
  EXPECT_NEAR(light.meanIlluminance, 625, 1e-8) << "of the lit part";
  EXPECT_NEAR(light.lumensOnScreen, 1800, 1e-8);
}

TEST(Brightness, MissedScreenIsDark) {
  ProjectorMount mount = squareMount();
  mount.lens.y() = 20;
  const Picture picture = seen(wideScreen(), centredProjector(), mount);
  const Brightness light = brightnessOf(picture, kLight, picture.face.corners());
  EXPECT_EQ(light.meanIlluminance, 0);
  EXPECT_EQ(light.contrast, 1);
  EXPECT_EQ(illuminanceAt(picture, kLight, picture.face.middle()), 0);
}

TEST(Brightness, TakesItsFiguresFromTheKit) {
  Projector projector = centredProjector();
  projector.lumens = 1234;
  projector.contrast = 777;
  Screen screen = wideScreen();
  screen.gain = 1.1;
  const PictureLight light = lightOf(projector, screen, 12);
  EXPECT_EQ(light.lumens, 1234);
  EXPECT_EQ(light.nativeContrast, 777);
  EXPECT_EQ(light.gain, 1.1);
  EXPECT_EQ(light.ambient, 12);
  EXPECT_EQ(light.spread, LightSpread{});
}

}  // namespace
}  // namespace baywright
