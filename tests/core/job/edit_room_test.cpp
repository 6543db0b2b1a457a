// SPDX-License-Identifier: Apache-2.0
#include "job/edit_room.h"

#include <gtest/gtest.h>

#include "job/find.h"
#include "job/room_geometry.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using testing::garage;
using testing::idNamed;
using testing::lShapedRoom;

constexpr double kExact = 1e-12;

TEST(SetRoomOutline, NamesTheWallsAndTurnsThemCounterClockwise) {
  const auto job = setRoomOutline(newJob(), {{0, 0}, {0, 4}, {6, 4}, {6, 0}}, Instrument::Drawing);
  ASSERT_TRUE(job) << job.error().sentence();
  EXPECT_GT(signedArea(outline(job->room)), 0);
  std::string names;
  for (const Wall& wall : job->room.walls) names += wall.name;
  EXPECT_EQ(names, "ABCD");
}

TEST(SetRoomOutline, BringsACeilingThatIsStillToBeMeasured) {
  const auto job = setRoomOutline(newJob(), {{0, 0}, {6, 0}, {6, 4}}, Instrument::Drawing);
  ASSERT_EQ(job->room.ceiling.size(), 1u);
  EXPECT_FALSE(job->room.ceiling.front().height.known);
}

TEST(SetRoomOutline, MakesLengthsAsSureAsTheInstrument) {
  const auto job = setRoomOutline(newJob(), {{0, 0}, {6, 0}, {6, 6}, {0, 6}}, Instrument::Drawing);
  const WallLine a = wallLines(job->room).front();
  const double sigma = std::hypot(a.startCovariance.sigmaAlong(a.along), a.endCovariance.sigmaAlong(a.along));
  EXPECT_NEAR(sigma, instrumentSigma(Instrument::Drawing, 6), kExact);
}

TEST(SetRoomOutline, KeepsWallsAndTheirOpeningsWhereCornersStay) {
  const Job before = garage(6, 4).withDoor("B", 1).job();
  // One corner more, in wall C.
  const auto after = setRoomOutline(before, {{0, 0}, {6, 0}, {6, 4}, {3, 5}, {0, 4}}, Instrument::Tape);
  ASSERT_TRUE(after) << after.error().sentence();
  for (const char* wall : {"Wall A", "Wall B", "Wall C", "Wall D"})
    EXPECT_EQ(idNamed(*after, wall), idNamed(before, wall));
  EXPECT_EQ(after->room.walls[3].name, "E");
  EXPECT_EQ(after->room.openings.size(), 1u);
}

TEST(SetRoomOutline, KeepsTheOrderOfWallsWhenOnlyCornersMoved) {
  const Job before = garage(6, 4).job();
  const auto after = setRoomOutline(before, {{1, 1}, {7, 1}, {7, 6}, {1, 6}}, Instrument::Tape);
  EXPECT_EQ(idNamed(*after, "Wall C"), idNamed(before, "Wall C"));
  EXPECT_EQ(findById(after->room.walls, idNamed(*after, "Wall C"))->start, Vec2(7, 6));
}

TEST(SetRoomOutline, DropsWhatHungOnWallsThatAreGone) {
  Job before = garage(6, 4).withDoor("D", 1).uncheckedJob();
  Measurement m;
  m.id = before.takeId();
  m.from = idNamed(before, "Wall D");
  before.measurements.push_back(m);
  const auto after = setRoomOutline(before, {{0, 0}, {6, 0}, {6, 4}}, Instrument::Tape);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_TRUE(after->room.openings.empty());
  EXPECT_TRUE(after->measurements.empty());
}

TEST(SetRoomOutline, RefusesACrossingAndNamesItsWalls) {
  const auto job = setRoomOutline(newJob(), {{0, 0}, {6, 4}, {6, 0}, {0, 3}}, Instrument::Tape);
  ASSERT_FALSE(job);
  EXPECT_NE(job.error().what.find("meets wall"), std::string::npos) << job.error().what;
}

