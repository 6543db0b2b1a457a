// SPDX-License-Identifier: Apache-2.0
#include "exchange/ply_read.h"

#include <gtest/gtest.h>

#include <limits>

#include "scan_files.h"

namespace baywright {
namespace {

using namespace testing;

Result<RawScan> read(const std::string& bytes, const ScanReadOptions& options = {}) {
  return readPly(bytes, options, {});
}

std::string problemOf(const std::string& bytes, const ScanReadOptions& options = {}) {
  const auto scan = read(bytes, options);
  return scan ? "" : scan.error().sentence();
}

const std::string kText =
    "ply\nformat ascii 1.0\nobj_info by hand\nelement vertex 4\nproperty float z\nproperty float x\nproperty "
    "int y\n"
    "element camera 1\nproperty list uchar float matrix\nproperty float focus\n"
    "element face 2\nproperty uchar flags\nproperty list uchar uint vertex_index\nproperty list uint float "
    "uv\n"
    "end_header\n"
    "0.5 0 0\n0.5 1e0 0\n.5 1 1\n5e-1 0 +1\n"
    "3 1 2 3 4.5\n"
    "7 4 0 1 2 3 0\n7 3 0 1 2 2 0.1 0.2\n";

TEST(PlyRead, TakesTextInAnyOrderOfColumnsAndCutsFacesIntoTriangles) {
  const auto scan = read(kText);
  ASSERT_TRUE(scan) << scan.error().sentence();
  ASSERT_EQ(scan->points.size(), 4u);
  EXPECT_EQ(scan->points[2], Vec3(1, 1, 0.5));
  EXPECT_EQ(scan->points[3], Vec3(0, 1, 0.5));
  const std::vector<TriangleMesh::Corners> expected{{0, 1, 2}, {0, 2, 3}, {0, 1, 2}};
  EXPECT_EQ(scan->triangles, expected);
  EXPECT_FALSE(scan->metresPerUnit);
  EXPECT_FALSE(scan->up);
}

TEST(PlyRead, TakesBinaryOfEitherByteOrder) {
  const auto points = sheet(7);
  for (const bool bigEndian : {false, true}) {
    const auto scan = read(plyCloud(points, bigEndian));
    ASSERT_TRUE(scan) << scan.error().sentence();
    EXPECT_EQ(scan->points, points);
    EXPECT_TRUE(scan->triangles.empty());
  }
}

TEST(PlyRead, TakesABinaryMeshWithWindowsLineEnds) {
  const auto scan = read(plyMesh(sheet(5), sheetTriangles(5)));
  ASSERT_TRUE(scan) << scan.error().sentence();
  EXPECT_EQ(scan->triangles, sheetTriangles(5));
  EXPECT_NEAR(scan->points[24].x(), 0.4, 1e-7);
}

TEST(PlyRead, KeepsWhatIsNoNumberForOthersToCount) {
  auto points = sheet(2);
  points[1].x() = std::numeric_limits<double>::quiet_NaN();
  points[2].z() = std::numeric_limits<double>::infinity();
  const auto scan = read(plyCloud(points));
  ASSERT_TRUE(scan);
  EXPECT_FALSE(scan->points[1].allFinite());
  EXPECT_FALSE(scan->points[2].allFinite());
}

TEST(PlyRead, EveryCutShortFileIsASentence) {
  for (const std::string& whole : {kText, plyCloud(sheet(3)), plyMesh(sheet(3), sheetTriangles(3))}) {
    // A text may lose its last line's end, and the last digit of its last number, without a trace.
    const std::size_t traceless = whole == kText ? 3 : 0;
    for (std::size_t length = 0; length + traceless < whole.size(); ++length) {
      const auto scan = read(whole.substr(0, length));
      ASSERT_FALSE(scan) << length;
      EXPECT_TRUE(scan.error().what.ends_with(".")) << scan.error().what;
    }
  }
}

TEST(PlyRead, RefusesCountsThatTheFileCannotHoldBeforeAllocating) {
  std::string bytes = plyCloud(sheet(2));
  const std::size_t at = bytes.find("vertex 4");
  bytes.replace(at, 8, "vertex 18446744073709551615");
  EXPECT_NE(problemOf(bytes).find("more than the rest of the file can hold"), std::string::npos);
  bytes.replace(at, 27, "vertex 99999999999");
  EXPECT_NE(problemOf(bytes).find("99999999999 rows of vertex"), std::string::npos);
}

TEST(PlyRead, RefusesFacesThatNameNoVertex) {
  auto triangles = sheetTriangles(3);
  triangles[2][1] = 9;
  EXPECT_NE(problemOf(plyMesh(sheet(3), triangles)).find("names vertex 9, counted from 0, but there are 9"),
            std::string::npos);
}

TEST(PlyRead, NamesTheRowThatIsDamaged) {
  std::string bytes = kText;
  bytes.replace(bytes.find(".5 1 1"), 6, "..5 11");
  EXPECT_NE(problemOf(bytes).find("vertex 3 of 4"), std::string::npos) << problemOf(bytes);
}

TEST(PlyRead, ThinsCloudsEvenlyAndRefusesLargeMeshes) {
  ScanReadOptions options;
  options.mostPoints = 100;
  options.mostTriangles = 100;
  const auto scan = read(plyCloud(sheet(20)), options);
  ASSERT_TRUE(scan);
  EXPECT_EQ(scan->points.size(), 100u);
  EXPECT_EQ(scan->thinnedOut, 300u);
  EXPECT_EQ(scan->points[1], sheet(20)[4]);
  EXPECT_NE(problemOf(plyMesh(sheet(9), sheetTriangles(9)), options).find("more than 100 triangles"),
            std::string::npos);
}

TEST(PlyRead, SaysWhatItDoesNotKnow) {
  EXPECT_NE(problemOf("plx\n").find("is no PLY"), std::string::npos);
  EXPECT_NE(problemOf("ply\nformat binary_middle_endian 1.0\nend_header\n").find("binary_middle_endian"),
            std::string::npos);
  EXPECT_NE(problemOf("ply\nformat ascii 1.0\nelement vertex 1\nproperty half x\nend_header\n").find("half"),
            std::string::npos);
  EXPECT_NE(problemOf("ply\nformat ascii 1.0\nelement vertex 1\nproperty float x\nproperty float y\n"
                      "end_header\n1 2\n")
                .find("x, y and z"),
            std::string::npos);
}

TEST(PlyRead, StopsWhenAsked) {
  Progress progress;
  progress.cancelled = [] { return true; };
  const auto scan = readPly(plyCloud(sheet(300)), {}, progress);
  ASSERT_FALSE(scan);
  EXPECT_EQ(scan.error().what, kImportCancelled);
}

}  // namespace
}  // namespace baywright
