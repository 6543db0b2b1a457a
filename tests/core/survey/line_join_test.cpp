// SPDX-License-Identifier: Apache-2.0
#include "survey/line_join.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace baywright {
namespace {

std::vector<Segment2> chain(const std::vector<Vec2>& points) {
  std::vector<Segment2> lines;
  for (std::size_t i = 1; i < points.size(); ++i) lines.push_back({points[i - 1], points[i]});
  return lines;
}
std::vector<Segment2> closed(std::vector<Vec2> points) {
  points.push_back(points.front());
  return chain(points);
}
std::vector<Segment2> operator+(std::vector<Segment2> a, const std::vector<Segment2>& b) {
  a.insert(a.end(), b.begin(), b.end());
  return a;
}
Ring rectangle(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

void expectRing(const Ring& ring, const Ring& expected, double within = 1e-9) {
  ASSERT_EQ(ring.size(), expected.size());
  for (std::size_t i = 0; i < ring.size(); ++i)
    EXPECT_LT((ring[i] - expected[i]).norm(), within) << "corner " << i;
}

TEST(LineJoin, JoinsLooseLinesInAnyOrderAndDirection) {
  const auto joined = joinLines({{{{6, 0}, {0, 0}}, {{6, 4}, {6, 0}}, {{0, 0}, {0, 4}}, {{0, 4}, {6, 4}}}});
  ASSERT_TRUE(joined) << joined.error().sentence();
  ASSERT_EQ(joined->rooms.size(), 1u);
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6, 4));
  EXPECT_NEAR(joined->rooms[0].area, 24, 1e-9);
  EXPECT_TRUE(joined->rooms[0].gaps.empty());
  EXPECT_EQ(joined->wallThickness, 0);
}

TEST(LineJoin, MeetsCornersWhereTheLinesMeet) {
  // Each line is 3 mm short or long at its ends.
  const auto joined = joinLines({{{{0.003, 0}, {6.003, 0}},
                                  {{6, -0.003}, {6, 3.997}},
                                  {{5.998, 4}, {-0.002, 4}},
                                  {{0, 4}, {0, 0.003}}}});
  ASSERT_TRUE(joined) << joined.error().sentence();
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6, 4), 1e-6);
}

TEST(LineJoin, CutsCrossingsTeesAndOverlaps) {
  // A grid of two rooms whose lines run past each other, and one line drawn twice, shifted along itself.
  const auto joined = joinLines({{{{-1, 0}, {9, 0}},
                                  {{-1, 4}, {9, 4}},
                                  {{0, -1}, {0, 5}},
                                  {{8, -1}, {8, 5}},
                                  {{3, 0}, {3, 4}},
                                  {{2, 0}, {5, 0}}},
                                 0.005,
                                 0});
  ASSERT_TRUE(joined) << joined.error().sentence();
  ASSERT_EQ(joined->rooms.size(), 2u);
  expectRing(joined->rooms[0].ring, rectangle(3, 0, 8, 4));
  expectRing(joined->rooms[1].ring, rectangle(0, 0, 3, 4));
  EXPECT_EQ(joined->looseEnds, 8u);
}

TEST(LineJoin, TakesTheInnerFaceOfClosedDoubleWalls) {
  const auto joined = joinLines({closed(rectangle(-0.2, -0.2, 6.2, 4.2)) + closed(rectangle(0, 0, 6, 4))});
  ASSERT_TRUE(joined) << joined.error().sentence();
  ASSERT_EQ(joined->rooms.size(), 1u);
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6, 4));
  EXPECT_NEAR(joined->wallThickness, 0.2, 0.01);
}

// Walls 0.1 thick round 5 by 4 with a door of 0.9 and a garage door of 2.4, and the sheet's frame round it.
std::vector<Segment2> garage() {
  return chain({{1.9, 0},
                {5, 0},
                {5, 4},
                {3.7, 4},
                {3.7, 4.1},
                {5.1, 4.1},
                {5.1, -0.1},
                {1.9, -0.1},
                {1.9, 0}}) +
         chain({{1, 0}, {0, 0}, {0, 4}, {1.3, 4}, {1.3, 4.1}, {-0.1, 4.1}, {-0.1, -0.1}, {1, -0.1}, {1, 0}});
}