TEST(SetRoomOutline, RefusesWhatIsNoNumber) {
  EXPECT_FALSE(setRoomOutline(newJob(), {{0, 0}, {6, std::nan("")}, {6, 4}}, Instrument::Tape));
}

TEST(SetRoomOutline, WithoutCornersGoesBackToTheStart) {
  const auto job = setRoomOutline(garage(6, 4).withDoor("A", 1).job(), {}, Instrument::Tape);
  ASSERT_TRUE(job) << job.error().sentence();
  EXPECT_TRUE(job->room.walls.empty());
  EXPECT_TRUE(job->room.openings.empty());
}

TEST(MoveWallCorner, LeavesTheJobItCameFromAlone) {
  const Job before = garage(6, 4).job();
  const Job copy = before;
  const auto after = moveWallCorner(before, idNamed(before, "Wall C"), {6.5, 4.5});
  EXPECT_EQ(before, copy);
  EXPECT_EQ(after->room.walls[2].start, Vec2(6.5, 4.5));
}

TEST(MoveWallCorner, SlidesADoorBackIntoAWallThatBecameShorter) {
  const Job before = garage(6, 4).withDoor("A", 5, 0.9).job();
  const auto after = moveWallCorner(before, idNamed(before, "Wall B"), {5.5, 0});
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_NEAR(after->room.openings[0].offset.value, 4.6, kExact);
}

TEST(MoveWallCorner, RefusesAWallShorterThanItsDoor) {
  const Job before = garage(6, 4).withDoor("A", 5, 0.9).job();
  const auto after = moveWallCorner(before, idNamed(before, "Wall B"), {0.5, 0});
  ASSERT_FALSE(after);
  EXPECT_NE(after.error().sentence().find("Door"), std::string::npos);
}

TEST(MoveWall, SlidesCornersAlongTheNeighbours) {
  const Job before = testing::roomOver({{0, 0}, {6, 0}, {7, 4}, {0, 4}}).job();
  const auto after = moveWall(before, idNamed(before, "Wall C"), 1);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_NEAR((after->room.walls[2].start - Vec2(6.75, 3)).norm(), 0, kExact) << "on the slanted wall B";
  EXPECT_NEAR((after->room.walls[3].start - Vec2(0, 3)).norm(), 0, kExact);
}

TEST(MoveWall, GoesStraightWhereTheNeighbourRunsOn) {
  const Job before = testing::roomOver({{0, 0}, {3, 0}, {6, 0}, {6, 4}, {0, 4}}).job();
  const auto after = moveWall(before, idNamed(before, "Wall A"), -1);
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_EQ(after->room.walls[1].start, Vec2(3, -1));
}

TEST(MoveWall, ThereAndBackIsWhereItWas) {
  const Job before = lShapedRoom(6, 5, 2, 1.5).job();
  for (const Wall& wall : before.room.walls) {
    const auto there = moveWall(before, wall.id, 0.3);
    ASSERT_TRUE(there) << there.error().sentence();
    const auto back = moveWall(*there, wall.id, -0.3);
    for (std::size_t i = 0; i < before.room.walls.size(); ++i)
      EXPECT_NEAR((back->room.walls[i].start - before.room.walls[i].start).norm(), 0, kExact);
  }
}

TEST(SetWallLength, KeepsRightAnglesOfAnL) {
  const Job before = lShapedRoom(6, 5, 2, 1.5).job();
  const auto after = setWallLength(before, idNamed(before, "Wall A"), taped(6.4));
  ASSERT_TRUE(after) << after.error().sentence();
  EXPECT_NEAR(wallLines(after->room)[0].length, 6.4, kExact);
  for (const WallLine& line : wallLines(after->room))
    EXPECT_NEAR(line.along.x() * line.along.y(), 0, kExact) << "wall " << line.name << " is askew";
}

