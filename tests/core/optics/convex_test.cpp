// SPDX-License-Identifier: Apache-2.0
#include "optics/detail/convex.h"

#include "geometry/polygon_sets.h"
#include "optics_scene.h"

namespace baywright {
namespace {

Ring rectangle(double left, double bottom, double right, double top) {
  return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

Ring randomHull(RandomMounts& random) {
  const Vec2 middle{random.between(0, 4), random.between(0, 4)};
  std::vector<Vec2> points;
  for (int i = 0; i < 12; ++i) points.push_back(middle + Vec2{random.between(-1, 1), random.between(-1, 1)});
  return convexHull(points);
}

TEST(Convex, ClipsARectangleToARectangle) {
  EXPECT_NEAR(signedArea(detail::clipped(rectangle(0, 0, 2, 2), rectangle(1, 1, 5, 5))), 1, 1e-15);
  EXPECT_TRUE(detail::clipped(rectangle(0, 0, 1, 1), rectangle(2, 0, 3, 1)).empty());
  EXPECT_TRUE(detail::clipped(rectangle(0, 0, 1, 1), rectangle(1, 0, 2, 1)).empty())
      << "touching is not sharing";
  EXPECT_TRUE(detail::clipped({}, rectangle(0, 0, 1, 1)).empty());
  EXPECT_TRUE(detail::clipped({{0, 0}, {1, 1}}, rectangle(0, 0, 1, 1)).empty());
}

TEST(Convex, ClippedAreaAgreesWithPolygonSets) {
  RandomMounts random(41);
  for (int i = 0; i < 100; ++i) {
    const Ring a = randomHull(random), b = randomHull(random);
    const double expected = area(intersectionOf({{a, {}}}, {{b, {}}}).value());
    EXPECT_NEAR(signedArea(detail::clipped(a, b)), expected, 1e-4);
  }
}

TEST(Convex, UnionCountsOverlapOnce) {
  const std::vector<Ring> rings{rectangle(0, 0, 2, 2), rectangle(1, 1, 3, 3), rectangle(0.5, 0.5, 1, 1)};
  EXPECT_NEAR(detail::unionArea(rings), 7, 1e-12);
  EXPECT_NEAR(detail::unionArea(std::vector<Ring>(5, rectangle(0, 0, 2, 2))), 4, 1e-12);
  EXPECT_EQ(detail::unionArea({}), 0);
  EXPECT_NEAR(detail::unionArea(std::vector<Ring>{{}, rectangle(0, 0, 1, 1), {}}), 1, 1e-15);
}

TEST(Convex, UnionAgreesWithPolygonSets) {
  RandomMounts random(42);
  for (int i = 0; i < 40; ++i) {
    std::vector<Ring> rings;
    PolygonSet set;
    for (int k = 0; k < 2 + i; ++k) {
      rings.push_back(randomHull(random));
      set.push_back({rings.back(), {}});
    }
    EXPECT_NEAR(detail::unionArea(rings), area(unionOf(set).value()), 1e-4);
  }
}

TEST(Convex, SecondMomentOfARectangle) {
  // a b (a^2 + b^2) / 12 about its own middle.
  EXPECT_NEAR(detail::secondMoment(rectangle(1, 1, 5, 3), {3, 2}), 4 * 2 * (16 + 4) / 12.0, 1e-12);
}

}  // namespace
}  // namespace baywright