TEST(LineJoin, BridgesDoorsInDoubleWalls) {
  const auto joined = joinLines({garage()});
  ASSERT_TRUE(joined) << joined.error().sentence();
  const JoinedRoom& room = joined->rooms[0];
  expectRing(room.ring, rectangle(0, 0, 5, 4));
  ASSERT_EQ(room.gaps.size(), 2u);
  double widths = 0;
  for (const Segment2& gap : room.gaps) widths += (gap.b - gap.a).norm();
  EXPECT_NEAR(widths, 0.9 + 2.4, 1e-9);
  EXPECT_NEAR(joined->wallThickness, 0.1, 0.01);
}

TEST(LineJoin, PassesOverTheFrameOfTheSheet) {
  const auto joined = joinLines({garage() + closed(rectangle(-3, -3, 9, 8))});
  ASSERT_TRUE(joined) << joined.error().sentence();
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 5, 4));
  const auto solid = joinLines({closed(rectangle(-0.2, -0.2, 6.2, 4.2)) + closed(rectangle(0, 0, 6, 4)) +
                                closed(rectangle(-3, -3, 9, 8))});
  ASSERT_TRUE(solid) << solid.error().sentence();
  expectRing(solid->rooms[0].ring, rectangle(0, 0, 6, 4));
}

TEST(LineJoin, PassesOverAPlotsBorder) {
  const auto joined = joinLines(
      {closed(rectangle(-9, -9, 20, 20)) + closed(rectangle(0, 0, 8, 4)) + chain({{5, 0}, {5, 4}})});
  ASSERT_TRUE(joined);
  EXPECT_NEAR(joined->rooms[0].area, 20, 1e-9);
  const auto table = joinLines({closed(rectangle(0, 0, 8, 6)) + closed(rectangle(2, 2, 4.7, 3.5))});
  ASSERT_TRUE(table);
  EXPECT_NEAR(table->rooms[0].area, 48, 1e-9);
}

TEST(LineJoin, PassesOverAPlainFrameRoundOneOutline) {
  // With a gap, filling much of the frame, or in one larger than rooms are: a room. Small and closed: a
  // table.
  const auto first = [](const std::vector<Segment2>& lines) {
    const auto joined = joinLines({lines});
    EXPECT_TRUE(joined);
    return joined ? joined->rooms[0] : JoinedRoom{};
  };
  const auto gap = chain({{2.9, 0}, {4, 0}, {4, 3}, {0, 3}, {0, 0}, {2, 0}});
  EXPECT_NEAR(first(gap + closed(rectangle(-3, -3, 9, 7))).area, 12, 1e-9);
  EXPECT_NEAR(first(closed(rectangle(0, 0, 6, 5)) + closed(rectangle(-1, -1, 8, 6))).area, 30, 1e-9);
  EXPECT_NEAR(first(closed(rectangle(0, 0, 4, 3)) + closed(rectangle(-3, -3, 15, 8))).area, 12, 1e-9);
  EXPECT_NEAR(first(closed(rectangle(0, 0, 4, 1.6)) + closed(rectangle(-1, -1, 7, 6))).area, 56, 1e-9);
  // A title block in the corner of the frame is part of it, however large.
  const auto titled = joinLines({gap + closed(rectangle(-3, -3, 12, 9)) + chain({{5, -3}, {5, 2}, {12, 2}})});
  ASSERT_TRUE(titled);
  ASSERT_EQ(titled->rooms.size(), 3u);
  EXPECT_NEAR(titled->rooms[0].area, 12, 1e-9);
  EXPECT_FALSE(titled->rooms[0].likeFrame);
  EXPECT_TRUE(titled->rooms[1].likeFrame && titled->rooms[2].likeFrame);
}

