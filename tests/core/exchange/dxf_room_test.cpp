// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_room.h"

#include <gtest/gtest.h>

#include "dxf_drawings.h"
#include "exchange/dxf_layers.h"
#include "exchange/dxf_names.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

DxfDrawing drawn(const std::vector<std::pair<std::string, std::vector<Vec2>>>& closedOutlines,
                 DrawingUnit unit = DrawingUnit::Metres) {
  DxfDrawing drawing;
  drawing.unit = unit;
  for (const auto& [layer, points] : closedOutlines) {
    auto index = layerNamed(drawing, layer);
    if (!index) {
      index = static_cast<int>(drawing.layers.size());
      drawing.layers.push_back({layer});
    }
    DxfCurve curve;
    curve.kind = "LWPOLYLINE";
    curve.layer = *index;
    curve.closed = true;
    curve.points = points;
    drawing.curves.push_back(curve);
  }
  return drawing;
}

std::vector<Vec2> rectangle(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

bool mentions(const std::vector<std::string>& sentences, const std::string& words) {
  for (const std::string& sentence : sentences)
    if (sentence.find(words) != std::string::npos) return true;
  return false;
}

TEST(DxfRoom, AsksForTheUnitAndShowsWhatEachWouldMean) {
  const auto room =
      recogniseDrawing(drawn({{"WALL", rectangle(0, 0, 240, 180)}}, DrawingUnit::NotStated), {});
  ASSERT_FALSE(room);
  EXPECT_NE(room.error().what.find("0.24 by 0.18 m in millimetres"), std::string::npos)
      << room.error().sentence();
  EXPECT_NE(room.error().what.find("6.10 by 4.57 m in inches"), std::string::npos);
  EXPECT_NE(room.error().next.find("mm, cm, m, in or ft"), std::string::npos);
}

TEST(DxfRoom, TakesTheUnitThatIsTyped) {
  const auto drawing = drawn({{"WALL", rectangle(0, 0, 240, 180)}}, DrawingUnit::Millimetres);
  DxfChoices choices;
  EXPECT_FALSE(recogniseDrawing(drawing, choices));  // 24 cm are no room
  choices.unit = DrawingUnit::Inches;
  const auto room = recogniseDrawing(drawing, choices);
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(floorArea(room->room), 240 * 180 * 0.0254 * 0.0254, 1e-9);
  EXPECT_TRUE(mentions(room->notes, "although the drawing states millimetres")) << room->notes[0];
}

TEST(DxfRoom, TakesLayersNamedAfterWalls) {
  const auto drawing = drawn({{"Rahmen", rectangle(-5, -5, 20, 20)},
                              {"Außenwände", rectangle(0, 0, 6, 4)},
                              {"0", rectangle(-1, -1, 12, 12)}});
  const auto room = recogniseDrawing(drawing, {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(floorArea(room->room), 24, 1e-9);
  EXPECT_TRUE(mentions(room->notes, "\"wände\""));

  DxfChoices other;
  other.layers = {"0"};
  EXPECT_NEAR(floorArea(recogniseDrawing(drawing, other)->room), 169, 1e-9);
  other.layers = {"Nonsense"};
  const auto refused = recogniseDrawing(drawing, other);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().next.find("Rahmen"), std::string::npos);
}

TEST(DxfRoom, TakesWhatIsNotNamedOtherwiseWhereNoLayerIsNamedAfterWalls) {
  const auto drawing = drawn({{"BORDER", rectangle(-5, -5, 20, 20)}, {"0", rectangle(0, 0, 6, 4)}});
  EXPECT_NEAR(floorArea(recogniseDrawing(drawing, {})->room), 24, 1e-9);
}

TEST(DxfRoom, GivesCornersADrawingsAccuracy) {
  const auto room = recogniseDrawing(drawn({{"WALL", rectangle(0, 0, 6, 4)}}), {});
  ASSERT_TRUE(room);
  ASSERT_EQ(room->room.walls.size(), 4u);
  EXPECT_EQ(room->room.walls[0].name, "A");
  // The length of a wall is as uncertain as one read off a drawing: both its corners share in that.
  const double sigma = instrumentSigma(Instrument::Drawing, 6);
  const auto line = wallLines(room->room)[0];
  const double both =
      combinedSigma(line.startCovariance.sigmaAlong(line.along), line.endCovariance.sigmaAlong(line.along));
  EXPECT_NEAR(both, sigma, 1e-12);
  ASSERT_EQ(room->room.ceiling.size(), 1u);
  EXPECT_FALSE(room->room.ceiling[0].height.known);
}

TEST(DxfRoom, MovesARoomThatIsFarAway) {
  const auto room =
      recogniseDrawing(drawn({{"WALL", rectangle(500'000, 4'000'000, 500'006, 4'000'004)}}), {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(room->room.walls[0].start.norm(), 0, 1e-6);
  EXPECT_NEAR(floorArea(room->room), 24, 1e-4);
  EXPECT_TRUE(mentions(room->notes, "-500000.000") || mentions(room->notes, "−500000.000"));
}

TEST(DxfRoom, IgnoresLayersThatAreNotShown) {
  auto drawing = drawn({{"WALL", rectangle(0, 0, 6, 4)}, {"WALL OLD", rectangle(-1, -1, 9, 9)}});
  drawing.layers[1].frozen = true;
  drawing.curves[1].hidden = true;
  EXPECT_NEAR(floorArea(recogniseDrawing(drawing, {})->room), 24, 1e-9);
  const auto views = viewLayers(drawing);
  EXPECT_TRUE(views[0].suggested);
  EXPECT_FALSE(views[1].suggested);
  EXPECT_EQ(views[1].reason, "It is frozen in the drawing.");
}

TEST(DxfRoom, TakesAnotherRoomIfAsked) {
  auto drawing = drawn({{"WALL", rectangle(0, 0, 6, 4)}, {"WALL", rectangle(6, 0, 9, 4)}});
  drawing.texts = {{"6.00 x 4.00", {3, 1}, 0.9, 0, false},
                   {"Garage\n24 m", {3, 2}, 0.3, 0, false},
                   {"Workshop", {7, 2}, 0.4, 0, false},
                   {"north door", {3, 3}, 0.1, 0, false},
                   {"HIDDEN", {3, 3}, 2, 0, true}};
  const auto largest = recogniseDrawing(drawing, {});
  ASSERT_TRUE(largest) << largest.error().sentence();
  EXPECT_EQ(largest->room.name, "Garage");
  EXPECT_TRUE(mentions(largest->notes, "number 2 of 12.0 square metres around 7.5, 2.0 m"));
  DxfChoices second;
  second.room = 1;
  const auto other = recogniseDrawing(drawing, second);
  ASSERT_TRUE(other);
  EXPECT_NEAR(floorArea(other->room), 12, 1e-9);
  EXPECT_EQ(other->room.name, "Workshop");
  second.room = 2;
  EXPECT_FALSE(recogniseDrawing(drawing, second));
}

TEST(DxfRoom, DoubtsAUnitThatMakesNoRoom) {
  const auto room = recogniseDrawing(drawn({{"WALL", rectangle(0, 0, 6400, 4200)}}, DrawingUnit::Inches), {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_TRUE(mentions(room->notes, "the unit may be wrong"));
  EXPECT_TRUE(mentions(room->notes, "6.40 by 4.20 m in millimetres"));
}

TEST(DxfRoom, RefusesAUnitInWhichNoRoomIsThatLargeAndShowsTheOthers) {
  const auto room = recogniseDrawing(
      drawn({{"WALLS", {{0, 0}, {8400, 0}, {8400, 6100}, {0, 6100}}}}, DrawingUnit::Metres), {});
  ASSERT_FALSE(room);
  EXPECT_NE(room.error().what.find("8400.00 by 6100.00 m"), std::string::npos) << room.error().what;
  EXPECT_NE(room.error().what.find("8.40 by 6.10 m in millimetres"), std::string::npos) << room.error().what;
  EXPECT_FALSE(room.error().next.empty());
}

TEST(DxfRoom, RefusesADrawingWithoutLines) {
  EXPECT_FALSE(recogniseDrawing(drawn({}), {}));
  EXPECT_FALSE(recogniseDrawing({}, {}));
}

TEST(DxfRoom, HintsAtLayersByNamesInManyLanguages) {
  using detail::hintOf;
  using detail::NameHint;
  for (const char* name : {"A-WALL", "Walls_ext", "WÄNDE", "MURS", "MURS PORTEURS", "Muri portanti",
                           "Massivwand", "Cloisons", "Muros", "Pareti", "СТЕНЫ", "ŚCIANY", "墙体", "VEGG"})
    EXPECT_TRUE(hintOf(name) && hintOf(name)->hint == NameHint::Wall) << name;
  EXPECT_EQ(hintOf("TÜREN")->hint, NameHint::Door);
  EXPECT_EQ(hintOf("A-GLAZ")->hint, NameHint::Window);
  EXPECT_EQ(hintOf("A-WALL-PATT")->hint, NameHint::NotBuilt);
  EXPECT_FALSE(hintOf("0"));
  EXPECT_FALSE(hintOf("\xFF\xFE broken"));
}

class MadeRooms : public testing::Test {
 protected:
  void SetUp() override {
    if (!test::haveDrawings())
      GTEST_SKIP() << "python3-ezdxf is not installed: no drawings by another writer.";
  }
};

TEST_F(MadeRooms, ComeOutInMetres) {
  const auto room = recogniseDrawing(*readDxf(test::madeDrawing("room_mm")), {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_EQ(room->room.walls.size(), 6u);
  EXPECT_NEAR(floorArea(room->room), 6.4 * 7.4 - 1.2 * 3.2, 1e-9);
  EXPECT_TRUE(mentions(room->skipped, "1 HATCH"));

  DxfChoices inches;
  inches.unit = DrawingUnit::Inches;
  const auto small = recogniseDrawing(*readDxf(test::madeDrawing("room_inches")), inches);
  ASSERT_TRUE(small) << small.error().sentence();
  EXPECT_NEAR(floorArea(small->room), 240 * 180 * 0.0254 * 0.0254, 1e-9);
}

TEST_F(MadeRooms, HaveTheirDoors) {
  const auto room = recogniseDrawing(*readDxf(test::madeDrawing("double_walls")), {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(floorArea(room->room), 20, 1e-9);
  ASSERT_EQ(room->room.openings.size(), 2u);
  const bool doorFirst = room->room.openings[0].kind == OpeningKind::HingedDoor;
  const Opening& door = room->room.openings[doorFirst ? 0 : 1];
  const Opening& wide = room->room.openings[doorFirst ? 1 : 0];
  EXPECT_EQ(door.kind, OpeningKind::HingedDoor);
  EXPECT_NEAR(door.width.value, 0.9, 1e-9);
  EXPECT_EQ(door.swing, LeafSwing::IntoRoom);
  const auto place = openingPlace(room->room, door.id);
  ASSERT_TRUE(place);
  // The hinge is at (1, 0): where the opening starts on the wall that runs from (0, 0) to (5, 0).
  EXPECT_NEAR((place->start - Vec2(1, 0)).norm(), 0, 1e-9);
  EXPECT_EQ(door.hinge, HingeSide::Start);
  EXPECT_EQ(wide.kind, OpeningKind::Passage);
  EXPECT_NEAR(wide.width.value, 2.4, 1e-9);
  EXPECT_NEAR(room->room.walls[0].thickness, 0.1, 0.01);
}

TEST_F(MadeRooms, AreNotTheFrameOfTheirSheet) {
  const auto room = recogniseDrawing(*readDxf(test::madeDrawing("framed")), {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(floorArea(room->room), 6.2 * 5.4, 1e-9);
  EXPECT_EQ(room->room.name, "Hobby room");
  EXPECT_TRUE(mentions(room->notes, "rather the sheet's frame"));

  const auto inches = recogniseDrawing(*readDxf(test::madeDrawing("title_block")), {});
  ASSERT_TRUE(inches) << inches.error().sentence();
  EXPECT_NEAR(floorArea(inches->room), 276 * 216 * 0.0254 * 0.0254, 1e-9);
  ASSERT_EQ(inches->room.openings.size(), 1u);
  EXPECT_EQ(inches->room.openings[0].kind, OpeningKind::HingedDoor);
  EXPECT_EQ(inches->room.openings[0].swing, LeafSwing::OutOfRoom);
  EXPECT_NEAR(inches->room.walls[0].thickness, Wall{}.thickness, 1e-9);  // not the frame's two lines
}

TEST_F(MadeRooms, HaveMultilinesForWalls) {
  const DxfDrawing drawing = *readDxf(test::madeDrawing("multilines"));
  const auto room = recogniseDrawing(drawing, {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(floorArea(room->room), 27, 1e-9);
  EXPECT_NEAR(room->room.walls[0].thickness, 0.2, 1e-9);
  // Both lines of the other stop at 3 m and start again at 4.5 m of 8.
  std::vector<double> lengths;
  for (const DxfCurve& curve : drawing.curves)
    if (drawing.layers[static_cast<std::size_t>(curve.layer)].name == "cut")
      lengths.push_back(test::lengthOf(curve));
  ASSERT_EQ(lengths.size(), 4u);
  for (std::size_t i = 0; i < 4; ++i) EXPECT_NEAR(lengths[i], i % 2 == 0 ? 3.0 : 3.5, 1e-9);
}

TEST_F(MadeRooms, AreClosedWhereEndsMissEachOther) {
  const auto room = recogniseDrawing(*readDxf(test::madeDrawing("loose_ends")), {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(floorArea(room->room), 27, 1e-6);
  EXPECT_EQ(room->room.walls.size(), 4u);
  EXPECT_EQ(room->room.openings.size(), 1u);
  EXPECT_TRUE(mentions(room->notes, "gaps of up to 10 mm"));
}

TEST_F(MadeRooms, HaveBearingWallsAndSplinesThroughPoints) {
  const auto room = recogniseDrawing(*readDxf(test::madeDrawing("bearing_walls")), {});
  ASSERT_TRUE(room) << room.error().sentence();
  // ezdxf's own curve through the points encloses 42.719 square metres; straight chords only 42.540.
  EXPECT_NEAR(floorArea(room->room), 42.719, 0.06);
}

TEST_F(MadeRooms, EndAtTheFacesOfWallsDrawnAsWidePolylines) {
  const DxfDrawing drawing = *readDxf(test::madeDrawing("wide_walls"));
  const auto room = recogniseDrawing(drawing, {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(floorArea(room->room), 6 * 4, 1e-9);
  ASSERT_EQ(room->room.openings.size(), 1u);
  EXPECT_NEAR(room->room.openings[0].width.value, 2, 1e-9);
  EXPECT_NEAR(room->room.walls[0].thickness, 0.15, 0.01);
  DxfChoices inner;
  inner.layers = {"Inner"};
  const auto closed = recogniseDrawing(drawing, inner);
  ASSERT_TRUE(closed) << closed.error().sentence();
  EXPECT_NEAR(floorArea(closed->room), 5.8 * 3.8, 1e-9);
}

TEST_F(MadeRooms, LieBetweenWallsThatAreMereFillings) {
  const auto room = recogniseDrawing(*readDxf(test::madeDrawing("filled_walls")), {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_NEAR(floorArea(room->room), 6 * 4, 1e-9);
  EXPECT_TRUE(mentions(room->notes, "outlines of fillings"));
  EXPECT_FALSE(mentions(room->skipped, "HATCH"));
}

TEST_F(MadeRooms, SayWhatTheyAreMadeOfWhereNothingCanBeRead) {
  const auto room = recogniseDrawing(*readDxf(test::madeDrawing("printed_only")), {});
  ASSERT_FALSE(room);
  for (const char* left : {"1 LWPOLYLINE entity left out", "1 DIMENSION entity left out"})
    EXPECT_NE(room.error().what.find(left), std::string::npos) << room.error().sentence();
}

TEST_F(MadeRooms, FollowBulgedWalls) {
  DxfDrawing drawing = *readDxf(test::madeDrawing("bulges"));
  drawing.curves.resize(1);
  const auto room = recogniseDrawing(drawing, {});
  ASSERT_TRUE(room) << room.error().sentence();
  // Sides 6 by 4; the bulge of 0.5 adds a segment outside, that of -0.3 takes one away. A segment's area is
  // r^2 (a - sin a) / 2 with a = 4 atan(bulge), r = chord (1 + b^2) / (4 b).
  const auto segment = [](double b) {
    const double a = 4 * std::atan(b), r = 4 * (1 + b * b) / (4 * b);
    return r * r * (a - std::sin(a)) / 2;
  };
  EXPECT_NEAR(floorArea(room->room), 24 + segment(0.5) - segment(0.3), 0.02);
}

}  // namespace
}  // namespace baywright
