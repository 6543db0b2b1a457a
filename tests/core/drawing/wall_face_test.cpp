// SPDX-License-Identifier: Apache-2.0
#include "drawing/wall_face.h"

#include <gtest/gtest.h>

#include "drawing/snap_rules.h"
#include "drawing/view_move.h"
#include "job/edit.h"
#include "job/find.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

const WallLine lineOf(const Job& job, const std::string& name) {
  return *wallLine(job.room, idNamed(job, "Wall " + name));
}

bool attracts(const std::vector<SnapRule>& rules, const std::string& what, const Vec2& by) {
  return std::any_of(rules.begin(), rules.end(), [&](const SnapRule& rule) {
    return rule.mark.what == what && std::abs(rule.normal.dot(by) - rule.at) < 1e-9;
  });
}

TEST(WallFace, IsSeenFromInsideWithTheWallsEndOnTheLeft) {
  // Wall A runs along x at y = 0 with the room above it: who looks at it has x growing to his left.
  const Job job = garage(8, 6).job();
  const DrawnView view{ViewKind::Wall, idNamed(job, "Wall A")};
  EXPECT_TRUE(viewFromWorld(view, job, {8, 0, 0}).isApprox(Vec2(0, 0), 1e-12));
  EXPECT_TRUE(viewFromWorld(view, job, {7, 2, 1.5}).isApprox(Vec2(1, 1.5), 1e-12));
  EXPECT_TRUE(footOfFace(lineOf(job, "A"), 1).isApprox(Vec2(7, 0), 1e-12));
  EXPECT_TRUE(horizontalOf(view, job).isApprox(Vec2(-1, 0), 1e-12));
}

TEST(WallFace, GivesBackTheOpeningThatWasDrawn) {
  const Job job = garage(8, 6).job();
  Opening window;
  window.kind = OpeningKind::Window;
  const FaceBox drawn(Vec2(1.0, 0.9), Vec2(2.2, 2.1));
  const Opening placed = openingOnFace(lineOf(job, "C"), window, drawn, Instrument::Tape);
  EXPECT_NEAR(placed.offset.value, 8 - 2.2, 1e-12);
  EXPECT_NEAR(placed.width.value, 1.2, 1e-12);
  EXPECT_NEAR(placed.sill.value, 0.9, 1e-12);
  EXPECT_NEAR(placed.height.value, 1.2, 1e-12);
  EXPECT_EQ(placed.sill.how, Instrument::Tape);
  const auto added = addOpening(job, placed);
  ASSERT_TRUE(added) << added.error().sentence();
  const auto box = faceBoxOf(added->room, idNamed(job, "Wall C"), added->room.openings[0].id);
  ASSERT_TRUE(box);
  EXPECT_TRUE(box->isApprox(drawn, 1e-12));
  EXPECT_FALSE(faceBoxOf(added->room, idNamed(job, "Wall A"), added->room.openings[0].id));
}

TEST(WallFace, BringsDoorsDownToTheFloorAndCutsThemToTheWall) {
  const Job job = garage(8, 6).job();
  const Opening door =
      openingOnFace(lineOf(job, "B"), Opening{}, FaceBox(Vec2(-0.2, 0.1), Vec2(0.8, 2.0)), Instrument::Tape);
  EXPECT_EQ(door.sill.value, 0);
  EXPECT_NEAR(door.height.value, 2.0, 1e-12);
  EXPECT_NEAR(door.width.value, 0.8, 1e-12);
  EXPECT_NEAR(door.offset.value, 6 - 0.8, 1e-12);
}

TEST(WallFace, KeepsHowWellAnUntouchedSizeIsKnown) {
  const Job job = garage(8, 6).job();
  Opening usual;
  usual.width = guessed(0.9);
  const WallLine wall = lineOf(job, "A");
  const Opening placed = openingOnFace(wall, usual, usualBox(wall, usual, {3, 1}), Instrument::Laser);
  EXPECT_EQ(placed.width.how, Instrument::Guess);
  EXPECT_EQ(placed.offset.how, Instrument::Laser);
}

TEST(WallFace, PutsAFixtureWithItsBackToTheWall) {
  // A wall that runs neither along x nor along y.
  const Job job = JobBuilder({{0, 0}, {6, 1}, {5, 7}, {-1, 5}}).job();
  const WallLine wall = lineOf(job, "B");
  Fixture shelf;
  shelf.shape = BoxShape{Vec2::Zero(), 0, 1.0, 0.4};
  const FaceBox drawn(Vec2(0.5, 1.2), Vec2(1.7, 1.6));
  const Fixture placed = fixtureOnFace(wall, shelf, drawn, Instrument::Tape);
  const auto& box = std::get<BoxShape>(placed.shape);
  EXPECT_NEAR(box.width, 1.2, 1e-12);
  EXPECT_NEAR(box.depth, 0.4, 1e-12);
  EXPECT_NEAR((box.centre - wall.start).dot(wall.inward), 0.2, 1e-12);
  EXPECT_NEAR(placed.bottom.value, 1.2, 1e-12);
  EXPECT_NEAR(placed.top.value, 1.6, 1e-12);
  const auto added = addFixture(job, placed);
  ASSERT_TRUE(added);
  EXPECT_TRUE(faceBoxOf(added->room, wall.wall, added->room.fixtures[0].id)->isApprox(drawn, 1e-9));
}

TEST(WallFace, StandsACylinderAgainstTheWall) {
  const Job job = garage(8, 6).job();
  Fixture pipe;
  pipe.shape = CylinderShape{Vec2::Zero(), 0.3};
  const Fixture placed =
      fixtureOnFace(lineOf(job, "A"), pipe, FaceBox(Vec2(1, 0), Vec2(1.1, 2.4)), Instrument::Tape);
  const auto& cylinder = std::get<CylinderShape>(placed.shape);
  EXPECT_NEAR(cylinder.radius, 0.05, 1e-12);
  EXPECT_TRUE(cylinder.centre.isApprox(Vec2(8 - 1.05, 0.05), 1e-12));
}

