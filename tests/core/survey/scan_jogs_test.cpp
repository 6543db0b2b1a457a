// SPDX-License-Identifier: Apache-2.0
// Rooms whose walls jog, whose walls stand beside doors, and that hold cupboards nearly as high as they are.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "job/room_geometry.h"
#include "scan_synthetic.h"
#include "survey/scan_room.h"

namespace baywright {
namespace {

using namespace testing;

RecognisedRoom recognised(const FakeScan& fake) {
  auto room = recogniseRoom(scanned(fake), {});
  EXPECT_TRUE(room) << room.error().sentence();
  return room ? *room : RecognisedRoom();
}

/// For rooms whose first side is the longest and runs along x from the origin: the world frame is theirs.
void expectCorners(const RecognisedRoom& made, const Ring& truth, double tolerance) {
  ASSERT_EQ(made.room.walls.size(), truth.size());
  for (std::size_t i = 0; i < truth.size(); ++i)
    EXPECT_LT((made.room.walls[i].start - truth[i]).norm(), tolerance) << "corner " << i;
}

bool says(const RecognisedRoom& made, const std::string& words) {
  return std::any_of(made.notes.begin(), made.notes.end(),
                     [&](const std::string& note) { return note.find(words) != std::string::npos; });
}

/// The long wall along x opposite, from right to left, broken by a step of such a depth into the room.
Ring withBreast(double depth) {
  return {{0, 0}, {6.2, 0}, {6.2, 4}, {3.6, 4}, {3.6, 4 - depth}, {2.2, 4 - depth}, {2.2, 4}, {0, 4}};
}

class ScanJogNoise : public ::testing::TestWithParam<double> {};

TEST_P(ScanJogNoise, FindsAChimneyBreastAndANicheWithTheirSides) {
  for (const double depth : {0.25, 0.35, -0.3}) {
    FakeScan fake;
    fake.outline = withBreast(depth);
    fake.noise = GetParam();
    expectCorners(recognised(fake), fake.outline, 0.02);
  }
}

INSTANTIATE_TEST_SUITE_P(Millimetres, ScanJogNoise, ::testing::Values(0.005, 0.010, 0.020));

TEST(ScanJogs, PutsTheSidesThatNobodyFacedWhereTheFaceEndsAndSaysSo) {
  FakeScan fake;
  fake.outline = withBreast(0.3);
  fake.noise = 0.006;
  fake.yaw = 0.4;
  fake.holes = {{3, 0, 0.3, 0, 3}, {5, 0, 0.3, 0, 3}};
  const auto made = recognised(fake);
  expectCorners(made, fake.outline, 0.03);
  EXPECT_TRUE(says(made, "% of wall D was seen"));
  EXPECT_TRUE(says(made, "% of wall F was seen"));
}

TEST(ScanJogs, SaysThatABlockMayBeACupboardAsHighAsTheRoom) {
  FakeScan fake;
  fake.outline = {{0, 0}, {6.2, 0}, {6.2, 4}, {1.2, 4}, {1.2, 3.4}, {0, 3.4}};
  const auto made = recognised(fake);
  expectCorners(made, fake.outline, 0.02);
  EXPECT_TRUE(says(made, "Walls D to E bound a block that stands out by 0.60 m"));
}

TEST(ScanJogs, KeepsTheRoomWholeRoundACupboardUnderItsCeiling) {
  for (const double rise : {0.0, 0.12}) {
    FakeScan fake = rectangleRoom(6.2, 4);
    fake.ceiling = [&](const Vec2& p) { return 2.45 + rise * p.x(); };
    fake.things = {{Vec3(0.02, 2.2, 0), Vec3(0.62, 3.98, 2.15)}};
    fake.noise = 0.010;
    expectCorners(recognised(fake), fake.outline, 0.02);
  }
}

TEST(ScanJogs, LetNoDoorThatLiesBackTurnTheWallBesideIt) {
  for (const double reveal : {0.09, 0.2}) {
    FakeScan fake = lShapedRoom();
    fake.noise = 0.020;
    fake.yaw = 0.4;
    fake.holes = {{2, 0.15, 1.05, 0, 2.0, reveal, true}};
    const auto made = recognised(fake);
    expectCorners(made, fake.outline, 0.02);
    const auto lines = wallLines(made.room);
    EXPECT_LT(std::abs(std::asin(lines[2].along.y())), 0.3 * kPi / 180) << reveal;
  }
}

TEST(ScanJogs, LetNoLeavesThatLieBackMakeTheWallsLean) {
  FakeScan fake = rectangleRoom(6.2, 4);
  fake.noise = 0.005;
  fake.yaw = 0.4;
  for (const std::size_t wall : {0u, 1u, 3u}) fake.holes.push_back({wall, 0.6, 2.4, 0, 2.0, 0.06, true});
  const auto made = recognised(fake);
  expectCorners(made, fake.outline, 0.02);
  EXPECT_FALSE(says(made, "The floor falls"));
}

TEST(ScanJogs, TakesADoorUnderALowEaveForTheEndOfTheRoom) {
  FakeScan fake = rectangleRoom(6.2, 4);
  fake.ceiling = [](const Vec2& p) { return 2.3 + 0.35 * p.y(); };
  fake.holes = {{0, 2, 2.9, 0, 2.0, 0.25}};
  expectCorners(recognised(fake), fake.outline, 0.02);
}

TEST(ScanJogs, FindsADoorThatIsHigherThanTheEavesBesideIt) {
  FakeScan fake = rectangleRoom(6.2, 4);
  fake.outline[1].x() = 6.25;  // so that the first side is the longest
  fake.noise = 0.008;
  fake.ceiling = [](const Vec2& p) { return 1.8 + 0.7 * std::min(p.y(), 4 - p.y()); };
  fake.holes = {{1, 1.55, 2.45, 0, 2.0, 0.15}};
  const auto made = recognised(fake);
  ASSERT_EQ(made.room.openings.size(), 1u);
  EXPECT_EQ(made.room.openings[0].kind, OpeningKind::HingedDoor);
  EXPECT_EQ(made.room.openings[0].wall, made.room.walls[1].id);
  EXPECT_NEAR(made.room.openings[0].offset.value, 1.55, 0.02);
  EXPECT_NEAR(made.room.openings[0].height.value, 2.0, 0.02);
}

TEST(ScanJogs, StopsWheneverAsked) {
  FakeScan fake = lShapedRoom();
  fake.ceiling = [](const Vec2& p) { return p.x() < 2 ? 2.2 : 2.6; };
  fake.spacing = 0.06;
  const ScanGeometry scan = scanned(fake);
  int asked = 0;
  Progress progress;
  progress.cancelled = [&] {
    ++asked;
    return false;
  };
  ASSERT_TRUE(recogniseRoom(scan, progress));
  const int all = asked;
  // Every stage asks.
  EXPECT_GE(all, 30);
  for (int last = 0; last < all; ++last) {
    asked = 0;
    progress.cancelled = [&] { return asked++ == last; };
    const auto made = recogniseRoom(scan, progress);
    ASSERT_FALSE(made) << last;
    EXPECT_EQ(made.error().what, "The import was cancelled.") << last;
  }
}

TEST(ScanJogs, AsksAgainAfterSoManySamplesWhetherToStop) {
  FakeScan fake = rectangleRoom(6.2, 4);
  const auto asksAt = [&](double spacing) {
    fake.spacing = spacing;
    const ScanGeometry scan = scanned(fake);
    int asked = 0;
    Progress progress;
    progress.cancelled = [&] {
      ++asked;
      return false;
    };
    EXPECT_TRUE(recogniseRoom(scan, progress));
    return std::pair(asked, scan.points.size());
  };
  const auto [few, fewSamples] = asksAt(0.05);
  const auto [many, manySamples] = asksAt(0.012);
  // At least ten passes over all samples look every 65,536 of them.
  const auto more = static_cast<int>(10 * (manySamples / 65'536 - fewSamples / 65'536));
  EXPECT_GE(many - few, more);
}

}  // namespace
}  // namespace baywright