TEST(LineJoin, KnowsAWindowDrawnInLinesFromANiche) {
  // Walls 0.2 thick round 6 by 4; in the right one a window of 1.2 whose two lines stand 60 mm in from both
  // faces.
  const auto walls =
      chain({{6, 2}, {6, 0}, {0, 0}, {0, 4}, {6, 4}, {6, 3.2}, {6.2, 3.2}, {6.2, 4.2}, {-0.2, 4.2}}) +
      chain({{-0.2, 4.2}, {-0.2, -0.2}, {6.2, -0.2}, {6.2, 2}, {6, 2}});
  const auto window = chain({{6.06, 2}, {6.06, 3.2}}) + chain({{6.14, 2}, {6.14, 3.2}});
  const auto joined = joinLines({walls + window});
  ASSERT_TRUE(joined) << joined.error().sentence();
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6, 4));
  EXPECT_NEAR(joined->rooms[0].area, 24, 1e-9);
  ASSERT_EQ(joined->rooms[0].gaps.size(), 1u);
  EXPECT_NEAR((joined->rooms[0].gaps[0].b - joined->rooms[0].gaps[0].a).norm(), 1.2, 1e-9);
  // A niche 60 mm deep has the same wall behind it as beside it, and stays part of the room.
  const auto niche =
      joinLines({closed({{0, 0}, {6, 0}, {6, 2}, {6.06, 2}, {6.06, 3.2}, {6, 3.2}, {6, 4}, {0, 4}}) +
                 closed(rectangle(-0.2, -0.2, 6.2, 4.2))});
  ASSERT_TRUE(niche) << niche.error().sentence();
  EXPECT_NEAR(niche->rooms[0].area, 24 + 0.06 * 1.2, 1e-9);
}

TEST(LineJoin, ClosesTheOpenFrontOfThreeSides) {
  const auto joined = joinLines({chain({{6, 0}, {0, 0}, {0, 5}, {6, 5}})});
  ASSERT_TRUE(joined) << joined.error().sentence();
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6, 5));
  ASSERT_EQ(joined->rooms[0].gaps.size(), 1u);
  EXPECT_NEAR((joined->rooms[0].gaps[0].b - joined->rooms[0].gaps[0].a).norm(), 5, 1e-9);
  EXPECT_FALSE(joinLines({chain({{6, 0}, {0, 0}, {0, 5}, {6, 5}, {6, 20}})}));
  // Walls of two lines, and a door from one to the other.
  const auto garage =
      joinLines({closed({{0, 0}, {0, 6}, {3, 6}, {3, 0}, {3.2, 0}, {3.2, 6.2}, {-0.2, 6.2}, {-0.2, 0}})});
  ASSERT_TRUE(garage) << garage.error().sentence();
  expectRing(garage->rooms[0].ring, rectangle(0, 0, 3, 6));
  ASSERT_EQ(garage->rooms[0].gaps.size(), 1u);
}

TEST(LineJoin, KeepsAHallThatHasARoomInIt) {
  const auto office = chain({{2, 1}, {5, 1}, {5, 5}, {1, 5}, {1, 1}, {1.1, 1}, {1.1, 1.1}}) +
                      chain({{2, 1}, {2, 1.1}, {4.9, 1.1}, {4.9, 4.9}, {1.1, 4.9}, {1.1, 1.1}});
  const auto hall =
      chain({{10, -4}, {-4, -4}, {-4, 8}, {16, 8}, {16, -4}, {14, -4}, {14, -4.3}, {16.3, -4.3}}) +
      chain({{16.3, -4.3}, {16.3, 8.3}, {-4.3, 8.3}, {-4.3, -4.3}, {10, -4.3}, {10, -4}});
  const auto joined = joinLines({office + hall});
  ASSERT_TRUE(joined) << joined.error().sentence();
  EXPECT_NEAR(joined->rooms[0].area, 240, 1e-9);
  // A hollow chimney is no house.
  const auto chimney = joinLines({closed(rectangle(0, 0, 6, 5)) + closed(rectangle(3, 2, 3.6, 2.6)) +
                                  closed(rectangle(3.12, 2.12, 3.48, 2.48))});
  ASSERT_TRUE(chimney) << chimney.error().sentence();
  EXPECT_NEAR(chimney->rooms[0].area, 30, 1e-9);
}

