// SPDX-License-Identifier: Apache-2.0
#include "drawing/silhouette.h"

#include <gtest/gtest.h>

namespace baywright::detail {
namespace {

TEST(Silhouette, OfABoxFromAboveIsItsFootprint) {
  const auto body = boxFrom(UprightBox{{1, 2}, kPi / 4, {2, 1}, 0.5, 3});
  ASSERT_TRUE(body);
  const Ring ring = silhouetteOf(*body, [](const Vec3& p) { return flat(p); });
  EXPECT_EQ(ring.size(), 4u);
  EXPECT_NEAR(signedArea(ring), 2, 1e-9);
}

TEST(Silhouette, OfATurnedBoxFromTheSideIsWiderThanAnyFace) {
  const auto body = boxFrom(UprightBox{{0, 0}, kPi / 4, {1, 1}, 0, 2});
  const Ring ring = silhouetteOf(*body, [](const Vec3& p) { return Vec2(p.x(), p.z()); });
  EXPECT_NEAR(signedArea(ring), 2 * std::sqrt(2.0), 1e-9);
}

}  // namespace
}  // namespace baywright::detail
