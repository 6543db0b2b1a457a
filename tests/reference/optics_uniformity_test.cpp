// SPDX-License-Identifier: Apache-2.0
// ISO 11315-1:1997 (same grid in ISO/IEC 21118:2020 annex B): luminous flux is the mean of the illuminances
// at nine points times the area; uniformity is the lowest over the highest.
#include "optics/brightness.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

double mean(const std::array<double, 9>& values) {
  double sum = 0;
  for (const double value : values) sum += value;
  return sum / 9;
}

// On a picture of 1.6 m^2 (the standard asks for 1 to 2) square to the axis the measured flux is the lamp's.
TEST(UniformityReference, FluxIsMeanOfNineTimesArea) {
  const Screen screen = screenOf(1.6, 1.0);
  const Picture picture = pictureOf(screen, panelOf(1920, 1200), opposite(screen, 2.4, 1.5)).value();
  const PictureLight light{.lumens = 2500, .nativeContrast = 1000, .gain = 1, .ambient = 0, .spread = {}};
  const Brightness seen = brightnessOf(picture, light, picture.face.corners());
  EXPECT_NEAR(mean(seen.ninePoints) * 1.6, 2500, 1e-6);
  EXPECT_NEAR(seen.uniformity, 1, 1e-12);
}

// The nine points are middles of thirds, so a lamp that falls off to 70 % in the panel's corners along a
// parabola shows 1 - 0.3 * (2/3)^2 = 0.867 of the middle in the outer points.
TEST(UniformityReference, PointsAreTheMiddlesOfNineParts) {
  const Screen screen = screenOf(1.6, 1.0);
  const Picture picture = pictureOf(screen, panelOf(1920, 1200), opposite(screen, 2.4, 1.5)).value();
  const PictureLight light{.lumens = 2500, .nativeContrast = 1000, .gain = 1, .ambient = 0, .spread = {0.7}};
  const Brightness seen = brightnessOf(picture, light, picture.face.corners());
  EXPECT_NEAR(seen.uniformity, 1 - 0.3 * 4 / 9, 1e-12);
  EXPECT_NEAR(seen.ninePoints[0], *std::min_element(seen.ninePoints.begin(), seen.ninePoints.end()), 1e-9);
  EXPECT_NEAR(seen.ninePoints[4], *std::max_element(seen.ninePoints.begin(), seen.ninePoints.end()), 1e-9);
}

}  // namespace
}  // namespace baywright::reference
