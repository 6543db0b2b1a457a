// SPDX-License-Identifier: Apache-2.0
#include "jobfile/mesh_bytes.h"

#include <gtest/gtest.h>

#include <limits>

namespace baywright {
namespace {

TriangleMesh tetrahedron() {
  return *TriangleMesh::from({{0, 0, 0}, {1, 0, 0.1f}, {0, 1, -2.5f}, {0.3f, 0.3f, 1}},
                             {{0, 1, 2}, {0, 1, 3}, {1, 2, 3}, {2, 0, 3}});
}

TEST(MeshBytes, ReadBackToTheSameBits) {
  const TriangleMesh mesh = tetrahedron();
  const auto read = meshFromBytes(meshToBytes(mesh));
  ASSERT_TRUE(read) << read.error().sentence();
  EXPECT_EQ((*read)->vertices(), mesh.vertices());
  EXPECT_EQ((*read)->triangles(), mesh.triangles());
  EXPECT_EQ(meshToBytes(**read), meshToBytes(mesh));
}

TEST(MeshBytes, AreAsLongAsTheHeaderSays) {
  EXPECT_EQ(meshToBytes(tetrahedron()).size(), 8u + 16u + 4 * 12u + 4 * 12u);
  EXPECT_EQ(meshToBytes(TriangleMesh()).size(), 24u);
  EXPECT_TRUE(meshFromBytes(meshToBytes(TriangleMesh())));
}

TEST(MeshBytes, AreRefusedAtEveryOtherLength) {
  const std::string bytes = meshToBytes(tetrahedron());
  for (std::size_t size = 0; size < bytes.size(); ++size)
    EXPECT_FALSE(meshFromBytes(std::string_view(bytes).substr(0, size))) << size;
  EXPECT_FALSE(meshFromBytes(bytes + "x"));
}

TEST(MeshBytes, AreRefusedWithCountsThatWouldFillTheMemory) {
  std::string bytes = meshToBytes(tetrahedron());
  for (std::size_t at : {8u, 16u}) {
    std::string hostile = bytes;
    hostile.replace(at, 8, std::string(8, '\xff'));
    EXPECT_FALSE(meshFromBytes(hostile));
    hostile.replace(at, 8, std::string("\0\0\0\0\1\0\0\0", 8));  // 2^32
    EXPECT_FALSE(meshFromBytes(hostile));
  }
}

TEST(MeshBytes, AreRefusedWithCornersThatAreNotThere) {
  std::string bytes = meshToBytes(tetrahedron());
  bytes[bytes.size() - 4] = 9;
  EXPECT_FALSE(meshFromBytes(bytes));
}

TEST(PointsBytes, ReadBackToTheSameBits) {
  const std::vector<Eigen::Vector3f> points = {{1, 2, 3}, {-0.0f, 1e-20f, 5e5f}};
  const auto read = pointsFromBytes(pointsToBytes(points));
  ASSERT_TRUE(read) << read.error().sentence();
  EXPECT_EQ(pointsToBytes(**read), pointsToBytes(points));
}

TEST(PointsBytes, AreRefusedWhenDamaged) {
  const std::string bytes = pointsToBytes({{1, 2, 3}});
  EXPECT_FALSE(pointsFromBytes(bytes.substr(1)));
  EXPECT_FALSE(pointsFromBytes(bytes.substr(0, bytes.size() - 1)));
  EXPECT_FALSE(pointsFromBytes(meshToBytes(tetrahedron())));
  EXPECT_FALSE(pointsFromBytes(pointsToBytes({{1, std::numeric_limits<float>::quiet_NaN(), 3}})));
}

}  // namespace
}  // namespace baywright
