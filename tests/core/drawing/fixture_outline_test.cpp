// SPDX-License-Identifier: Apache-2.0
#include "drawing/fixture_outline.h"

#include <gtest/gtest.h>

namespace baywright::detail {
namespace {

TEST(FixtureOutline, OfABoxTurnsWithItsHeading) {
  const Ring ring = outlineOf(BoxShape{{1, 2}, kPi / 2, 2.0, 0.5});
  EXPECT_NEAR(signedArea(ring), 1.0, 1e-12);
  Eigen::AlignedBox2d box;
  for (const Vec2& p : ring) box.extend(p);
  EXPECT_TRUE(box.sizes().isApprox(Vec2(0.5, 2.0), 1e-12));
  EXPECT_TRUE(box.center().isApprox(Vec2(1, 2), 1e-12));
}

TEST(FixtureOutline, OfACylinderIsRound) {
  EXPECT_NEAR(signedArea(outlineOf(CylinderShape{{0, 0}, 0.5})), kPi / 4, 0.005);
}

TEST(FixtureOutline, OfAPrismIsItsOutline) {
  const PrismShape prism{{{0, 0}, {1, 0}, {1, 1}}};
  EXPECT_EQ(outlineOf(prism), prism.outline);
}

}  // namespace
}  // namespace baywright::detail
