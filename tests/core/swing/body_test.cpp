// SPDX-License-Identifier: Apache-2.0
#include "swing/body.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

TEST(Body, StandsAsTallAsItIs) {
  const BodyLengths body = bodyOf(1.80);
  EXPECT_NEAR(body.shoulder + body.crown, 1.80, 1e-12);
  EXPECT_NEAR(body.hip + body.trunk, body.shoulder, 1e-12);
  EXPECT_NEAR(body.ankle + body.shin + body.thigh, body.hip, 1e-12);
}

TEST(Body, GrowsInProportion) {
  const BodyLengths small = bodyOf(1.0);
  const BodyLengths tall = bodyOf(2.0);
  EXPECT_DOUBLE_EQ(tall.arm(), 2 * small.arm());
  EXPECT_DOUBLE_EQ(tall.headRadius, 2 * small.headRadius);
  EXPECT_DOUBLE_EQ(tall.halfStance, 2 * small.halfStance);
}

TEST(Body, HasAHeadThatFitsBetweenNeckAndCrown) {
  const BodyLengths body = bodyOf(1.755);
  EXPECT_LE(body.neck + 2 * body.headRadius, body.crown);
}

}  // namespace
}  // namespace baywright
