// SPDX-License-Identifier: Apache-2.0
#include "geometry/mesh.h"

#include <gtest/gtest.h>

#include <limits>

namespace baywright {
namespace {

TEST(TriangleMesh, CopiesShareTheirData) {
  const auto mesh = TriangleMesh::from({{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {9, 9, 9}}, {{0, 1, 2}, {2, 1, 0}});
  ASSERT_TRUE(mesh);
  const TriangleMesh copy = *mesh;
  EXPECT_EQ(copy, *mesh);
  EXPECT_EQ(&copy.vertices(), &mesh->vertices());
  EXPECT_EQ(copy.triangle(1), (Triangle{{0, 1, 0}, {1, 0, 0}, {0, 0, 0}}));
}

TEST(TriangleMesh, BoundsHoldTheTrianglesOnly) {
  const auto mesh = TriangleMesh::from({{0, 0, 0}, {1, 0, 2}, {0, 1, 0}, {9, 9, 9}}, {{0, 1, 2}});
  EXPECT_EQ(mesh->bounds(), (Aabb3{Vec3(0, 0, 0), Vec3(1, 1, 2)}));
}

TEST(TriangleMesh, EmptyIsAMesh) {
  EXPECT_EQ(TriangleMesh().triangleCount(), 0U);
  EXPECT_TRUE(TriangleMesh().bounds().empty());
  EXPECT_TRUE(TriangleMesh::from({}, {})->bounds().empty());
}

TEST(TriangleMesh, RefusesIndicesAndNumbersThatAreNone) {
  const auto index = TriangleMesh::from({{0, 0, 0}, {1, 0, 0}, {0, 1, 0}}, {{0, 1, 2}, {0, 1, 3}});
  ASSERT_FALSE(index);
  EXPECT_EQ(index.error().where, "triangle 2");
  const auto number = TriangleMesh::from({{0, 0, std::numeric_limits<float>::infinity()}}, {});
  ASSERT_FALSE(number);
  EXPECT_EQ(number.error().where, "vertex 1");
}

}  // namespace
}  // namespace baywright
