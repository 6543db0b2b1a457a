// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_write.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>

#include "dxf_drawings.h"
#include "exchange/dxf_room.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

Linework room() {
  Linework linework;
  Path outline;
  outline.layer = Layer::Walls;
  outline.closed = true;
  outline.rings = {{{0, 0}, {6.4, 0}, {6.4, 4.2}, {0, 4.2}}};
  Path beam;
  beam.layer = Layer::Overhead;
  beam.rings = {{{0, 2}, {6.4, 2}}};
  Path floor = outline;
  floor.layer = Layer::Floor;
  floor.stroked = false;
  floor.fill = Fill::Soft;
  linework.paths = {floor, outline, beam};
  linework.texts.push_back(
      {Layer::Labels, {3, 1}, "Garagentür ½″", 2.5, 0, TextAnchor::Centre, false, false, {}, {}});
  return linework;
}

TEST(DxfWrite, IsReadBackAsItWas) {
  DxfWriteOptions options;
  for (const DrawingUnit unit : kUsualDrawingUnits) {
    options.unit = unit;
    const auto drawing = readDxf(dxfOf(room(), options));
    ASSERT_TRUE(drawing) << drawing.error().sentence();
    EXPECT_TRUE(drawing->notes.empty());
    EXPECT_EQ(drawing->unit, unit);
    ASSERT_EQ(drawing->curves.size(), 2u);  // the floor is only filled
    const double scale = metresPer(unit);
    EXPECT_LT((scale * drawing->curves[0].points[2] - Vec2(6.4, 4.2)).norm(), 1e-6);
    ASSERT_EQ(drawing->texts.size(), 1u);
    EXPECT_EQ(drawing->texts[0].words, "Garagentür ½″");
    EXPECT_NEAR(scale * drawing->texts[0].height, 2.5 * 0.05, 1e-6);
    const auto again = recogniseDrawing(*drawing, {});
    ASSERT_TRUE(again) << again.error().sentence();
    EXPECT_NEAR(floorArea(again->room), 6.4 * 4.2, 1e-5);
  }
}

TEST(DxfWrite, WritesDimensionsAsLinesAndWords) {
  Linework linework;
  linework.dimensions.push_back({Layer::Dimensions, {0, 0}, {5, 0}, -0.5, "5.000 m", false, {}, {}});
  const auto drawing = readDxf(dxfOf(linework));
  ASSERT_TRUE(drawing);
  EXPECT_GE(drawing->curves.size(), 3u);
  ASSERT_EQ(drawing->texts.size(), 1u);
  EXPECT_EQ(drawing->texts[0].words, "5.000 m");
}

TEST(DxfWrite, WritesAnEmptyDrawing) {
  const auto drawing = readDxf(dxfOf({}));
  ASSERT_TRUE(drawing);
  EXPECT_TRUE(drawing->curves.empty());
  EXPECT_EQ(drawing->version, "AC1015");
}

// ezdxf reads it strictly, and its audit finds nothing to mend.
TEST(DxfWrite, PleasesAnotherReader) {
  if (!test::haveDrawings()) GTEST_SKIP() << "python3-ezdxf is not installed.";
  const auto folder = std::filesystem::path(testing::TempDir());
  const std::string file = (folder / "baywright_written.dxf").string();
  const std::string answer = (folder / "baywright_written.json").string();
  std::ofstream(file, std::ios::binary) << dxfOf(room());
  const std::string command =
      std::string("/usr/bin/python3 " BAYWRIGHT_TESTS "/data/check_drawing.py ") + file + " > " + answer;
  ASSERT_EQ(std::system(command.c_str()), 0) << test::fileBytes(answer);
  const auto found = nlohmann::json::parse(test::fileBytes(answer));
  EXPECT_EQ(found["unit"], 4);
  ASSERT_EQ(found["polylines"].size(), 2u);
  EXPECT_EQ(found["polylines"][0]["layer"], "Walls");
  EXPECT_EQ(found["polylines"][0]["closed"], true);
  EXPECT_EQ(found["polylines"][0]["points"][2][0], 6400);
  EXPECT_EQ(found["layers"]["Overhead"], "DASHED");
  EXPECT_EQ(found["texts"][0]["words"], "Garagentür ½″");
  EXPECT_EQ(found["texts"][0]["at"][0], 3000);
  std::remove(file.c_str());
  std::remove(answer.c_str());
}

}  // namespace
}  // namespace baywright
