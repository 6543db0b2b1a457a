// SPDX-License-Identifier: Apache-2.0
#include "exchange/dxf_openings.h"

#include <gtest/gtest.h>

#include "exchange/dxf_room.h"
#include "job/room_geometry.h"

namespace baywright {
namespace {

/// A drawing in metres, put together by hand.
class Plan {
 public:
  Plan() { drawing.unit = DrawingUnit::Metres; }

  void line(const std::string& layer, const std::vector<Vec2>& points, const std::string& block = {}) {
    DxfCurve curve;
    curve.kind = "LWPOLYLINE";
    curve.layer = layerOf(layer);
    curve.points = points;
    if (!block.empty()) {
      curve.insert = static_cast<int>(drawing.inserts.size());
      drawing.inserts.push_back({block, curve.layer, points.front()});
    }
    drawing.curves.push_back(curve);
  }
  void arc(const std::string& layer, const DxfArc& arc) {
    std::vector<Vec2> points;
    for (int i = 0; i <= 30; ++i) points.push_back(arc.at(arc.start + arc.sweep * i / 30));
    line(layer, points);
    drawing.curves.back().kind = "ARC";
    drawing.curves.back().arcs = {arc};
  }
  /// Walls in single lines round 6 by 4, with a gap from 2 to 2.9 in the wall along y = 0.
  void gapRoom() { line("WALL", {{2.9, 0}, {6, 0}, {6, 4}, {0, 4}, {0, 0}, {2, 0}}); }

  DxfDrawing drawing;

 private:
  int layerOf(const std::string& name) {
    if (const auto layer = layerNamed(drawing, name)) return *layer;
    drawing.layers.push_back({name, false, false});
    return static_cast<int>(drawing.layers.size()) - 1;
  }
};

Opening onlyOpening(const Plan& plan) {
  const auto room = recogniseDrawing(plan.drawing, {});
  EXPECT_TRUE(room) << (room ? "" : room.error().sentence());
  if (!room) return {};
  EXPECT_NEAR(floorArea(room->room), 24, 1e-6);
  EXPECT_EQ(room->room.openings.size(), 1u);
  return room->room.openings.empty() ? Opening{} : room->room.openings[0];
}

TEST(DxfOpenings, HangsADoorThatOpensOutward) {
  Plan plan;
  plan.gapRoom();
  // Hinged at (2.9, 0), it opens downward, out of the room.
  plan.line("DOORS", {{2.9, 0}, {2.9, -0.9}});
  plan.arc("DOORS", {{2.9, 0}, 0.9, kPi, kPi / 2});
  const Opening door = onlyOpening(plan);
  EXPECT_EQ(door.kind, OpeningKind::HingedDoor);
  EXPECT_EQ(door.swing, LeafSwing::OutOfRoom);
  EXPECT_EQ(door.hinge, HingeSide::End);  // wall A runs along x: its end is nearer to the hinge
  EXPECT_NEAR(door.offset.value, 2, 1e-9);
  EXPECT_NEAR(door.width.value, 0.9, 1e-9);
}

TEST(DxfOpenings, DoesNotTakeLeavesForWalls) {
  Plan plan;
  plan.gapRoom();
  // Leaf and arc on the walls' own layer, the leaf as a thin outline.
  plan.line("WALL", {{2, 0}, {2.04, 0}, {2.04, 0.9}, {2, 0.9}, {2, 0}});
  plan.arc("WALL", {{2, 0}, 0.9, 0, kPi / 2});
  const Opening door = onlyOpening(plan);
  EXPECT_EQ(door.kind, OpeningKind::HingedDoor);
  EXPECT_EQ(door.swing, LeafSwing::IntoRoom);
  EXPECT_EQ(door.hinge, HingeSide::Start);
}

TEST(DxfOpenings, FindsADoorOverAnUnbrokenWall) {
  Plan plan;
  plan.line("WALL", {{0, 0}, {6, 0}, {6, 4}, {0, 4}, {0, 0}});
  plan.line("DOORS", {{6, 1}, {5.2, 1}});
  plan.arc("DOORS", {{6, 1}, 0.8, kPi / 2, kPi / 2});
  const Opening door = onlyOpening(plan);
  EXPECT_EQ(door.kind, OpeningKind::HingedDoor);
  EXPECT_NEAR(door.offset.value, 1, 1e-9);
  EXPECT_NEAR(door.width.value, 0.8, 1e-9);
  EXPECT_EQ(door.swing, LeafSwing::IntoRoom);
}

TEST(DxfOpenings, TakesTwoLeavesForTwoDoors) {
  Plan plan;
  plan.line("WALL", {{3.8, 0}, {6, 0}, {6, 4}, {0, 4}, {0, 0}, {2, 0}});
  plan.arc("DOORS", {{2, 0}, 0.9, 0, kPi / 2});
  plan.arc("DOORS", {{3.8, 0}, 0.9, kPi / 2, kPi / 2});
  const auto room = recogniseDrawing(plan.drawing, {});
  ASSERT_TRUE(room) << room.error().sentence();
  ASSERT_EQ(room->room.openings.size(), 2u);
  for (const Opening& door : room->room.openings) {
    EXPECT_EQ(door.kind, OpeningKind::HingedDoor);
    EXPECT_NEAR(door.width.value, 0.9, 1e-9);
    EXPECT_EQ(door.hinge, door.offset.value < 2.5 ? HingeSide::Start : HingeSide::End);
  }
  EXPECT_EQ(room->room.openings[0].name, "Door");
  EXPECT_EQ(room->room.openings[1].name, "Door 2");
}

TEST(DxfOpenings, KnowsWindowsByTheirBlocks) {
  Plan plan;
  plan.gapRoom();
  plan.line("0", {{2, -0.05}, {2.9, -0.05}}, "Fenster 90");
  EXPECT_EQ(onlyOpening(plan).kind, OpeningKind::Window);
}

TEST(DxfOpenings, LeavesOtherArcsAlone) {
  Plan plan;
  plan.line("WALL", {{1, 0}, {6, 0}, {6, 4}, {0, 4}, {0, 1}});
  plan.arc("WALL", {{1, 1}, 1, kPi, kPi / 2});  // a rounded corner, as large as a door's sweep
  const auto room = recogniseDrawing(plan.drawing, {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_TRUE(room->room.openings.empty());
  EXPECT_NEAR(floorArea(room->room), 24 - (1 - kPi / 4), 2e-3);
}

TEST(DxfOpenings, ClosesGapsThatNobodyFitsThrough) {
  Plan plan;
  plan.line("WALL", {{2.1, 0}, {6, 0}, {6, 4}, {0, 4}, {0, 0}, {2, 0}});
  const auto room = recogniseDrawing(plan.drawing, {});
  ASSERT_TRUE(room) << room.error().sentence();
  EXPECT_TRUE(room->room.openings.empty());
  bool noted = false;
  for (const std::string& note : room->notes)
    noted = noted || note.find("0.10 m in wall A") != std::string::npos;
  EXPECT_TRUE(noted);
}

}  // namespace
}  // namespace baywright
