// SPDX-License-Identifier: Apache-2.0
#include "drawing/swing_surface.h"

#include <gtest/gtest.h>

#include "drawn_job.h"
#include "mesh_checks.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

double distanceTo(const Capsule& capsule, const Vec3& p) {
  const Vec3 core = capsule.b - capsule.a;
  const double share =
      core.squaredNorm() > 0 ? std::clamp((p - capsule.a).dot(core) / core.squaredNorm(), 0.0, 1.0) : 0;
  return (p - capsule.a - share * core).norm() - capsule.radius;
}

TEST(SwingSurface, IsOneClosedSkinThatLooksOutward) {
  const MeshBuilder mesh = surfaceOf(barSwing(Hand::Right)->expected.capsules);
  EXPECT_GT(mesh.indices.size(), 300u);
  EXPECT_EQ(openEdges(mesh.vertices, mesh.indices), 0);
  EXPECT_EQ(turnedNormals(mesh.vertices, mesh.normals, mesh.indices), 0);
  for (const Eigen::Vector3f& normal : mesh.normals) EXPECT_NEAR(normal.norm(), 1, 1e-5);
}

TEST(SwingSurface, EnclosesTheVolumeOfABall) {
  const MeshBuilder mesh = surfaceOf({{{{0.3, 0.2, 1}, {0.3, 0.2, 1}, 0.6}, 0, BodyPart::Head}});
  const double ball = 4.0 / 3 * kPi * 0.216;
  EXPECT_NEAR(volumeOf(mesh.vertices, mesh.indices), ball, 0.03 * ball);
}

TEST(SwingSurface, StaysWithinACellOfTheTrueOne) {
  const Job job = smallGarage();
  const auto swing = swingOf(job.golfers.front(), job.golfers.front().clubs.front());
  ASSERT_TRUE(swing);
  const auto& capsules = swing->expected.capsules;
  const MeshBuilder mesh = surfaceOf(capsules);
  ASSERT_GT(mesh.vertices.size(), 1000u);
  for (std::size_t i = 0; i < mesh.vertices.size(); i += 37) {
    double nearest = 1e9;
    for (const SwingCapsule& each : capsules)
      nearest = std::min(nearest, distanceTo(each.capsule, mesh.vertices[i].cast<double>()));
    EXPECT_LT(std::abs(nearest), kSurfaceCell);
  }
}

TEST(SwingSurface, OfNothingIsEmpty) {
  EXPECT_TRUE(surfaceOf({}).indices.empty());
}

TEST(SwingSurfaces, AreKeptWhileTheSwingLives) {
  SwingSurfaces surfaces;
  const auto swing = barSwing(Hand::Left);
  const auto* first = &surfaces.of(swing);
  EXPECT_EQ(first, &surfaces.of(swing));
  EXPECT_NE(first, &surfaces.of(barSwing(Hand::Right)));
}

}  // namespace
}  // namespace baywright::detail
