// SPDX-License-Identifier: Apache-2.0
// ANSI/InfoComm 3M-2011, Projected Image System Contrast Ratio: with the room's light on, at least 15:1 for
// basic and 50:1 for analytical decision making (7:1 for passive viewing as a projector maker quotes it; 80:1
// for full-motion video: value from memory).
#include "optics/brightness.h"
#include "optics/photometry.h"
#include "optics_scene.h"

namespace baywright::reference {
namespace {

constexpr double kBasic = 15, kAnalytical = 50;

// 3000 lm on 5.625 m^2, native 2000:1, 20 lx: (533.3 + 20) / (0.267 + 20) = 27.3.
TEST(ContrastReference, ThreeThousandLumensInTwentyLux) {
  const double contrast = contrastWith(3000 / 5.625, 2000, 20);
  EXPECT_NEAR(contrast, 27.3, 0.05);
  EXPECT_GT(contrast, kBasic);
  EXPECT_LT(contrast, kAnalytical);
}

TEST(ContrastReference, RoomLightAtWhichBasicDecisionMakingEnds) {
  EXPECT_NEAR(ambientAt(3000 / 5.625, 2000, kBasic), 37.8, 0.05);
}

TEST(ContrastReference, SameThroughTheWholeModel) {
  const Screen screen = screenOf(3.0, 1.875);
  const Picture picture = pictureOf(screen, panelOf(1920, 1200), opposite(screen, 3.6, 1.2)).value();
  const PictureLight light{.lumens = 3000, .nativeContrast = 2000, .gain = 1, .ambient = 20, .spread = {}};
  EXPECT_NEAR(brightnessOf(picture, light, picture.face.corners()).contrast, 27.3, 0.05);
}

}  // namespace
}  // namespace baywright::reference
