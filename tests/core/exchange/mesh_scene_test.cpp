// SPDX-License-Identifier: Apache-2.0
#include "exchange/mesh_scene.h"

#include <gtest/gtest.h>

#include <chrono>
#include <stdexcept>
#include <thread>

#include "exchange/mesh_fence.h"
#include "exchange/mesh_weld.h"
#include "scan_files.h"

namespace baywright {
namespace {

using namespace testing;

Result<RawScan> read(const std::string& bytes, SceneFormat format, const ScanReadOptions& options = {}) {
  return readScene(bytes, format, options, {});
}

constexpr const char* kObj =
    "# made up\nmtllib nowhere.mtl\no wall\nv 0 0 0\nv 2 0 0\nv 2 3 0\nv 0 3 0\nvn 0 0 1\nusemtl paint\n"
    "f 1//1 2//1 3//1 4//1\no other\nv 5 5 5\nf -1 1 2\n";

TEST(MeshScene, TakesPolygonsAndAllObjectsOfAnObj) {
  const auto scan = read(kObj, SceneFormat::Obj);
  ASSERT_TRUE(scan) << scan.error().sentence();
  EXPECT_EQ(scan->triangles.size(), 3u);
  EXPECT_FALSE(scan->metresPerUnit);
  EXPECT_FALSE(scan->up);
  double area = 0;
  for (const auto& [a, b, c] : scan->triangles)
    area += 0.5 * (scan->points[b] - scan->points[a]).cross(scan->points[c] - scan->points[a]).norm();
  EXPECT_NEAR(area, 6 + 0.5 * 2 * std::hypot(5, 5), 1e-6);
}

TEST(MeshScene, TakesGltfWhereItsNodesStandInMetresWithYUp) {
  const auto scan = read(gltfSquare(), SceneFormat::GltfText);
  ASSERT_TRUE(scan) << scan.error().sentence();
  EXPECT_EQ(scan->triangles.size(), 2u);
  EXPECT_EQ(scan->points.size(), 4u);
  EXPECT_EQ(scan->metresPerUnit, 1.0);
  EXPECT_EQ(scan->up, UpAxis::PlusY);
  for (const Vec3& p : scan->points) EXPECT_GE(p.x(), 10);
}

TEST(MeshScene, LooksIntoNoOtherFile) {
  std::string outside = gltfSquare();
  const std::size_t start = outside.find("data:");
  outside.replace(start, outside.find('"', start) - start, "/etc/hostname");
  const auto scan = read(outside, SceneFormat::GltfText);
  ASSERT_FALSE(scan);
  EXPECT_NE(scan.error().next.find(".glb"), std::string::npos);
}

TEST(MeshScene, RefusesDamagedFilesAndLargeOnes) {
  EXPECT_FALSE(read("glTF", SceneFormat::GltfBinary));
  EXPECT_FALSE(read("{", SceneFormat::GltfText));
  EXPECT_FALSE(read("nothing here\n", SceneFormat::Obj));
  ScanReadOptions options;
  options.mostTriangles = 1;
  const auto large = read(gltfSquare(), SceneFormat::GltfText, options);
  ASSERT_FALSE(large);
  EXPECT_NE(large.error().what.find("more than 1 triangles"), std::string::npos);
}

TEST(MeshWeld, JoinsEqualPointsAndKeepsTheirOrder) {
  std::vector<Vec3> points{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}};
  std::vector<TriangleMesh::Corners> triangles{{0, 1, 2}, {3, 4, 5}};
  weld(points, triangles);
  EXPECT_EQ(points, (std::vector<Vec3>{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 1, 0}}));
  EXPECT_EQ(triangles, (std::vector<TriangleMesh::Corners>{{0, 1, 2}, {1, 3, 2}}));
}

TEST(MeshFence, HandsBackWhatTheWorkMadeOrItsProblem) {
  const std::string large(3'000'000, 'x');
  const auto made = runFenced([&] { return Result<std::string>(large); }, {}, {});
  ASSERT_TRUE(made);
  EXPECT_EQ(*made, large);
  const auto refused =
      runFenced([]() -> Result<std::string> { return fail("It is not so.", "here", "Go on."); }, {}, {});
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error(), (Problem{"It is not so.", "here", "Go on."}));
}

TEST(MeshFence, SurvivesWorkThatDoesNot) {
  EXPECT_FALSE(runFenced([]() -> Result<std::string> { throw std::runtime_error("no"); }, {}, {}));
  EXPECT_FALSE(runFenced([]() -> Result<std::string> { std::_Exit(3); }, {}, {}));
  FenceLimits limits;
  limits.outputBytes = 1000;
  EXPECT_FALSE(runFenced([] { return Result<std::string>(std::string(5000, 'x')); }, limits, {}));
}

TEST(MeshFence, StopsWorkWhenAsked) {
  Progress progress;
  int looks = 0;
  progress.cancelled = [&] { return ++looks > 2; };
  const auto stopped = runFenced(
      []() -> Result<std::string> {
        std::this_thread::sleep_for(std::chrono::minutes(10));
        return std::string();
      },
      {}, progress);
  ASSERT_FALSE(stopped);
  EXPECT_EQ(stopped.error().what, kImportCancelled);
}

}  // namespace
}  // namespace baywright
