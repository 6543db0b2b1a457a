// SPDX-License-Identifier: Apache-2.0
#include "findings.h"
#include "optics/photometry.h"

namespace baywright {
namespace {

using namespace testing;

Job lit(double lumens, double ambient) {
  return roomyHall()
      .withScreen(3.2, 1.8, 0.3)
      .withProjector(1.0, {-3.2, 0, 2.1})
      .with([&](Job& j) {
        j.options[0].kit.projector.lumens = lumens;
        j.options[0].kit.projector.contrast = 2000;
        j.requirements.ambient = ambient;
      })
      .job();
}

TEST(PictureBrightness, IsLumensOverArea) {
  const Assessment assessment = assess(lit(3000, 20));
  EXPECT_NEAR(figureOf(assessment, "picture.mean_illuminance"), 3000 / (3.2 * 1.8), 0.5);
  EXPECT_NEAR(figureOf(assessment, "picture.mean_luminance"), 3000 / (3.2 * 1.8) / kPi, 0.2);
}

TEST(PictureBrightness, LosesContrastToRoomLight) {
  EXPECT_EQ(findingOf(lit(3000, 10), "picture_brightness/contrast").verdict, Verdict::Clear);
  const Finding bright = findingOf(lit(3000, 200), "picture_brightness/contrast");
  EXPECT_EQ(bright.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(bright.sentence, "a room of")) << bright.sentence;
}

TEST(PictureBrightness, IsEvenSquareOn) {
  const Finding even = findingOf(lit(3000, 20), "picture_brightness/uniformity");
  EXPECT_EQ(even.verdict, Verdict::Clear);
  EXPECT_NEAR(even.margin->value, 1 - 0.6, 1e-6);
}

}  // namespace
}  // namespace baywright
