// SPDX-License-Identifier: Apache-2.0
// Light on a screen: Lambert's law, the foot-lambert and the reference levels of cinema.
#include "optics/brightness.h"
#include "optics/photometry.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

// Definition: 1 fL = 1/pi cd/ft^2 (convertworld.com/en/luminance/foot-lambert.html: 3.4262591 cd/m^2).
constexpr double kFootLambert = 1 / kPi / (kFoot * kFoot);

double footLamberts(double lumens, double area, double gain) {
  return luminance(illuminance(lumens, area), gain) / kFootLambert;
}

TEST(PhotometryReference, OneFootLambert) {
  EXPECT_NEAR(kFootLambert, 3.4262591, 1e-7);
  // One lumen on a square foot of a perfect diffuser: that is what the unit is for.
  EXPECT_NEAR(footLamberts(1, kFoot * kFoot, 1), 1, 1e-12);
}

// SMPTE 196M: 16 fL open gate, 55 cd/m^2 rounded; 14 fL = 48 cd/m^2 (ISO 26431-1 = SMPTE ST 431-1).
TEST(PhotometryReference, CinemaLevels) {
  EXPECT_NEAR(16 * kFootLambert, 54.82, 0.01);
  EXPECT_NEAR(14 * kFootLambert, 47.97, 0.01);
}

// E = flux / area, L = E g / pi (Lambert): 3000 lm on 3.000 x 1.875 m.
TEST(PhotometryReference, ThreeThousandLumens) {
  EXPECT_NEAR(illuminance(3000, 3.0 * 1.875), 533.3, 0.05);
  EXPECT_NEAR(luminance(illuminance(3000, 5.625), 1), 169.8, 0.05);
  EXPECT_NEAR(footLamberts(3000, 5.625, 1), 49.55, 0.005);
}

// The same through the whole model: a 16:10 picture that just fills that screen.
TEST(PhotometryReference, ThreeThousandLumensThroughTheLens) {
  const Screen screen = screenOf(3.0, 1.875);
  const Projector projector = panelOf(1920, 1200);
  const Picture picture = pictureOf(screen, projector, opposite(screen, 3.6, 1.2)).value();
  const PictureLight light{.lumens = 3000, .nativeContrast = 2000, .gain = 1, .ambient = 20, .spread = {}};
  const Brightness seen = brightnessOf(picture, light, picture.face.corners());
  EXPECT_NEAR(seen.meanIlluminance, 533.3, 0.05);
  EXPECT_NEAR(seen.meanLuminance, 169.8, 0.05);
}

// Lumens for ISO 26431-1's 48 cd/m^2 and SMPTE 196M's 55 cd/m^2 on 5.625 m^2.
TEST(PhotometryReference, LumensForCinemaLevels) {
  EXPECT_NEAR(lumensFor(48, 5.625, 1), 848.2, 0.05);
  EXPECT_NEAR(lumensFor(55, 5.625, 1), 971.9, 0.05);
}

// Worked examples of a projector guide (htrgroup.com, Calculating Screen Brightness): 1000 lm on 6 ft of 16:9
// give 49.4 fL; 16 fL allow 62.5 sq ft.
TEST(PhotometryReference, GuidesWorkedExamples) {
  EXPECT_NEAR(footLamberts(1000, 6 * 3.375 * kFoot * kFoot, 1), 49.4, 0.05);
  EXPECT_NEAR(lumensFor(16 * kFootLambert, 62.5 * kFoot * kFoot, 1), 1000, 1e-9);
}

// Another (blog.toolstud.io, foot-lambert): 40 000 lm on 23 m of 2.35:1, 16.5 fL.
TEST(PhotometryReference, CinemaScopeExample) {
  EXPECT_NEAR(footLamberts(40000, 23 * (23 / 2.35), 1), 16.5, 0.05);
}

}  // namespace
}  // namespace baywright::reference