TEST(LineJoin, CountsEndsThatMissEachOther) {
  const auto lines = chain({{0, 0.02}, {0, 4}, {6, 4}, {6, 0}, {0.01, 0}});
  const auto loose = joinLines({lines + closed(rectangle(8, 0, 11, 2))});
  ASSERT_TRUE(loose);
  EXPECT_EQ(loose->nearMisses, 2u);
  const auto met = joinLines({lines, 0.03});
  ASSERT_TRUE(met);
  EXPECT_EQ(met->nearMisses, 0u);
  EXPECT_EQ(met->rooms[0].ring.size(), 4u);
  EXPECT_NEAR(met->rooms[0].area, 24, 1e-6);
}

TEST(LineJoin, BridgesAGapInASingleLine) {
  const auto joined = joinLines({chain({{2, 0}, {0, 0}, {0, 4}, {6, 4}, {6, 0}, {2.9, 0}})});
  ASSERT_TRUE(joined) << joined.error().sentence();
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6, 4));
  ASSERT_EQ(joined->rooms[0].gaps.size(), 1u);
  const auto closedOnly = joinLines({chain({{2, 0}, {0, 0}, {0, 4}, {6, 4}, {6, 0}, {2.9, 0}}), 0.005, 0});
  ASSERT_FALSE(closedOnly);
  EXPECT_NE(closedOnly.error().what.find("2 ends join nothing"), std::string::npos)
      << closedOnly.error().sentence();
}

TEST(LineJoin, BridgesADoorInTheCorner) {
  // The wall stops 0.8 short of the next one.
  const auto joined = joinLines({chain({{0.8, 0}, {6, 0}, {6, 4}, {0, 4}, {0, -1}})});
  ASSERT_TRUE(joined) << joined.error().sentence();
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6, 4));
  ASSERT_EQ(joined->rooms[0].gaps.size(), 1u);
}

TEST(LineJoin, KeepsNichesInTheirRoom) {
  const std::vector<Vec2> room = {{0, 0}, {2, 0}, {2, -0.5}, {3, -0.5}, {3, 0}, {6, 0}, {6, 4}, {0, 4}};
  const auto joined = joinLines({closed(room)});
  ASSERT_TRUE(joined) << joined.error().sentence();
  EXPECT_EQ(joined->rooms[0].ring.size(), 8u);
  EXPECT_NEAR(joined->rooms[0].area, 24.5, 1e-9);
}

TEST(LineJoin, KeepsARoomWholeThatAPartitionReachesInto) {
  // A partition that stops a metre short of the other wall, and two nibs in line across the room.
  const auto joined =
      joinLines({closed(rectangle(0, 0, 6, 4)) + chain({{3, 0}, {3, 3}}) + chain({{0, 2}, {1, 2}})});
  ASSERT_TRUE(joined) << joined.error().sentence();
  ASSERT_EQ(joined->rooms.size(), 1u);
  EXPECT_NEAR(joined->rooms[0].area, 24, 1e-9);
}

TEST(LineJoin, PartsRoomsAtTheirDoors) {
  // Two rooms in single lines with a door between them and one to the outside.
  const auto joined = joinLines({chain({{2.9, 0}, {8, 0}, {8, 4}, {0, 4}, {0, 0}, {2, 0}}) +
                                 chain({{5, 0}, {5, 1}}) + chain({{5, 1.9}, {5, 4}})});
  ASSERT_TRUE(joined) << joined.error().sentence();
  ASSERT_EQ(joined->rooms.size(), 2u);
  EXPECT_NEAR(joined->rooms[0].area, 20, 1e-9);
  EXPECT_EQ(joined->rooms[0].gaps.size(), 2u);
  EXPECT_NEAR(joined->rooms[1].area, 12, 1e-9);
}

TEST(LineJoin, PartsRoomsAtADoorWithinAClosedOutline) {
  const auto joined =
      joinLines({closed(rectangle(0, 0, 8, 4)) + chain({{5, 0}, {5, 1}}) + chain({{5, 1.9}, {5, 4}})});
  ASSERT_TRUE(joined) << joined.error().sentence();
  ASSERT_EQ(joined->rooms.size(), 2u);
  EXPECT_NEAR(joined->rooms[0].area, 20, 1e-9);
  const auto nibs =
      joinLines({closed(rectangle(0, 0, 8, 4)) + chain({{5, 0}, {5, 1}}) + chain({{5, 3}, {5, 4}})});
  ASSERT_TRUE(nibs);
  EXPECT_EQ(nibs->rooms.size(), 1u);
}

