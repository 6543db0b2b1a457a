// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_read.h"

#include <gtest/gtest.h>

#include "dxf_drawings.h"

namespace baywright {
namespace {

using test::lengthOf;

// A drawing of entities only, as the shortest of programs write it.
std::string entities(const std::string& body) {
  return "0\nSECTION\n2\nENTITIES\n" + body + "0\nENDSEC\n0\nEOF\n";
}

std::string line(const std::string& layer, const std::string& x0, const std::string& y0,
                 const std::string& x1, const std::string& y1) {
  return "0\nLINE\n8\n" + layer + "\n10\n" + x0 + "\n20\n" + y0 + "\n11\n" + x1 + "\n21\n" + y1 + "\n";
}

std::size_t readOf(const DxfDrawing& drawing, const std::string& kind) {
  for (const DxfKindCount& count : drawing.kinds)
    if (count.kind == kind) return count.read;
  return 0;
}

TEST(DxfRead, ReadsALineOfABareDrawing) {
  const auto drawing = readDxf(entities(line("WALL", "1", "2.5", "-3e0", "+4")));
  ASSERT_TRUE(drawing) << drawing.error().sentence();
  ASSERT_EQ(drawing->curves.size(), 1u);
  EXPECT_EQ(drawing->curves[0].points[0], Vec2(1, 2.5));
  EXPECT_EQ(drawing->curves[0].points[1], Vec2(-3, 4));
  EXPECT_EQ(drawing->layers[0].name, "WALL");
  EXPECT_EQ(drawing->unit, DrawingUnit::NotStated);
  EXPECT_TRUE(drawing->notes.empty());
}

TEST(DxfRead, DoesNotMindHowLinesEnd) {
  const std::string unix = entities(line("0", "0", "0", "7", "24"));
  std::string dos, mac;
  for (const char c : unix) {
    dos += c == '\n' ? "\r\n" : std::string(1, c);
    mac += c == '\n' ? '\r' : c;
  }
  for (const std::string& text :
       {dos, mac, "\xEF\xBB\xBF" + unix, unix + "\n\n \n", "999\nmade by hand\n" + unix}) {
    const auto drawing = readDxf(text);
    ASSERT_TRUE(drawing);
    ASSERT_EQ(drawing->curves.size(), 1u);
    EXPECT_DOUBLE_EQ(lengthOf(drawing->curves[0]), 25);
    EXPECT_TRUE(drawing->notes.empty()) << drawing->notes[0];
  }
}

TEST(DxfRead, SaysHowToGoOnWithWhatItCannotRead) {
  const std::string binary = std::string("AutoCAD Binary DXF\r\n\x1a\0", 22) + std::string(100, '\1');
  for (const std::string& bytes :
       {binary, std::string("AC1027\0\0\0\0\0", 11), std::string("\xFF\xFE\x30\0", 4),
        std::string("%PDF-1.4\nnot a drawing"), std::string(1000, '\0')}) {
    const auto drawing = readDxf(bytes);
    ASSERT_FALSE(drawing);
    EXPECT_NE(drawing.error().next.find("ASCII DXF"), std::string::npos) << drawing.error().sentence();
  }
  EXPECT_NE(readDxf(binary).error().what.find("binary"), std::string::npos);
  EXPECT_NE(readDxf("AC1015\0").error().what.find("DWG"), std::string::npos);
  EXPECT_FALSE(readDxf(""));
}

TEST(DxfRead, RefusesAFileBeyondItsLimit) {
  DxfLimits limits;
  limits.bytes = 50;
  const auto drawing = readDxf(entities(line("0", "0", "0", "1", "1")), limits);
  ASSERT_FALSE(drawing);
  EXPECT_FALSE(drawing.error().next.empty());
}

TEST(DxfRead, KeepsWhatCameBeforeTheFileStops) {
  const std::string whole = entities(line("0", "0", "0", "1", "1") + line("0", "0", "0", "1", "2"));
  const auto drawing = readDxf(whole.substr(0, whole.rfind("0\nENDSEC")));
  ASSERT_TRUE(drawing);
  EXPECT_EQ(drawing->curves.size(), 2u);
  ASSERT_EQ(drawing->notes.size(), 1u);
  EXPECT_NE(drawing->notes[0].find("stops before its end"), std::string::npos);
}

TEST(DxfRead, GoesOnAfterDamagedLines) {
  const std::string damaged = "0\nLINE\n8\n0\n10\n1\ngarbage here\n20\n5\n";
  const auto drawing =
      readDxf(entities(line("0", "0", "0", "3", "4") + damaged + line("0", "0", "0", "1", "0")));
  ASSERT_TRUE(drawing);
  EXPECT_EQ(drawing->curves.size(), 2u);
  ASSERT_EQ(drawing->kinds.size(), 1u);
  EXPECT_EQ(drawing->kinds[0].damaged, 1u);
  ASSERT_EQ(drawing->notes.size(), 1u);
  EXPECT_NE(drawing->notes[0].find("line 23"), std::string::npos) << drawing->notes[0];
}

TEST(DxfRead, LeavesOutImpossibleNumbers) {
  const auto drawing = readDxf(entities(line("0", "nan", "0", "3", "4") + line("0", "0", "1e300", "3", "4") +
                                        line("0", "0", "12abc", "3", "4") + line("0", "5", "5", "5", "5") +
                                        "0\nCIRCLE\n8\n0\n10\n0\n20\n0\n40\n-1\n0\nARC\n8\n0\n40\n2\n"));
  ASSERT_TRUE(drawing);
  EXPECT_TRUE(drawing->curves.empty());
  const auto sentences = skippedSentences(*drawing);
  ASSERT_EQ(sentences.size(), 3u);
  EXPECT_EQ(sentences[0], "1 ARC entity left out: damaged, or without size.");
  EXPECT_EQ(sentences[2], "4 LINE entities left out: damaged, or without size.");
}

TEST(DxfRead, NamesKindsThatGiveNoLine) {
  const auto drawing = readDxf(entities("0\nHATCH\n8\n0\n0\nDIMENSION\n8\n0\n0\nHATCH\n8\n0\n67\n1\n"));
  ASSERT_TRUE(drawing);
  ASSERT_EQ(drawing->kinds.size(), 2u);
  EXPECT_EQ(drawing->kinds[0].kind, "DIMENSION");
  EXPECT_EQ(drawing->kinds[1].notUsed, 1u);
  EXPECT_EQ(drawing->kinds[1].paper, 1u);
}

std::string block(const std::string& name, const std::string& body) {
  return "0\nBLOCK\n2\n" + name + "\n10\n0\n20\n0\n" + body + "0\nENDBLK\n";
}
std::string insert(const std::string& name, const std::string& more = "") {
  return "0\nINSERT\n8\n0\n2\n" + name + "\n10\n0\n20\n0\n" + more;
}
std::string withBlocks(const std::string& blocks, const std::string& body) {
  return "0\nSECTION\n2\nBLOCKS\n" + blocks + "0\nENDSEC\n" + entities(body);
}

TEST(DxfRead, StopsAtABlockThatContainsItself) {
  const auto drawing = readDxf(withBlocks(block("A", line("0", "0", "0", "1", "0") + insert("B")) +
                                              block("B", line("0", "0", "0", "0", "1") + insert("a")),
                                          insert("A") + insert("MISSING")));
  ASSERT_TRUE(drawing);
  EXPECT_EQ(drawing->curves.size(), 2u);
  ASSERT_EQ(drawing->notes.size(), 2u);
  EXPECT_NE(drawing->notes[0].find("contains itself"), std::string::npos);
  EXPECT_NE(drawing->notes[1].find("\"MISSING\" is missing"), std::string::npos);
}

// Ten to the tenth lines, if nobody counted.
TEST(DxfRead, IsNotKeptBusyByBlocksOfBlocks) {
  std::string blocks = block("B0", line("0", "0", "0", "1", "0"));
  for (int i = 1; i <= 10; ++i) {
    std::string body;
    for (int n = 0; n < 10; ++n) body += insert("B" + std::to_string(i - 1));
    blocks += block("B" + std::to_string(i), body);
  }
  const auto drawing = readDxf(withBlocks(blocks, insert("B10")));
  ASSERT_TRUE(drawing);
  EXPECT_LE(drawing->curves.size(), DxfLimits{}.placings);
  ASSERT_FALSE(drawing->notes.empty());
  EXPECT_NE(drawing->notes.back().find("200000 times"), std::string::npos) << drawing->notes.back();

  const auto grid = readDxf(withBlocks(block("B", ""), insert("B", "70\n2000000000\n71\n2000000000\n")));
  ASSERT_TRUE(grid);
  EXPECT_FALSE(grid->notes.empty());
}

TEST(DxfRead, StopsAtTheDeepestNesting) {
  std::string blocks = block("B0", line("0", "0", "0", "1", "0"));
  for (int i = 1; i < 40; ++i) blocks += block("B" + std::to_string(i), insert("B" + std::to_string(i - 1)));
  EXPECT_EQ(readDxf(withBlocks(blocks, insert("B15")))->curves.size(), 1u);
  const auto deep = readDxf(withBlocks(blocks, insert("B16")));
  EXPECT_TRUE(deep->curves.empty());
  EXPECT_NE(deep->notes.at(0).find("16 deep"), std::string::npos);
}

TEST(DxfRead, StopsWhenAsked) {
  Progress progress;
  progress.cancelled = [] { return true; };
  EXPECT_FALSE(readDxf(entities(line("0", "0", "0", "1", "1")), {}, progress));
}

// An arc of a circle keeps its exact centre and radius through a mirrored block of twice the size.
TEST(DxfRead, KeepsArcsExactThroughBlocks) {
  const std::string arc = "0\nARC\n8\n0\n10\n1\n20\n0\n40\n2\n50\n0\n51\n90\n";
  const auto drawing = readDxf(withBlocks(block("B", arc), insert("B", "41\n-2\n42\n2\n")));
  ASSERT_TRUE(drawing);
  ASSERT_EQ(drawing->curves.at(0).arcs.size(), 1u);
  const DxfArc& exact = drawing->curves[0].arcs[0];
  EXPECT_TRUE(exact.centre.isApprox(Vec2(-2, 0)));
  EXPECT_DOUBLE_EQ(exact.radius, 4);
  EXPECT_NEAR(exact.sweep, -kPi / 2, 1e-12);  // mirrored: it runs the other way
  EXPECT_NEAR((exact.first() - Vec2(-6, 0)).norm(), 0, 1e-12);
  EXPECT_NEAR((exact.last() - Vec2(-2, 4)).norm(), 0, 1e-12);
  EXPECT_EQ(drawing->inserts.at(static_cast<std::size_t>(drawing->curves[0].insert)).block, "B");
}

class MadeDrawings : public testing::Test {
 protected:
  void SetUp() override {
    if (!test::haveDrawings())
      GTEST_SKIP() << "python3-ezdxf is not installed: no drawings by another writer.";
  }
};

void expectAsEzdxf(const nlohmann::json& expected, const DxfDrawing& drawing) {
  std::map<std::string, std::size_t> kinds;
  for (const DxfKindCount& count : drawing.kinds)
    if (const std::size_t n = count.read + count.notUsed + count.damaged; n > 0) kinds[count.kind] = n;
  EXPECT_EQ(kinds, (expected["kinds"].get<std::map<std::string, std::size_t>>()));

  auto lengths = test::lengthsByLayer(drawing);
  for (const auto& [layer, length] : expected["lengths"].items())
    EXPECT_NEAR(lengths[layer], length.get<double>(), 4e-4 * length.get<double>()) << layer;
  EXPECT_EQ(lengths.size(), expected["lengths"].size());

  for (const auto& [name, shown] : expected["layers"].items()) {
    if (name == "Defpoints") continue;  // ezdxf adds it to files that lack it
    const auto layer = layerNamed(drawing, name);
    ASSERT_TRUE(layer) << name;
    EXPECT_EQ(drawing.layers[static_cast<std::size_t>(*layer)].shown(), shown.get<bool>()) << name;
  }
  const auto extent = extentOf(drawing);
  ASSERT_EQ(extent.has_value(), !expected["extent"].is_null());
  if (!extent) return;
  const auto box = expected["extent"].get<std::vector<double>>();
  const double size = Vec2(box[2] - box[0], box[3] - box[1]).norm();
  EXPECT_LT((extent->low - Vec2(box[0], box[1])).norm(), 3e-4 * size);
  EXPECT_LT((extent->high - Vec2(box[2], box[3])).norm(), 3e-4 * size);
}

TEST_F(MadeDrawings, AreReadAsEzdxfReadsThem) {
  const nlohmann::json made = test::expectedDrawings()["made"];
  ASSERT_GE(made.size(), 11u);
  for (const auto& [name, expected] : made.items()) {
    SCOPED_TRACE(name);
    const auto drawing = readDxf(test::madeDrawing(name));
    ASSERT_TRUE(drawing) << drawing.error().sentence();
    EXPECT_EQ(drawing->unit, unitFromInsunits(expected["unit"].get<int>()));
    expectAsEzdxf(expected, *drawing);
  }
}

TEST_F(MadeDrawings, LeaveTheSheetAndHatchesOut) {
  const auto drawing = readDxf(test::madeDrawing("room_mm"));
  ASSERT_TRUE(drawing);
  EXPECT_EQ(readOf(*drawing, "LWPOLYLINE"), 1u);
  const auto extent = extentOf(*drawing);
  EXPECT_EQ(extent->low, Vec2(0, 0));
  EXPECT_EQ(extent->high, Vec2(6400, 7400));
}

TEST_F(MadeDrawings, GiveTheirWordsWithoutCodes) {
  const auto words = [](const std::string& file) {
    std::vector<std::string> all;
    const auto drawing = readDxf(test::madeDrawing(file));
    for (const DxfText& text : drawing->texts) all.push_back(text.words);
    return all;
  };
  EXPECT_EQ(words("texts"),
            (std::vector<std::string>{"Küche 12,5 m²", "Стены", "45° ±2 ⌀20", "车库", "Bold and\nnext line",
                                      "Height 2.40 m", "6 1/2 in", "a\\b {c}"}));
  EXPECT_EQ(words("latin"), (std::vector<std::string>{"Außenwand Länge", "日本"}));
  EXPECT_EQ(words("cyrillic"), (std::vector<std::string>{"Наружная стена", "日本"}));
  EXPECT_TRUE(layerNamed(*readDxf(test::madeDrawing("cyrillic")), "Наружная"));
}

// Drawings by several CAD programs that are not ours to keep.
TEST_F(MadeDrawings, OfRealProgramsAreReadAsEzdxfReadsThem) {
  const nlohmann::json real = test::expectedDrawings()["real"];
  if (real.empty()) GTEST_SKIP() << "The folder of real drawings is not here.";
  for (const auto& [name, expected] : real.items()) {
    SCOPED_TRACE(name);
    const auto drawing = readDxf(test::fileBytes(std::string(BAYWRIGHT_REAL_DRAWINGS) + "/" + name));
    ASSERT_TRUE(drawing) << drawing.error().sentence();
    expectAsEzdxf(expected, *drawing);
  }
}

}  // namespace
}  // namespace baywright
