// SPDX-License-Identifier: Apache-2.0
#include "optics/photometry.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Photometry, LumensForUndoesLuminance) {
  const double lumens = lumensFor(60, 4.5, 1.2);
  EXPECT_NEAR(luminance(illuminance(lumens, 4.5), 1.2), 60, 1e-12);
}

TEST(Photometry, ContrastIsNativeInTheDarkAndNoneWithoutLight) {
  EXPECT_NEAR(contrastWith(500, 2000, 0), 2000, 1e-9);
  EXPECT_EQ(contrastWith(0, 2000, 0), 1);
  EXPECT_EQ(contrastWith(0, 2000, 30), 1);
}

TEST(Photometry, ContrastFallsAsTheRoomGetsLighter) {
  double before = 1e9;
  for (double ambient = 0; ambient < 500; ambient += 10) {
    const double contrast = contrastWith(500, 2000, ambient);
    EXPECT_LT(contrast, before);
    EXPECT_GT(contrast, 1);
    before = contrast;
  }
}

TEST(Photometry, AmbientAtUndoesContrast) {
  EXPECT_NEAR(contrastWith(500, 2000, ambientAt(500, 2000, 15)), 15, 1e-12);
}

}  // namespace
}  // namespace baywright
