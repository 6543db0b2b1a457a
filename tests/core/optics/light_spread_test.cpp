// SPDX-License-Identifier: Apache-2.0
#include "optics/light_spread.h"

#include "optics_scene.h"

namespace baywright {
namespace {

const ProjectorLens kLens = lensOf(centredProjector(), squareMount()).value();

TEST(LightSpread, EvenLightIsAreaShare) {
  EXPECT_DOUBLE_EQ(relativeLight(kLens, {}, {3, 1000}), 1);
  EXPECT_NEAR(lightShare(kLens, {}, {{0, 0}, {960, 0}, {960, 540}, {0, 540}}), 0.25, 1e-15);
}

TEST(LightSpread, CornerHasItsShareOfTheMiddle) {
  const LightSpread spread{0.6};
  EXPECT_NEAR(relativeLight(kLens, spread, {0, 0}) / relativeLight(kLens, spread, {960, 540}), 0.6, 1e-12);
}

TEST(LightSpread, KeepsTheTotal) {
  const auto corners = kLens.panelCorners();
  for (const double share : {0.3, 0.6, 1.0})
    EXPECT_NEAR(lightShare(kLens, {share}, Ring(corners.begin(), corners.end())), 1, 1e-12);
}

TEST(LightSpread, ShareOfATriangleAgreesWithASum) {
  const LightSpread spread{0.4};
  const Ring triangle{{100, 50}, {1800, 300}, {700, 1000}};
  double sum = 0;
  for (int x = 0; x < 480; ++x)
    for (int y = 0; y < 270; ++y) {
      const Vec2 pixel{4 * (x + 0.5), 4 * (y + 0.5)};
      if (locate(triangle, pixel) == Location::Inside) sum += 16 * relativeLight(kLens, spread, pixel);
    }
  EXPECT_NEAR(lightShare(kLens, spread, triangle), sum / (1920.0 * 1080), 2e-4)
      << "cells across the edges are in or out";
}

}  // namespace
}  // namespace baywright