TEST(WallFace, FindsTheLowestCeilingOverAPlace) {
  // 2.4 m at y = 0 and 3.0 m at y = 6: over wall B the ceiling falls to its start, on the right.
  const Job job = garage(8, 6).withSlopedCeiling(2.4, 3.0, 6).job();
  const auto over = ceilingOverFace(job.room, lineOf(job, "B"), 0, 3);
  ASSERT_TRUE(over);
  EXPECT_NEAR(*over, 2.7, 1e-3);
}

TEST(WallFace, FindsAStripThatHangsLowerBetweenTwoPlaces) {
  // A box round a pipe, from x = 3 to 3.2 m: nothing of it hangs over either end or the middle.
  const Job job =
      garage(8, 6).withCeiling(2.7).withCeilingPart({{3, 0}, {3.2, 0}, {3.2, 6}, {3, 6}}, 2.3).job();
  EXPECT_NEAR(ceilingOverFace(job.room, lineOf(job, "A"), 4, 7).value_or(0), 2.3, 1e-9);
  EXPECT_NEAR(ceilingOverFace(job.room, lineOf(job, "A"), 5.5, 7).value_or(0), 2.7, 1e-9);
  EXPECT_NEAR(ceilingOverFace(job.room, lineOf(job, "A"), 4.9, 4.9).value_or(0), 2.3, 1e-9);
}

TEST(WallFace, AttractsToEndsFloorCeilingAndWhatIsThere) {
  const Job job =
      garage(8, 6).withCeiling(2.5).withWindow("A", 2, 1, 0.9, 1.2).withShelf("A", 5, 1, 0.4, 1.8).job();
  const FaceBox box(Vec2(0.1, 0.2), Vec2(0.6, 1.0));
  const auto rules = faceRules(job, idNamed(job, "Wall A"), box, {}, 0.3);
  EXPECT_TRUE(attracts(rules, "at the left end", {-0.1, 0}));
  EXPECT_TRUE(attracts(rules, "at the right end", {7.4, 0}));
  EXPECT_TRUE(attracts(rules, "the middle of wall A", {4 - 0.35, 0}));
  EXPECT_TRUE(attracts(rules, "on the floor", {0, -0.2}));
  EXPECT_TRUE(attracts(rules, "under the ceiling", {0, 1.5}));
  EXPECT_TRUE(attracts(rules, "at the usual height", {0, 0.1}));
  // The window lies from 5 to 6 m, the shelf from 2 to 3 m as one sees them.
  EXPECT_TRUE(attracts(rules, "beside Window", {5 - 0.6, 0}));
  EXPECT_TRUE(attracts(rules, "level with Window", {0, 2.1 - 1.0}));
  EXPECT_TRUE(attracts(rules, "on top of Shelf", {0, 1.8 - 0.2}));
}

TEST(WallFace, MeasuresToBothEndsFloorAndCeiling) {
  const Job job = garage(8, 6).withCeiling(2.5).withWindow("A", 2, 1, 0.9, 1.2).job();
  const DrawnView view{ViewKind::Wall, idNamed(job, "Wall A")};
  const Id window = idNamed(job, "Window");
  const auto dimensions = liveDimensions(view, job, window);
  ASSERT_EQ(dimensions.size(), 4U);
  EXPECT_NEAR(dimensions[0].value, 5, 1e-12);
  EXPECT_NEAR(dimensions[1].value, 2, 1e-12);
  EXPECT_NEAR(dimensions[2].value, 0.9, 1e-12);
  EXPECT_NEAR(dimensions[3].value, 0.4, 1e-12);
  // Each can be typed.
  const double wanted[] = {4.5, 1.5, 0.8, 0.3};
  for (std::size_t i = 0; i < 4; ++i) {
    const auto moved = withDimension(view, job, window, dimensions[i], wanted[i]);
    ASSERT_TRUE(moved) << moved.error().sentence();
    EXPECT_NEAR(liveDimensions(view, *moved, window)[i].value, wanted[i], 1e-9) << i;
  }
}

TEST(WallFace, LeavesTheKitWhereItIs) {
  const Job job = garage(8, 6).withShelf("A", 1, 1, 0.4, 1.8).job();
  const DrawnView view{ViewKind::Wall, idNamed(job, "Wall A")};
  EXPECT_TRUE(canMoveIn(view, job, idNamed(job, "Shelf")));
  EXPECT_FALSE(canMoveIn(view, job, job.option().kit.frame.id));
  const auto moved = moveInView(view, job, idNamed(job, "Shelf"), {-0.5, 0.2});
  ASSERT_TRUE(moved);
  const Fixture& shelf = moved->room.fixtures[0];
  EXPECT_NEAR(std::get<BoxShape>(shelf.shape).centre.x(), 1.5 + 0.5, 1e-12);
  EXPECT_NEAR(shelf.bottom.value, 0.2, 1e-12);
}

TEST(WallFace, TakesTypedFiguresBeforeDrawnOnes) {
  TypedFace typed;
  typed.width = 0.9;
  typed.low = 1.0;
  const FaceBox box = boxOnFace({3, 2}, {1, 1.5}, typed);
  EXPECT_NEAR(box.sizes().x(), 0.9, 1e-12);
  EXPECT_NEAR(box.max().x(), 3, 1e-12);  // it was drawn to the left
  EXPECT_NEAR(box.min().y(), 1.0, 1e-12);
  EXPECT_NEAR(box.sizes().y(), 0.5, 1e-12);
}

}  // namespace
}  // namespace baywright
