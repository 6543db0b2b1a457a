// SPDX-License-Identifier: Apache-2.0
// Drillis and Contini 1966, as printed in Winter, Biomechanics and Motor Control of Human Movement, fig. 4.1:
// heights and lengths as shares of stature. Read second-hand, in public programs that quote the figure.
#include <gtest/gtest.h>

#include "swing/body.h"

namespace baywright {
namespace {

TEST(DrillisContini, HeightsOfShoulderHipAndAnkle) {
  const BodyLengths body = bodyOf(1.7562);
  EXPECT_NEAR(body.shoulder, 1.4366, 1e-4);  // 0.818 H
  EXPECT_NEAR(body.hip, 0.9308, 1e-4);       // 0.530 H
  EXPECT_NEAR(body.ankle, 0.0685, 1e-4);     // 0.039 H
}

TEST(DrillisContini, LengthsOfTheArm) {
  const BodyLengths body = bodyOf(1.80);
  EXPECT_NEAR(body.upperArm, 0.3348, 1e-4);                  // 0.186 H
  EXPECT_NEAR(body.arm() - 0.108 / 2 * 1.80, 0.5976, 1e-4);  // to the wrist, (0.186 + 0.146) H
  EXPECT_NEAR(body.arm() + 0.108 / 2 * 1.80, 0.7920, 1e-4);  // to the finger tips, + 0.108 H
}

TEST(DrillisContini, HeightOfTheHead) {
  const BodyLengths body = bodyOf(1.80);
  EXPECT_NEAR(body.shoulder + body.neck, 0.870 * 1.80, 1e-3);  // chin
}

}  // namespace
}  // namespace baywright
