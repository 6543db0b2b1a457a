// SPDX-License-Identifier: Apache-2.0
#include "optics/light_bands.h"

#include "optics_scene.h"

namespace baywright {
namespace {

const PictureLight kLight{.lumens = 3600, .nativeContrast = 2000, .gain = 0.9, .ambient = 20, .spread = {}};

TEST(LightBands, AnEvenPictureIsOneBand) {
  const Picture picture = seen(wideScreen(), centredProjector(), squareMount());
  const LightBands bands = lightBands(picture, kLight);
  ASSERT_EQ(bands.bands.size(), 1u);
  EXPECT_NEAR(bands.lowest, 625, 1e-8);
  EXPECT_NEAR(bands.bands[0].lux, 625, 1e-8);
  EXPECT_NEAR(signedArea(bands.bands[0].region), 5.76, 1e-9);
  EXPECT_FALSE(bands.bands[0].contour);
}

TEST(LightBands, AMissedScreenHasNone) {
  ProjectorMount mount = squareMount();
  mount.lens.y() = 20;
  EXPECT_TRUE(lightBands(seen(wideScreen(), centredProjector(), mount), kLight).bands.empty());
}

// The slow twin: light point by point.
TEST(LightBands, HoldWhatHasSoMuchLight) {
  ProjectorMount mount = turnedMount(degrees(14), degrees(-9), 0.9);
  const Picture picture = seen(wideScreen(), centredProjector(), mount);
  for (const double unit : {1.0, kLuxPerFootCandle}) {
    const LightBands bands = lightBands(picture, kLight, unit);
    ASSERT_GT(bands.bands.size(), 2u);
    EXPECT_LE(bands.bands.size(), static_cast<std::size_t>(kMostLightBands));
    for (const LightBand& band : bands.bands) {
      for (int x = 0; x < 40; ++x) {
        for (int y = 0; y < 24; ++y) {
          const Vec2 point{(x + 0.5) * 3.2 / 40, (y + 0.5) * 1.8 / 24};
          const double lux = illuminanceAt(picture, kLight, point);
          if (std::abs(lux - band.lux) < 1e-6 * band.lux) continue;
          const bool inside = locate(Polygon{band.region, {}}, point) == Location::Inside;
          EXPECT_EQ(inside, lux > band.lux && lux > 0) << band.lux << " lx at " << point.transpose();
        }
      }
    }
    for (std::size_t i = 1; i < bands.bands.size(); ++i) {
      const LightBand& band = bands.bands[i];
      ASSERT_TRUE(band.contour);
      EXPECT_NEAR(illuminanceAt(picture, kLight, 0.5 * (band.contour->a + band.contour->b)), band.lux,
                  1e-9 * band.lux);
      const double steps = band.lux / unit / bands.step;
      EXPECT_NEAR(steps, std::round(steps), 1e-9);
    }
    EXPECT_LE(bands.lowest, bands.bands[1].lux);
    EXPECT_GE(bands.highest, bands.bands.back().lux);
  }
}

}  // namespace
}  // namespace baywright
