// SPDX-License-Identifier: Apache-2.0
#include "clearance/free_ways.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "geometry/polygon_sets.h"

namespace baywright {
namespace {

Ring rectangle(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

/// A room of 6 m by 4 m with a door in its far wall.
WalkInput room() {
  return {rectangle(0, 0, 6, 4), {}, {{1, 2}}, {{{{6, 1.5}, {6, 2.5}}, {-1, 0}}}};
}

TEST(FreeWays, SqueezeBetweenAShelfAndTheWall) {
  WalkInput input = room();
  input.obstacles = {rectangle(3, 0, 3.5, 3.2)};
  const WidestWay way = widestWays(input)[0];
  EXPECT_NEAR(way.clearWidth, 0.8, 1e-9);
  EXPECT_NEAR(std::abs(way.narrowA.y() - way.narrowB.y()), 0.8, 1e-9);
  EXPECT_EQ(way.path.front(), input.from[0]);
  EXPECT_EQ(way.path.back(), Vec2(6, 2));
}

TEST(FreeWays, TakeTheWiderOfTwo) {
  WalkInput input = room();
  input.obstacles = {rectangle(3, 0.7, 3.5, 2.9)};
  EXPECT_NEAR(widestWays(input)[0].clearWidth, 1.1, 1e-9);
}

TEST(FreeWays, MeasureAcrossCorners) {
  WalkInput input = room();
  input.obstacles = {rectangle(2.5, 0, 3, 2.0), rectangle(3.6, 2.8, 4.0, 4)};
  EXPECT_NEAR(widestWays(input)[0].clearWidth, std::hypot(0.6, 0.8), 1e-9);
}

TEST(FreeWays, AreNoneWhereSomethingReachesFromWallToWall) {
  WalkInput input = room();
  input.obstacles = {rectangle(3, -0.2, 3.5, 4.2)};
  const WidestWay way = widestWays(input)[0];
  EXPECT_EQ(way.clearWidth, 0);
  EXPECT_TRUE(way.path.empty());
}

TEST(FreeWays, SeeAThingThatStandsInHalfTheDoor) {
  WalkInput input = room();
  input.obstacles = {rectangle(5.0, 1.9, 6.0, 4.0)};
  const WidestWay way = widestWays(input)[0];
  EXPECT_NEAR(way.clearWidth, 0.4, 1e-9);  // from the jamb at 1.5 to the thing at 1.9
}

TEST(FreeWays, LeaveTheExitsOwnWidthAside) {
  EXPECT_GT(widestWays(room())[0].clearWidth, 1.5);  // the door is 1 m wide
}

TEST(FreeWays, DoNotLeadOutOneDoorAndInAnother) {
  WalkInput input = room();
  input.obstacles = {rectangle(3, -0.2, 3.5, 4.2)};
  input.exits.push_back({{{1, 0}, {2, 0}}, {0, 1}});
  input.exits.push_back({{{4, 0}, {5, 0}}, {0, 1}});
  const std::vector<WidestWay> ways = widestWays(input);
  EXPECT_TRUE(ways[0].path.empty());
  EXPECT_FALSE(ways[1].path.empty());
  EXPECT_TRUE(ways[2].path.empty());
}

TEST(FreeWays, StartNowhereOutsideTheRoom) {
  WalkInput input = room();
  input.from = {{-1, 2}};
  EXPECT_TRUE(widestWays(input)[0].path.empty());
}

TEST(FreeWays, AreAsNarrowAsForWhoeverIsWorstOff) {
  WalkInput input = room();
  input.obstacles = {rectangle(2, 0, 2.5, 3.3)};
  input.from = {{5, 2}};
  EXPECT_GT(widestWays(input)[0].clearWidth, 0.99);
  input.from.push_back({1, 2});
  EXPECT_NEAR(widestWays(input)[0].clearWidth, 0.7, 1e-9);
}

TEST(FreeWays, CountNoNarrownessThatIsLeftBehind) {
  // Somebody stands 0.05 m inside a gap of 0.5 m and walks out of it. Discs that hold the place reach to
  // where the corners are as far away: their middle at x with (x - 1.1)^2 + 0.25^2 = (x - 1.05)^2, x = 1.7.
  WalkInput input = room();
  input.obstacles = {rectangle(0.5, 1.2, 1.1, 1.75), rectangle(0.5, 2.25, 1.1, 2.8)};
  input.from = {{1.05, 2}};
  EXPECT_GT(widestWays(input)[0].clearWidth, 0.99);  // 1.3 m there, 1 m at the door
}

TEST(FreeWays, NarrowFromWhereTheStartIsLeft) {
  // The same gap with a wall 0.5 m before it: the first disc that does not hold the place decides.
  WalkInput input = room();
  input.obstacles = {rectangle(0.5, 1.2, 1.1, 1.75), rectangle(0.5, 2.25, 1.1, 2.8),
                     rectangle(1.6, 0.9, 1.7, 3.1)};
  input.from = {{1.05, 2}};
  const double width = widestWays(input)[0].clearWidth;
  EXPECT_GT(width, 0.499);
  EXPECT_LT(width, 0.56);
}

/// Discs of a width fit through when the floor less all that stands on it, shrunk by the radius, still joins
/// start and door: the same question asked of polygon offsets.
double widthByOffsets(const WalkInput& input) {
  double low = 0;
  double high = 4;
  for (int i = 0; i < 24; ++i) {
    const double width = 0.5 * (low + high);
    PolygonSet things;
    for (const Ring& ring : input.obstacles) things.push_back({ring, {}});
    const auto free = differenceOf({Polygon{input.floor, {}}}, things);
    const auto inner = offsetOf(*free, -width / 2, OffsetCorner::Round);
    const Vec2 goal =
        0.5 * (input.exits[0].sill.a + input.exits[0].sill.b) + (width / 2 + 1e-4) * input.exits[0].inward;
    bool joined = false;
    for (const Polygon& place : *inner) {
      joined = joined || (locate(place, input.from[0]) != Location::Outside &&
                          locate(place, goal) != Location::Outside);
    }
    (joined ? low : high) = width;
  }
  return low;
}

TEST(FreeWays, AgreeWithShrunkPolygons) {
  std::mt19937 random(21);
  std::uniform_real_distribution<double> x(3.0, 4.0);
  std::uniform_real_distribution<double> y(0, 4);
  std::uniform_real_distribution<double> size(0.15, 0.6);
  std::uniform_real_distribution<double> turn(0, kPi);
  int compared = 0;
  for (int round = 0; round < 40; ++round) {
    WalkInput input = room();
    for (int k = 0; k < 5; ++k) {
      const Vec2 at(x(random), y(random));
      const double a = turn(random);
      const Vec2 u = size(random) * Vec2(std::cos(a), std::sin(a));
      const Vec2 v = size(random) * Vec2(-std::sin(a), std::cos(a));
      input.obstacles.push_back({at - u - v, at + u - v, at + u + v, at - u + v});
    }
    const double width = widestWays(input)[0].clearWidth;
    const double expected = std::min(widthByOffsets(input), 4.0);
    // Nothing stands within 1.1 m of start and sill, so that only what lies between them counts.
    if (expected < 0.12 || expected > 1.5) continue;
    ++compared;
    EXPECT_NEAR(width, expected, 0.002 + kWalkSpacing * kWalkSpacing / (8 * expected)) << round;
  }
  EXPECT_GT(compared, 15);
}

}  // namespace
}  // namespace baywright
