// SPDX-License-Identifier: Apache-2.0
// What an eye resolves, and how large a picture must be for its distance.
#include "optics/pixel_size.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

const ScreenFace kFace = faceOf(screenOf(2.6667, 1.5));

// One minute of arc (basis of ANSI/HFES 100): a detail is resolved from 1 / tan(1') = 3437.75 times its size.
TEST(AcuityReference, OneMinuteOfArc) {
  EXPECT_NEAR(1 / std::tan(kAcuity), 3437.75, 0.005);
  EXPECT_NEAR(acuityAt(kFace, {1e-3, 1e-3}, {-1, 0, 0.5}).finestDistance, 3.43775, 5e-6);
}

// Display image size for 2D content, V202.01, analytical decision making: IH = FV x lines / 3438. Image
// height 1500 mm with 1080 lines: farthest (here: finest) viewer at 4775 mm.
TEST(AcuityReference, AnalyticalDecisionMakingDistance) {
  const Screen screen = screenOf(2.6667, 1.5);
  const Picture picture = pictureOf(screen, panelOf(1920, 1080), opposite(screen, 3.2, 1.2)).value();
  const auto corners = picture.lens.panelCorners();
  const PixelSize pixel = pixelSize(picture, corners);
  EXPECT_NEAR(pixel.largest, 1.5 / 1080, 1e-6);
  EXPECT_NEAR(acuityAt(picture.face, pixel, {-5, 0, 0.75}).finestDistance, 4.775, 0.001);
}

// The same standard, basic decision making: a character's height as a share of the picture's, FV / (200 x
// IH): 3.5 % of 1500 mm at 10 500 mm. That share makes it stand under 17.2 minutes of arc, whatever the size.
TEST(AcuityReference, BasicDecisionMakingCharacter) {
  const double share = 10.5 / (200 * 1.5);
  EXPECT_NEAR(share, 0.035, 1e-12);
  const Acuity seen = acuityAt(kFace, {share * 1.5, share * 1.5}, {-10.5, 0, 0.75});
  EXPECT_NEAR(seen.pixelAngle / kAcuity, 60 * 180 / kPi / 200, 0.001);
}

// Snellen's chart: letters of the 20/20 line are 8.87 mm tall and stand under 5 minutes at 20 ft (Wikipedia,
// Snellen chart); a 26 mm letter does so at 60 ft (American Academy of Ophthalmology, Snellen letters).
TEST(AcuityReference, SnellenLetters) {
  EXPECT_NEAR(acuityAt(kFace, {0, 8.87e-3}, {-20 * kFoot, 0, 0.75}).pixelAngle / kAcuity, 5, 0.01);
  EXPECT_NEAR(acuityAt(kFace, {0, 26e-3}, {-60 * kFoot, 0, 0.75}).pixelAngle / kAcuity, 5, 0.15);
}

}  // namespace
}  // namespace baywright::reference
