// SPDX-License-Identifier: Apache-2.0
#include "geometry/solid.h"

#include <gtest/gtest.h>

#include "geometry/closest.h"
#include "geometry/polygon.h"
#include "random_shapes.h"

namespace baywright {
namespace {

TEST(PrismPieces, FillAnLShapedSlabExactly) {
  const Prism prism{
      {{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 3}, {0, 3}}, SlopedPlane::level(2.4), {{0, 0}, 2.6, {0.1, 0}}};
  const auto pieces = prismPieces(prism);
  ASSERT_TRUE(pieces);
  EXPECT_EQ(pieces->size(), 2U);
  double volume = 0;
  for (const auto& piece : *pieces) volume += piece.volume();
  // Height is 0.2 + 0.1 x over two rectangles with their centres at x = 2 and x = 0.5.
  EXPECT_NEAR(volume, 4 * 0.4 + 2 * 0.25, 1e-14);
}

TEST(PrismPieces, CoverTheOutlineAndNothingElse) {
  const Ring star{{0, 0}, {2, 0.6}, {4, 0}, {3.2, 2}, {4, 4}, {2, 3.1}, {0, 4}, {0.9, 2}};
  const auto pieces = prismPieces({star, SlopedPlane::level(0), SlopedPlane::level(1)});
  ASSERT_TRUE(pieces);
  test::RandomShapes random(3);
  for (int i = 0; i < 2000; ++i) {
    const Vec2 p = Vec2(2, 2) + random.point2(2.5);
    double nearest = 1e9;
    for (const auto& piece : *pieces) nearest = std::min(nearest, closest(raised(p, 0.5), piece).distance);
    EXPECT_EQ(nearest <= 0, locate(star, p) != Location::Outside) << p.transpose();
  }
}

TEST(PrismPieces, LeaveOutSliversBesideAlmostStraightCorners) {
  for (const double dent : {1e-12, 1e-9, 1e-8, 1e-7, 5e-7, 2e-6, 1e-4}) {
    const Ring outline{{0, 0}, {2, dent}, {4, 0}, {4, 1}, {1, 1}, {1, 3}, {0, 3}};
    const auto pieces = prismPieces({outline, SlopedPlane::level(0), SlopedPlane::level(1)});
    ASSERT_TRUE(pieces) << dent << ": " << pieces.error().sentence();
    double volume = 0;
    for (const auto& piece : *pieces) volume += piece.volume();
    EXPECT_NEAR(volume, 6 - 2 * dent, 4e-6);
  }
}

TEST(PrismPieces, RefuseACrossingOutline) {
  const auto pieces =
      prismPieces({{{0, 0}, {1, 1}, {1, 0}, {0, 1}}, SlopedPlane::level(0), SlopedPlane::level(1)});
  ASSERT_FALSE(pieces);
  EXPECT_NE(pieces.error().sentence().find("meets edge"), std::string::npos) << pieces.error().sentence();
}

TEST(Solid, CylinderNeedsLengthAndRadius) {
  EXPECT_TRUE(solidFrom(Cylinder{{0, 0, 0}, {0, 0, 1}, 0.1}));
  EXPECT_FALSE(solidFrom(Cylinder{{0, 0, 0}, {0, 0, 0}, 0.1}));
  EXPECT_FALSE(solidFrom(Cylinder{{0, 0, 0}, {0, 0, 1}, 0}));
  EXPECT_FALSE(solidFrom(Cylinder{{0, 0, 0}, {0, 0, 1}, -1}));
  EXPECT_FALSE(solidFrom(Cylinder{{0, 0, std::nan("")}, {0, 0, 1}, 1}));
  EXPECT_FALSE(solidFrom(Cylinder{{0, 0, 0}, {0, 0, 1}, std::numeric_limits<double>::infinity()}));
}

TEST(Solid, IsMovedAsWhatItIs) {
  const RigidMap map = worldFromLocal({{5, 5}, kPi / 2, 1});
  const Solid moved = transformed(Solid(Cylinder{{0, 0, 0}, {1, 0, 0}, 0.25}), map);
  ASSERT_TRUE(std::holds_alternative<Cylinder>(moved));
  EXPECT_NEAR((boundsOf(moved).high - Vec3(5.25, 6, 1.25)).norm(), 0, 1e-14);
}

}  // namespace
}  // namespace baywright
