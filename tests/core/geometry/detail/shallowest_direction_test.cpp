// SPDX-License-Identifier: Apache-2.0
#include "geometry/detail/shallowest_direction.h"

#include <gtest/gtest.h>

#include "brute_force.h"
#include "random_shapes.h"

namespace baywright::detail {
namespace {

Farthest farthestOf(const ConvexPolyhedron& body) {
  return [&body](const Vec3& direction) {
    Vec3 best = body.vertices()[0];
    for (const Vec3& p : body.vertices()) {
      if (p.dot(direction) > best.dot(direction)) best = p;
    }
    return best;
  };
}

TEST(ShallowestDirection, FindsTheSeparatingAxisOfPolyhedraUnaided) {
  test::RandomShapes random(81);
  int overlaps = 0;
  for (int i = 0; i < 40; ++i) {
    const ConvexPolyhedron a = random.polyhedron(0.5);
    const ConvexPolyhedron b = random.polyhedron(0.5);
    const Separation found = shallowestDirection(farthestOf(a), farthestOf(b), {}, 1e-10);
    const double expected = closest(a, b).distance;
    if (expected > 0) continue;
    ++overlaps;
    EXPECT_NEAR(found.gap, expected, 1e-9) << "pair " << i;
    EXPECT_NEAR(test::wayOut(a, b, found.normal), -found.gap, 1e-12);
  }
  EXPECT_GT(overlaps, 15);
}

TEST(ShallowestDirection, FindsASmoothMinimumToRounding) {
  // Ellipsoids with half axes 1, 0.7, 0.5 about (0.02, 0.01, 0.03) and the origin's point: its depth is least
  // near z.
  const Vec3 half(1, 0.7, 0.5);
  const Vec3 centre(0.02, 0.01, 0.03);
  const Farthest ellipsoid = [&](const Vec3& n) -> Vec3 {
    const Vec3 stretched = half.cwiseProduct(half).cwiseProduct(n);
    return centre + stretched / half.cwiseProduct(n).norm();
  };
  const Farthest origin = [](const Vec3&) -> Vec3 { return Vec3::Zero(); };
  const Separation found = shallowestDirection(origin, ellipsoid, {}, 1e-9);
  // Where the nearest boundary point lies along the normal itself.
  const Vec3 boundary = ellipsoid(found.normal);
  EXPECT_NEAR(boundary.cross(found.normal).norm(), 0, 1e-9);
  EXPECT_NEAR(boundary.norm(), -found.gap, 1e-12);
  double searched = 1;
  for (const Vec3& n : test::spreadDirections(20000)) searched = std::min(searched, ellipsoid(n).norm());
  EXPECT_LE(-found.gap, searched);
  EXPECT_GE(-found.gap, searched - 1e-3);
}

}  // namespace
}  // namespace baywright::detail
