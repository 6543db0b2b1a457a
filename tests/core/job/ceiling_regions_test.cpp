// SPDX-License-Identifier: Apache-2.0
#include "job/ceiling_regions.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/job_builder.h"
#include "support/random_jobs.h"

namespace baywright {
namespace {

using namespace testing;

double areaOf(const std::vector<Ring>& rings) {
  double area = 0;
  for (const Ring& ring : rings) area += signedArea(ring);
  return area;
}

/// Level at 2.7, and over the same floor a plane that falls from 3.2 at y = 0 to 2.2 at y = 4.
Room creasedRoom() {
  return garage(6, 4).withCeiling(2.7).withCeilingPart({}, 3.2, {0, -0.25}).job().room;
}

TEST(CeilingRegions, PartAtTheCreaseOfTwoPlanes) {
  const Room room = creasedRoom();
  const auto level = seenRegions(room, room.ceiling[0]);
  const auto sloped = seenRegions(room, room.ceiling[1]);
  ASSERT_EQ(level.size(), 1u);
  ASSERT_EQ(sloped.size(), 1u);
  EXPECT_NEAR(areaOf(level), 12, 1e-5);  // the planes meet at y = 2
  EXPECT_NEAR(areaOf(sloped), 12, 1e-5);
  EXPECT_NEAR(seenSpan(room, room.ceiling[1]).low, 2.2, 1e-5);
  EXPECT_NEAR(seenSpan(room, room.ceiling[1]).high, 2.7, 1e-5);
}

TEST(CeilingRegions, ShowNothingOfAPlaneThatLiesAboveAnotherEverywhere) {
  const Room room = garage(6, 4).withCeiling(2.4).withCeilingPart({}, 2.4).withCeilingPart({}, 3).job().room;
  EXPECT_NEAR(areaOf(seenRegions(room, room.ceiling[0])), 24, 1e-5);
  EXPECT_TRUE(seenRegions(room, room.ceiling[1]).empty()) << "of equals the earlier one counts";
  EXPECT_TRUE(seenRegions(room, room.ceiling[2]).empty());
  EXPECT_NEAR(seenSpan(room, room.ceiling[2]).high, 3, 1e-12);
}

TEST(CeilingRegions, LeavePartsWithRegionsAndLonePartsAsTheyAre) {
  const Room room =
      garage(6, 4).withCeiling(2.7).withCeilingPart({{0, 0}, {2, 0}, {2, 4}, {0, 4}}, 2.3).job().room;
  EXPECT_EQ(seenRegions(room, room.ceiling[0]), std::vector<Ring>{outline(room)});
  EXPECT_EQ(seenRegions(room, room.ceiling[1]), std::vector<Ring>{room.ceiling[1].region});
}

TEST(CeilingRegions, HideNothingBehindAHeightThatIsNotMeasured) {
  Room room = creasedRoom();
  room.ceiling[1].height.known = false;
  for (const CeilingPart& part : room.ceiling) EXPECT_NEAR(areaOf(seenRegions(room, part)), 24, 1e-9);
}

// The slow way: what ceilingAt() finds at points all over the floor.
TEST(CeilingRegions, AgreeWithTheCeilingAtEachPoint) {
  const Room room = creasedRoom();
  Dice dice(7);
  for (int i = 0; i < 500; ++i) {
    const Vec2 p = Vec2(3, 2) + dice.point(2);
    const auto there = ceilingAt(room, p);
    if (!there || std::abs(p.y() - 2) < 1e-3) continue;
    for (const CeilingPart& part : room.ceiling) {
      const auto regions = seenRegions(room, part);
      const bool isSeen = std::any_of(regions.begin(), regions.end(),
                                      [&](const Ring& ring) { return locate(ring, p) != Location::Outside; });
      EXPECT_EQ(isSeen, there->part == part.id) << p.transpose();
    }
  }
}

}  // namespace
}  // namespace baywright
