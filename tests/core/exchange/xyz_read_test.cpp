// SPDX-License-Identifier: Apache-2.0
#include "exchange/xyz_read.h"

#include <gtest/gtest.h>

#include "scan_files.h"

namespace baywright {
namespace {

using namespace testing;

Result<RawScan> read(const std::string& text, const ScanReadOptions& options = {}) {
  return readXyz(text, options, {});
}

/// The points of a text that must be read.
std::vector<Vec3> pointsOf(const std::string& text) {
  const auto scan = read(text);
  EXPECT_TRUE(scan) << scan.error().sentence();
  return scan ? scan->points : std::vector<Vec3>();
}

const std::vector<Vec3> kTwo{{1.5, -2, 3}, {4, 5.25, 6}};

TEST(XyzRead, TakesSpacesTabsCommasAndSemicolons) {
  EXPECT_EQ(pointsOf("1.5 -2 3\n4 5.25 6\n"), kTwo);
  EXPECT_EQ(pointsOf("  1.5\t-2\t\t3 255 0 0\r\n4\t5.25\t6 1 2 3"), kTwo);
  EXPECT_EQ(pointsOf("1.5,-2,3\n4,5.25,6\n"), kTwo);
  EXPECT_EQ(pointsOf("1.5, -2, 3, 17\n4, 5.25, 6, 18\n"), kTwo);
  EXPECT_EQ(pointsOf("1.5;-2;3;a;b\n4;5.25;6;c;d\n"), kTwo);
}

TEST(XyzRead, TakesDecimalCommas) {
  EXPECT_EQ(pointsOf("1,5;-2;3\n4;5,25;6\n"), kTwo);
  EXPECT_EQ(pointsOf("1,5 -2,0 3,0\n4,0 5,25 6,0\n"), kTwo);
}

TEST(XyzRead, PassesOverHeadingsRemarksAndACount) {
  EXPECT_EQ(pointsOf("2\n1.5 -2 3\n4 5.25 6\n"), kTwo);
  EXPECT_EQ(pointsOf("\xEF\xBB\xBF# made up\nScan of a hall\n\n1.5 -2 3\n// between\n\n4 5.25 6\n"), kTwo);
}

TEST(XyzRead, TakesTheColumnsThatAHeadingNames) {
  EXPECT_EQ(pointsOf("//Intensity Y X Z\n9 -2 1.5 3\n9 5.25 4 6\n"), kTwo);
  EXPECT_EQ(pointsOf("\"id\";\"x\";\"y\";\"z\"\n1;1,5;-2;3\n2;4;5,25;6\n"), kTwo);
}

TEST(XyzRead, NamesTheLineThatIsNoPoint) {
  const auto scan = read("1 2 3\n4 5 6\n7 eight 9\n1 2 3\n");
  ASSERT_FALSE(scan);
  EXPECT_EQ(scan.error().where, "line 3");
  EXPECT_FALSE(read("1 2 3\n4 5\n7 8 9\n"));
}

TEST(XyzRead, LeavesALastLineOutThatIsCutShort) {
  const auto scan = read("1.5 -2 3\n4 5.25 6\n7 8");
  ASSERT_TRUE(scan);
  EXPECT_EQ(scan->points, kTwo);
  ASSERT_EQ(scan->notes.size(), 1u);
}

TEST(XyzRead, RefusesTextWithoutPoints) {
  EXPECT_FALSE(read("nothing\n"));
  EXPECT_FALSE(read("1 2\n"));
  std::string letter;
  for (int i = 0; i < 500; ++i) letter += "Dear customer,\n";
  EXPECT_FALSE(read(letter));
}

TEST(XyzRead, ThinsEvenly) {
  ScanReadOptions options;
  options.mostPoints = 101;  // a count may stand among the lines
  const auto scan = read(xyzText(sheet(20)), options);
  ASSERT_TRUE(scan);
  EXPECT_EQ(scan->points.size(), 100u);
  EXPECT_EQ(scan->thinnedOut, 300u);
}

TEST(XyzRead, ReadsNumbersToTheLastBit) {
  const auto points = pointsOf("0.1 1e-3 123456789.123456789\n");
  ASSERT_EQ(points.size(), 1u);
  EXPECT_EQ(points[0], Vec3(0.1, 1e-3, 123456789.123456789));
}

}  // namespace
}  // namespace baywright
