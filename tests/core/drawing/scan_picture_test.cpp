// SPDX-License-Identifier: Apache-2.0
#include "drawing/scan_picture.h"

#include <gtest/gtest.h>

#include "geometry/mesh.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

using Points = std::vector<Eigen::Vector3f>;

RoomScan scanOf(Points points) {
  RoomScan scan;
  scan.points = std::make_shared<const Points>(std::move(points));
  return scan;
}

/// A patch of a plane: `at` and two edges, a point each centimetre.
void addPatch(Points& points, const Vec3& at, const Vec3& u, const Vec3& v) {
  const auto count = [](const Vec3& edge) { return static_cast<int>(std::lround(edge.norm() / 0.01)); };
  for (int i = 0; i < count(u); ++i) {
    for (int j = 0; j < count(v); ++j)
      points.push_back((at + (i + 0.5) / count(u) * u + (j + 0.5) / count(v) * v).cast<float>());
  }
}

int inkAt(const ScanPicture& picture, double x, double y) {
  const int column = static_cast<int>(std::floor((x - picture.upperLeft.x()) / picture.pixel));
  const int row = static_cast<int>(std::floor((picture.upperLeft.y() - y) / picture.pixel));
  return picture.ink.at(static_cast<std::size_t>(row) * static_cast<std::size_t>(picture.width) +
                        static_cast<std::size_t>(column));
}

TEST(ScanPicture, ShowsWallsDarkerThanWhatStandsBeforeThemAndNoFloor) {
  const Job job = garage(4, 3).withCeiling(2.5).job();
  Points points;
  addPatch(points, {0, 0, 0}, {4, 0, 0}, {0, 3, 0});        // the floor
  addPatch(points, {0, 0.005, 0}, {4, 0, 0}, {0, 0, 2.5});  // wall A, in the middle of its pixels
  addPatch(points, {1, 0.505, 0}, {1, 0, 0}, {0, 0, 0.6});  // a low front
  const ScanPicture picture = scanPictureOf(scanOf(points), ViewKind::Plan, job);
  ASSERT_FALSE(picture.empty());
  EXPECT_GT(inkAt(picture, 3.005, 0.005), 240);
  EXPECT_GT(inkAt(picture, 1.505, 0.505), 60);
  EXPECT_LT(inkAt(picture, 1.505, 0.505), inkAt(picture, 3.005, 0.005) - 60);
  EXPECT_EQ(inkAt(picture, 2.0, 2.0), 0);
}

TEST(ScanPicture, ShowsAWallsReliefTheDarkerTheDeeper) {
  const Job job = garage(4, 3).withCeiling(2.5).job();
  Points points;
  addPatch(points, {0, 0, 0}, {2, 0, 0}, {0, 0, 2.5});      // the face
  addPatch(points, {2, -0.08, 0}, {1, 0, 0}, {0, 0, 2.5});  // a leaf set back
  addPatch(points, {3, 0.3, 0}, {1, 0, 0}, {0, 0, 1.5});    // a shelf before it
  const DrawnView wall{ViewKind::Wall, idNamed(job, "Wall A")};
  const ScanPicture picture = scanPictureOf(scanOf(points), wall, job);
  ASSERT_FALSE(picture.empty());
  // Seen from inside, x runs the other way.
  const int face = inkAt(picture, 4 - 1.0, 1.2);
  const int leaf = inkAt(picture, 4 - 2.5, 1.2);
  const int shelf = inkAt(picture, 4 - 3.5, 1.2);
  EXPECT_GT(leaf, face + 40);
  EXPECT_LT(shelf, face - 40);
  EXPECT_GT(shelf, 0);
  EXPECT_EQ(inkAt(picture, 4 - 3.5, 2.2), 0);
}

TEST(ScanPicture, SeesAMeshAsItsSurface) {
  const Job job = garage(4, 3).withCeiling(2.5).job();
  RoomScan scan;
  // Wall A as two triangles.
  scan.mesh = std::make_shared<const TriangleMesh>(
      *TriangleMesh::from({{0, 0, 0}, {4, 0, 0}, {4, 0, 2.5F}, {0, 0, 2.5F}}, {{0, 1, 2}, {0, 2, 3}}));
  const ScanPicture picture = scanPictureOf(scan, {ViewKind::Wall, idNamed(job, "Wall A")}, job);
  ASSERT_FALSE(picture.empty());
  for (const double x : {0.1, 2.0, 3.9}) EXPECT_EQ(inkAt(picture, x, 1.25), 90) << x;
}

TEST(ScanPicture, TakesLargerPixelsWhereFewPointsWereSeen) {
  const Job job = garage(4, 3).withCeiling(2.5).job();
  Points dense;
  addPatch(dense, {0, 0, 0}, {4, 0, 0}, {0, 0, 2.5});
  Points sparse;
  for (std::size_t i = 0; i < dense.size(); i += 97) sparse.push_back(dense[i]);
  const DrawnView wall{ViewKind::Wall, idNamed(job, "Wall A")};
  EXPECT_LT(scanPictureOf(scanOf(dense), wall, job).pixel, 0.025);
  EXPECT_GT(scanPictureOf(scanOf(sparse), wall, job).pixel, 0.035);
}

TEST(ScanPicture, IsEmptyWhereThereIsNothingToSee) {
  const Job job = garage(4, 3).job();
  const RoomScan outside = scanOf({{50, 50, 1}});
  EXPECT_TRUE(scanPictureOf(outside, ViewKind::Plan, job).empty());
  EXPECT_TRUE(scanPictureOf(outside, {ViewKind::Wall, idNamed(job, "Wall A")}, job).empty());
  EXPECT_TRUE(scanPictureOf(outside, {ViewKind::Wall, {}}, job).empty());
  EXPECT_TRUE(scanPictureOf(RoomScan{}, ViewKind::Plan, newJob()).empty());
}

TEST(ScanPicture, GivesUpWhenAsked) {
  const Job job = garage(4, 3).job();
  Points points;
  addPatch(points, {0, 0, 0}, {4, 0, 0}, {0, 0, 2.5});
  EXPECT_TRUE(scanPictureOf(scanOf(points), ViewKind::Plan, job, {{}, [] { return true; }}).empty());
}

}  // namespace
}  // namespace baywright