// Two rooms 6.1 and 2.8 wide and 4 high behind walls of 0.3, a partition of 0.1 between them with a door, and
// in the upper wall a window of 1.5 in `x` to `x` + 1.5, in the outline of its masonry.
std::vector<Segment2> flat(double x) {
  const auto outer = chain({{x + 1.5, 4.3}, {9.3, 4.3}, {9.3, -0.3}, {-0.3, -0.3}, {-0.3, 4.3}, {x, 4.3}});
  const auto jambs = chain({{x, 4.3}, {x, 4}}) + chain({{x + 1.5, 4.3}, {x + 1.5, 4}});
  const auto left =
      chain({{6.1, 1.9}, {6.1, 4}}) + chain({{6.1, 1}, {6.1, 0}, {0, 0}, {0, 4}, {std::min(x, 6.1), 4}});
  const auto right = chain({{6.2, 1.9}, {6.2, 4}}) +
                     chain({{6.2, 1}, {6.2, 0}, {9, 0}, {9, 4}, {std::max(x + 1.5, 6.2), 4}});
  return outer + jambs + left + right + chain({{6.1, 1}, {6.2, 1}}) + chain({{6.1, 1.9}, {6.2, 1.9}});
}

TEST(LineJoin, EndsRoomsAtAWindowWhoseJambIsInLineWithAPartition) {
  // The jamb goes straight on into the partition's face, at the window's right or left.
  const auto rightJamb = joinLines({flat(4.6) + chain({{6.2, 4}, {7.7, 4}})});
  ASSERT_TRUE(rightJamb) << rightJamb.error().sentence();
  expectRing(rightJamb->rooms[0].ring, rectangle(0, 0, 6.1, 4));
  EXPECT_EQ(rightJamb->rooms[0].gaps.size(), 2u);  // with the door
  const auto leftJamb = joinLines({flat(6.2) + chain({{4.6, 4}, {6.1, 4}})});
  ASSERT_TRUE(leftJamb) << leftJamb.error().sentence();
  expectRing(leftJamb->rooms[0].ring, rectangle(0, 0, 6.1, 4));
  ASSERT_EQ(leftJamb->rooms.size(), 2u);
  expectRing(leftJamb->rooms[1].ring, rectangle(6.2, 0, 9, 4));
}

TEST(LineJoin, KnowsTheShortEndsOfWallsThatAreDrawnInPieces) {
  std::vector<Segment2> pieces;
  for (const Segment2& line : flat(4.6))
    for (const double share : {0.0, 0.3, 0.7})
      pieces.push_back({line.a + share * (line.b - line.a), line.a + (share == 0.7   ? 1.0
                                                                      : share == 0.3 ? 0.7
                                                                                     : 0.3) *
                                                                         (line.b - line.a)});
  const auto joined = joinLines({pieces + chain({{6.2, 4}, {7.7, 4}})});
  ASSERT_TRUE(joined) << joined.error().sentence();
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6.1, 4));
  EXPECT_EQ(joined->rooms[0].gaps.size(), 2u);
}

TEST(LineJoin, EndsRoomsAtDoorsBesideACrossingOfWalls) {
  // Four rooms of single lines round a crossing; every door begins there.
  const auto joined =
      joinLines({closed(rectangle(0, 0, 9, 7)) + chain({{4, 0}, {4, 3}}) + chain({{4, 4}, {4, 7}}) +
                 chain({{0, 4}, {3, 4}}) + chain({{4, 4}, {9, 4}})});
  ASSERT_TRUE(joined) << joined.error().sentence();
  ASSERT_EQ(joined->rooms.size(), 4u);
  EXPECT_NEAR(joined->rooms[0].area, 20, 1e-9);
}

