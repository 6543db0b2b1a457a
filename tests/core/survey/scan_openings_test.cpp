// SPDX-License-Identifier: Apache-2.0
#include "survey/scan_openings.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "job/room_geometry.h"
#include "scan_synthetic.h"
#include "survey/scan_room.h"
#include "survey/take_room.h"

namespace baywright {
namespace {

using namespace testing;

RecognisedRoom recognised(const FakeScan& fake) {
  auto room = recogniseRoom(scanned(fake), {});
  EXPECT_TRUE(room) << room.error().sentence();
  return room ? *room : RecognisedRoom();
}

/// 6 by 4.5 m: its walls stand in the found room as they do in the outline, for wall A is the longest.
FakeScan plainRoom() {
  FakeScan fake = rectangleRoom(6, 4.5);
  fake.outline[1].x() = 6.05;  // so that the first side is the longest
  fake.noise = 0.008;
  return fake;
}

bool saysOf(const std::vector<std::string>& notes, const std::string& wall, const std::string& words) {
  return std::any_of(notes.begin(), notes.end(), [&](const std::string& note) {
    return note.find("wall " + wall) != std::string::npos && note.find(words) != std::string::npos;
  });
}

class ScanOpeningNoise : public ::testing::TestWithParam<double> {};

TEST_P(ScanOpeningNoise, FindsADoorAndAWindowWithTheirSizes) {
  FakeScan fake = plainRoom();
  fake.noise = GetParam();
  fake.yaw = 0.6;
  fake.holes = {{0, 2.10, 2.96, 0, 2.03, 0.15}, {1, 1.20, 2.70, 0.92, 2.07, 0.20}};
  const auto made = recognised(fake);
  ASSERT_EQ(made.room.openings.size(), 2u);
  for (std::size_t i = 0; i < 2; ++i) {
    const Opening& opening = made.room.openings[i];
    const WallHole& hole = fake.holes[i];
    EXPECT_EQ(opening.wall, made.room.walls[hole.wall].id);
    const double tolerance = GetParam() > 0.015 ? 0.06 : 0.02;
    EXPECT_NEAR(opening.offset.value, hole.from, tolerance);
    EXPECT_NEAR(opening.width.value, hole.to - hole.from, tolerance);
    EXPECT_NEAR(opening.sill.value, hole.bottom, tolerance);
    EXPECT_NEAR(opening.height.value, hole.top - hole.bottom, tolerance);
    EXPECT_EQ(opening.width.how, GetParam() > 0.015 ? Instrument::Guess : Instrument::Scan);
    EXPECT_TRUE(opening.height.known);
  }
  EXPECT_EQ(made.room.openings[0].kind, OpeningKind::HingedDoor);
  EXPECT_EQ(made.room.openings[0].sill.value, 0);
  EXPECT_EQ(made.room.openings[1].kind, OpeningKind::Window);
  const auto job = takeRoom(starterJob(), made);
  ASSERT_TRUE(job) << job.error().sentence();
  ASSERT_EQ(job->room.openings.size(), 2u);
  EXPECT_EQ(job->room.openings[1].wall, job->room.walls[1].id);
}

INSTANTIATE_TEST_SUITE_P(Millimetres, ScanOpeningNoise, ::testing::Values(0.005, 0.010, 0.020));

TEST(ScanOpenings, TakesALeafThatLiesBackForAGaragesDoor) {
  FakeScan fake = plainRoom();
  fake.holes = {{1, 0.4, 4.0, 0, 2.12, 0.14, true}};
  const auto made = recognised(fake);
  ASSERT_EQ(made.room.openings.size(), 1u);
  EXPECT_EQ(made.room.openings[0].kind, OpeningKind::SectionalDoor);
  EXPECT_NEAR(made.room.openings[0].width.value, 3.6, 0.02);
  EXPECT_NEAR(made.room.openings[0].height.value, 2.12, 0.02);
}

TEST(ScanOpenings, MeasuresADoorToTheInsideOfAFrameThatStandsOutALittle) {
  FakeScan fake = plainRoom();
  fake.noise = 0.004;
  fake.spacing = 0.01;
  fake.holes = {{0, 2.10, 2.96, 0, 2.03, 0.06, true}};
  ScanGeometry scan = scanned(fake);
  for (Eigen::Vector3f& p : scan.points) {
    // Seven centimetres of frame all round, 15 mm before the face.
    const bool isFramed = p.x() > 2.03F && p.x() < 3.03F && p.z() < 2.10F;
    const bool isInHole = p.x() > 2.10F && p.x() < 2.96F && p.z() < 2.03F;
    if (std::abs(p.y()) < 0.02F && isFramed && !isInHole) p.y() += 0.015F;
  }
  const auto made = recogniseRoom(scan, {});
  ASSERT_TRUE(made) << made.error().sentence();
  ASSERT_EQ(made->room.openings.size(), 1u);
  const Opening& door = made->room.openings[0];
  EXPECT_NEAR(door.offset.value, 2.10, 0.02);
  EXPECT_NEAR(door.width.value, 0.86, 0.02);
  EXPECT_NEAR(door.height.value, 2.03, 0.02);
}

TEST(ScanOpenings, CountsWhatCurtainsHideAsNoPartOfAWindow) {
  FakeScan fake = plainRoom();
  fake.holes = {{1, 1.20, 2.70, 0.92, 2.07, 0.20}};
  for (const double from : {0.95, 2.55}) {
    ScannedBox curtain;
    curtain.low = {5.85, from, 0.10};
    curtain.high = {5.97, from + 0.40, 2.25};
    fake.things.push_back(curtain);
  }
  const auto made = recognised(fake);
  ASSERT_EQ(made.room.openings.size(), 1u);
  const Opening& window = made.room.openings[0];
  EXPECT_EQ(window.kind, OpeningKind::Window);
  EXPECT_NEAR(window.offset.value, 1.35, 0.06);
  EXPECT_NEAR(window.width.value, 1.20, 0.11);  // whole squares
  EXPECT_EQ(window.width.how, Instrument::Guess);
}

TEST(ScanOpenings, KeepsTheWallsFaceWhereADoorLiesBackInNearlyAllOfIt) {
  for (const double reveal : {0.13, 0.27}) {
    FakeScan fake = plainRoom();
    fake.ceiling = [](const Vec2&) { return 2.4; };
    fake.holes = {{1, 0.35, 4.1, 0, 2.12, reveal, true}};
    const auto made = recognised(fake);
    ASSERT_EQ(made.room.walls.size(), 4u) << reveal;
    EXPECT_NEAR(wallLines(made.room)[0].length, 6.05, 0.01) << reveal;
    ASSERT_EQ(made.room.openings.size(), 1u) << reveal;
    EXPECT_EQ(made.room.openings[0].kind, OpeningKind::SectionalDoor);
    EXPECT_NEAR(made.room.openings[0].width.value, 3.75, 0.03) << reveal;
  }
}

TEST(ScanOpenings, TakesAGapUpToTheCeilingForAPassageToMoreOfTheRoom) {
  FakeScan fake = plainRoom();
  fake.holes = {{0, 2.0, 3.1, 0, 2.7, 0.4}};
  const auto made = recognised(fake);
  EXPECT_TRUE(saysOf(made.notes, "A", "the room may go on") || saysOf(made.notes, "A", "The room may go on"));
  for (const Opening& opening : made.room.openings) EXPECT_EQ(opening.kind, OpeningKind::Passage);
}

TEST(ScanOpenings, MakesNoOpeningOfAPlaceThatAThingHides) {
  FakeScan fake = plainRoom();
  fake.things = {{Vec3(2, 0.5, 0), Vec3(3.2, 1.0, 2.1)}};
  fake.holes = {{0, 2.0, 3.2, 0, 2.1}};
  const auto made = recognised(fake);
  EXPECT_TRUE(made.room.openings.empty());
  EXPECT_TRUE(saysOf(made.notes, "A", "hidden behind things"));
}

TEST(ScanOpenings, SaysWhereNothingWasSeenThroughAHole) {
  FakeScan fake = plainRoom();
  fake.holes = {{0, 2.0, 2.9, 0, 2.03}};
  const auto alone = recognised(fake);
  ASSERT_EQ(alone.room.openings.size(), 1u);
  EXPECT_TRUE(saysOf(alone.notes, "A", "nothing was seen through it"));
  // What stands two metres before it may have hidden just such a rectangle.
  fake.things = {{Vec3(2.1, 2.2, 0), Vec3(2.8, 2.6, 1.9)}};
  const auto hidden = recognised(fake);
  EXPECT_TRUE(hidden.room.openings.empty());
  EXPECT_TRUE(saysOf(hidden.notes, "A", "taken for wall: look whether"));
}

TEST(ScanOpenings, MakesNoWindowOfARoundPatchThatWasNotSeen) {
  FakeScan fake = plainRoom();
  ScanGeometry scan = scanned(fake);
  std::erase_if(scan.points,
                [](const Eigen::Vector3f& p) { return (p - Eigen::Vector3f(3, 0, 1.2f)).norm() < 0.7f; });
  const auto made = recogniseRoom(scan, {});
  ASSERT_TRUE(made);
  EXPECT_TRUE(made->room.openings.empty());
  EXPECT_TRUE(saysOf(made->notes, "A", "was not seen and taken for wall"));
}

TEST(ScanOpenings, FindsNoneInWholeWalls) {
  for (const double noise : {0.005, 0.020}) {
    FakeScan fake = lShapedRoom();
    fake.noise = noise;
    fake.things = {{Vec3(0.02, 0.5, 0), Vec3(0.42, 2.3, 1.9)}, {Vec3(2, 2, 0), Vec3(3.2, 2.7, 0.75)}};
    EXPECT_TRUE(recognised(fake).room.openings.empty());
  }
}

}  // namespace
}  // namespace baywright