TEST(SetWallLength, BecomesAsSureAsTheInstrument) {
  const Job before = *setRoomOutline(newJob(), {{0, 0}, {6, 0}, {6, 4}, {0, 4}}, Instrument::Guess);
  const auto after = setWallLength(before, idNamed(before, "Wall A"), shot(6.02));
  const WallLine a = wallLines(after->room)[0];
  EXPECT_NEAR(std::hypot(a.startCovariance.sigmaAlong(a.along), a.endCovariance.sigmaAlong(a.along)),
              instrumentSigma(Instrument::Laser, 6.02), kExact);
  EXPECT_GT(a.sigmaAt(3), 0.02) << "across the wall nothing was learned";
}

TEST(SetWallLength, RefusesNoLength) {
  const Job before = garage(6, 4).job();
  EXPECT_FALSE(setWallLength(before, idNamed(before, "Wall A"), taped(0)));
}

TEST(InsertWallCorner, SplitsAWallAndItsOpenings) {
  const Job before = garage(6, 4).withDoor("A", 0.5).withPassage("A", 4, 1).job();
  const auto after = insertWallCorner(before, idNamed(before, "Wall A"), {3, 0.2});
  ASSERT_TRUE(after) << after.error().sentence();
  ASSERT_EQ(after->room.walls.size(), 5u);
  EXPECT_EQ(after->room.walls[1].name, "E");
  EXPECT_EQ(after->room.walls[1].start, Vec2(3, 0));
  EXPECT_EQ(after->room.openings[0].wall, idNamed(before, "Wall A"));
  EXPECT_EQ(after->room.openings[1].wall, after->room.walls[1].id);
  EXPECT_NEAR(after->room.openings[1].offset.value, 1, kExact);
}

TEST(InsertWallCorner, RefusesToSplitADoor) {
  const Job before = garage(6, 4).withDoor("A", 2.5).job();
  const auto after = insertWallCorner(before, idNamed(before, "Wall A"), {3, 0});
  ASSERT_FALSE(after);
  EXPECT_NE(after.error().what.find("Door"), std::string::npos);
}

TEST(RemoveWallCorner, UndoesAnInsertedOne) {
  const Job before = garage(6, 4).job();
  const auto split = insertWallCorner(before, idNamed(before, "Wall A"), {3, 0});
  const auto after = removeWallCorner(*split, split->room.walls[1].id);
  EXPECT_EQ(after->room, before.room);
}

TEST(RemoveWallCorner, KeepsThreeCorners) {
  const Job triangle = testing::roomOver({{0, 0}, {3, 0}, {0, 4}}).job();
  EXPECT_FALSE(removeWallCorner(triangle, triangle.room.walls[0].id));
}

TEST(CeilingParts, AreAddedWithAnIdAndSetById) {
  CeilingPart part;
  part.region = {{0, 0}, {2, 0}, {2, 4}, {0, 4}};
  part.height = taped(2.2);
  auto job = addCeilingPart(garage(6, 4).job(), part);
  ASSERT_TRUE(job) << job.error().sentence();
  part = job->room.ceiling.back();
  EXPECT_EQ(part.id, Id{job->lastId});
  part.height = taped(2.3);
  EXPECT_EQ(setCeilingPart(*job, part)->room.ceiling.back().height.value, 2.3);
  part.id = Id{9999};
  EXPECT_FALSE(setCeilingPart(*job, part));
}

TEST(RoomVerbs, RefuseWallsThatAreNotThere) {
  const Job job = garage(6, 4).job();
  const Id none{9999};
  EXPECT_FALSE(moveWallCorner(job, none, {0, 0}));
  EXPECT_FALSE(moveWall(job, none, 1));
  EXPECT_FALSE(setWallLength(job, none, taped(1)));
  EXPECT_FALSE(insertWallCorner(job, none, {0, 0}));
  EXPECT_FALSE(removeWallCorner(job, none));
  EXPECT_FALSE(setWall(job, Wall{}));
}

}  // namespace
}  // namespace baywright