TEST(LineJoin, PartsRoomsAtADoorInACornerWhereItsLeafIsDrawn) {
  LinesToJoin room{closed(rectangle(0, 0, 9, 4)) + chain({{6, 0}, {6, 3.1}})};
  ASSERT_TRUE(joinLines(room));
  EXPECT_EQ(joinLines(room)->rooms.size(), 1u);
  room.doors = {{{6, 3.1}, {5.1, 3.1}}, {{6, 3.1}, {6, 4}}};
  ASSERT_TRUE(joinLines(room));
  ASSERT_EQ(joinLines(room)->rooms.size(), 2u);
  expectRing(joinLines(room)->rooms[0].ring, rectangle(0, 0, 6, 4));
  // The same with a partition of two lines.
  room.lines = closed(rectangle(0, 0, 9, 4)) + chain({{6, 0}, {6, 3.1}, {6.1, 3.1}, {6.1, 0}});
  ASSERT_EQ(joinLines(room)->rooms.size(), 2u);
  expectRing(joinLines(room)->rooms[0].ring, rectangle(0, 0, 6, 4));
}

TEST(LineJoin, ReportsColumnsWithoutCuttingThemOut) {
  const auto joined = joinLines({closed(rectangle(0, 0, 6, 4)) + closed(rectangle(2, 2, 2.3, 2.3))});
  ASSERT_TRUE(joined) << joined.error().sentence();
  EXPECT_NEAR(joined->rooms[0].area, 24, 1e-9);
  ASSERT_EQ(joined->rooms[0].inside.size(), 1u);
  expectRing(joined->rooms[0].inside[0], rectangle(2, 2, 2.3, 2.3));
}

TEST(LineJoin, LeavesStraightCornersOut) {
  const auto joined = joinLines({closed({{0, 0}, {1, 0}, {2.5, 0}, {6, 0}, {6, 2}, {6, 4}, {0, 4}})});
  ASSERT_TRUE(joined);
  expectRing(joined->rooms[0].ring, rectangle(0, 0, 6, 4));
}

TEST(LineJoin, RefusesWhatHasNoRoom) {
  EXPECT_FALSE(joinLines({}));
  EXPECT_FALSE(joinLines({chain({{0, 0}, {1, 0}, {2, 5}})}));
  EXPECT_FALSE(joinLines({closed(rectangle(0, 0, 0.3, 0.3))}));
  EXPECT_FALSE(joinLines({{{{0, 0}, {std::nan(""), 1}}}}));
  LinesToJoin many;
  many.lines.assign(40'000, {{0, 0}, {1, 0}});
  EXPECT_FALSE(joinLines(many));
}

// The same room turned, its lines broken at random into pieces that overlap a little and jitter within the
// tolerance, in random order: always the same four corners.
TEST(LineJoin, FindsARoomInShuffledPieces) {
  std::mt19937 random(7);
  const auto uniform = [&] { return static_cast<double>(random()) / 4294967296.0; };
  for (int trial = 0; trial < 50; ++trial) {
    const double turn = uniform() * 2 * kPi;
    const Eigen::Rotation2Dd rotation(turn);
    Ring truth = rectangle(0, 0, 3 + 5 * uniform(), 3 + 5 * uniform());
    for (Vec2& corner : truth) corner = rotation * corner;
    std::vector<Segment2> lines;
    for (std::size_t i = 0; i < 4; ++i) {
      const Vec2 a = truth[i], b = truth[(i + 1) % 4];
      const Vec2 along = (b - a).normalized();
      double from = 0;
      while (from < 1) {
        const double to = std::min(1.0, from + 0.15 + 0.3 * uniform());
        const auto jitter = [&] { return Vec2(0.001 * (uniform() - 0.5), 0.001 * (uniform() - 0.5)); };
        Segment2 piece{a + from * (b - a) - 0.02 * along * (from > 0), a + to * (b - a) + jitter()};
        if (uniform() < 0.5) std::swap(piece.a, piece.b);
        lines.push_back(piece);
        from = to;
      }
    }
    std::shuffle(lines.begin(), lines.end(), random);
    const auto joined = joinLines({lines});
    ASSERT_TRUE(joined) << trial << ": " << joined.error().sentence();
    EXPECT_NEAR(joined->rooms[0].area, std::abs(signedArea(truth)), 0.02) << trial;
    for (const Vec2& corner : truth) {
      double nearest = 1;
      for (const Vec2& found : joined->rooms[0].ring) nearest = std::min(nearest, (found - corner).norm());
      EXPECT_LT(nearest, 0.003) << trial;
    }
  }
}

}  // namespace
}  // namespace baywright
