// SPDX-License-Identifier: Apache-2.0
#include "drawing/mesh_builder.h"

#include <gtest/gtest.h>

#include "mesh_checks.h"

namespace baywright::detail {
namespace {

using namespace baywright::testing;

double volume(const MeshBuilder& mesh) {
  return volumeOf(mesh.vertices, mesh.indices);
}

void expectSound(const MeshBuilder& mesh) {
  EXPECT_EQ(mesh.vertices.size(), mesh.normals.size());
  EXPECT_EQ(mesh.indices.size() % 3, 0u);
  for (const std::uint32_t index : mesh.indices) ASSERT_LT(index, mesh.vertices.size());
  for (const Eigen::Vector3f& normal : mesh.normals) EXPECT_NEAR(normal.norm(), 1, 1e-5);
  EXPECT_EQ(turnedNormals(mesh.vertices, mesh.normals, mesh.indices), 0);
}

TEST(MeshBuilder, ClosesABody) {
  MeshBuilder mesh;
  mesh.addBody(boxFrom(UprightBox{{1, 2}, 0.4, {2, 1}, 0.5, 3}).value());
  expectSound(mesh);
  EXPECT_NEAR(volume(mesh), 5, 1e-5);
  EXPECT_EQ(openEdges(mesh.vertices, mesh.indices), 0);
}

TEST(MeshBuilder, ClosesACylinder) {
  MeshBuilder mesh;
  mesh.addCylinder({{0, 0, 0}, {0.5, 0, 2}, 0.3});
  expectSound(mesh);
  const double round = kPi * 0.09 * std::hypot(0.5, 2);
  EXPECT_LT(volume(mesh), round);
  EXPECT_GT(volume(mesh), 0.96 * round);
  EXPECT_EQ(openEdges(mesh.vertices, mesh.indices), 0);
}

TEST(MeshBuilder, ClosesACapsuleAndABall) {
  MeshBuilder capsule;
  capsule.addCapsule({{0, 0, 0}, {1, 1, 1}, 0.2});
  expectSound(capsule);
  const double wanted = kPi * 0.04 * std::sqrt(3.0) + 4.0 / 3 * kPi * 0.008;
  EXPECT_LT(volume(capsule), wanted);
  EXPECT_GT(volume(capsule), 0.93 * wanted);
  MeshBuilder ball;
  ball.addCapsule({{1, 0, 0}, {1, 0, 0}, 0.5});
  expectSound(ball);
  EXPECT_GT(volume(ball), 0.88 * 4.0 / 3 * kPi * 0.125);
}

TEST(MeshBuilder, LooksUpOrDownFromARegion) {
  const Polygon region{{{0, 0}, {2, 0}, {2, 1}, {1, 1}, {1, 2}, {0, 2}}, {}};
  MeshBuilder up;
  up.addRegion(region, SlopedPlane::level(1), MeshBuilder::Front::Up);
  expectSound(up);
  EXPECT_NEAR(up.normals.front().z(), 1, 1e-6);
  EXPECT_NEAR(volume(up), 3.0 / 3, 1e-6);  // a third of area times height over the origin
  MeshBuilder down;
  down.addRegion(region, {{0, 0}, 2, {0, 0.5}}, MeshBuilder::Front::Down);
  expectSound(down);
  EXPECT_LT(down.normals.front().z(), 0);
}

TEST(MeshBuilder, LeavesOutWhatHasNoArea) {
  MeshBuilder mesh;
  mesh.addFace(std::vector<Vec3>{{0, 0, 0}, {1, 0, 0}, {2, 0, 0}});
  mesh.addFace(std::vector<Vec3>{{0, 0, 0}, {1, 0, 0}});
  mesh.addRegion({{{0, 0}, {1, 0}}, {}}, SlopedPlane::level(0), MeshBuilder::Front::Up);
  EXPECT_TRUE(mesh.indices.empty());
}

}  // namespace
}  // namespace baywright::detail
