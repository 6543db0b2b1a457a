// SPDX-License-Identifier: Apache-2.0
#include "exchange/mesh_read.h"

#include <gtest/gtest.h>

#include <limits>

#include "scan_files.h"

namespace baywright {
namespace {

using namespace testing;

Result<ScanGeometry> read(const std::string& name, const std::string& bytes) {
  return readScan(name, bytes, {}, {});
}

Vec3 place(const ScanGeometry& scan, std::size_t i) {
  return scan.origin + scan.points[i].cast<double>();
}

TEST(MeshRead, KnowsAFileByItsFirstBytesBeforeItsName) {
  EXPECT_TRUE(read("scan.xyz", plyCloud(sheet(4))));
  EXPECT_TRUE(read("scan.dat", pcdBinary(sheet(4))));
  EXPECT_TRUE(read("SCAN.XYZ", xyzText(sheet(4))));
  EXPECT_FALSE(read("scan.dat", xyzText(sheet(4))));
  EXPECT_FALSE(read("scan.ply", ""));
  EXPECT_TRUE(hasScanSuffix("a.b.Ply"));
  EXPECT_FALSE(hasScanSuffix("ply"));
  EXPECT_FALSE(hasScanSuffix("plan.dxf"));
}

TEST(MeshRead, CountsWhatIsNoNumberAndWhatIsFarOff) {
  auto points = sheet(30);
  points[5].y() = std::numeric_limits<double>::quiet_NaN();
  for (int i = 0; i < 40; ++i) points.emplace_back(4000 + i, -2500, 900);
  points.emplace_back(1e10, 0, 0);
  points.emplace_back(0, 1e300, 0);
  const auto scan = read("scan.ply", plyCloud(points));
  ASSERT_TRUE(scan) << scan.error().sentence();
  EXPECT_EQ(scan->notFinite, 2u);
  EXPECT_EQ(scan->farOff, 41u);
  EXPECT_EQ(scan->points.size(), 899u);
}

TEST(MeshRead, TakesNoPlaceThatSinglePrecisionCannotHold) {
  std::vector<Vec3> points;
  for (int i = 0; i < 30; ++i) points.emplace_back(i * 1e200, -i * 1e100, i);
  EXPECT_FALSE(read("scan.ply", plyCloud(points)));
}

TEST(MeshRead, KeepsMillimetresOnANationalGrid) {
  auto points = sheet(30);
  for (Vec3& p : points) p += Vec3(512345.678, 5401234.567, 321);
  const auto scan = read("scan.ply", plyCloud(points));
  ASSERT_TRUE(scan);
  for (std::size_t i = 0; i < points.size(); ++i) EXPECT_LT((place(*scan, i) - points[i]).norm(), 1e-6);
}

TEST(MeshRead, KeepsALongHallScannedFromOneEnd) {
  // Point density falls with the square of the distance: half of the points lie within 2 m of 60 m.
  std::vector<Vec3> points;
  for (int i = 0; i < 4000; ++i) {
    const double x = 60.0 / (1 + 0.0075 * i);
    points.emplace_back(x, 0.001 * (i % 1500), 0.002 * (i % 1300));
  }
  const auto scan = read("scan.ply", plyCloud(points));
  ASSERT_TRUE(scan);
  EXPECT_EQ(scan->farOff, 0u);
}

TEST(MeshRead, DropsTrianglesWithTheirCorners) {
  auto points = sheet(12);
  points[0] = Vec3(9000, 0, 0);
  const auto scan = read("scan.ply", plyMesh(points, sheetTriangles(12)));
  ASSERT_TRUE(scan) << scan.error().sentence();
  EXPECT_EQ(scan->farOff, 1u);
  EXPECT_EQ(scan->points.size(), 143u);
  EXPECT_EQ(scan->triangles.size(), sheetTriangles(12).size() - 1);
  EXPECT_TRUE(TriangleMesh::from(scan->points, scan->triangles));
}

TEST(MeshRead, TakesEdgesOfThreeTrianglesAndSaysSo) {
  auto triangles = sheetTriangles(5);
  triangles.push_back(triangles.front());
  triangles.push_back(triangles.front());
  const auto scan = read("scan.ply", plyMesh(sheet(5), triangles));
  ASSERT_TRUE(scan);
  EXPECT_EQ(scan->triangles.size(), triangles.size());
  ASSERT_FALSE(scan->notes.empty());
  EXPECT_NE(scan->notes[0].find("more than two triangles"), std::string::npos);
}

TEST(MeshRead, RefusesWhatHoldsNoRoom) {
  EXPECT_FALSE(read("scan.xyz", "1 2 3\n"));
  EXPECT_FALSE(read("scan.xyz", "nan nan nan\nnan 1 2\nnan 2 inf\n"));
}

TEST(MeshRead, SaysWhichFileIsMeant) {
  const auto scan = read("hall.ply", "ply\nnothing");
  ASSERT_FALSE(scan);
  EXPECT_EQ(scan.error().where, "hall.ply");
}

}  // namespace
}  // namespace baywright
