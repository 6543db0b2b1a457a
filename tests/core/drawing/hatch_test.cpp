// SPDX-License-Identifier: Apache-2.0
#include "drawing/hatch.h"

#include <gtest/gtest.h>

#include "geometry/polygon.h"

namespace baywright {
namespace {

using Rings = std::vector<std::vector<Vec2>>;

// Set off the grid that hatches stand on, so that no line runs along an edge.
const Ring kLShape = {{0.013, 0.017}, {10.013, 0.017}, {10.013, 4.017},
                      {4.013, 4.017}, {4.013, 9.017},  {0.013, 9.017}};
const Ring kHole = {{1.013, 1.017}, {3.013, 1.017}, {3.013, 3.017}, {1.013, 3.017}};

Path area(Rings rings, Verdict verdict) {
  Path path;
  path.layer = Layer::Swing;
  path.rings = std::move(rings);
  path.closed = true;
  path.verdict = verdict;
  path.id = {7};
  return path;
}

bool isInside(const Vec2& p) {
  return locate(kLShape, p) == Location::Inside && locate(kHole, p) != Location::Inside;
}

double lengthOf(const Rings& lines) {
  double length = 0;
  for (const auto& line : lines) length += (line[1] - line[0]).norm();
  return length;
}

TEST(HatchLines, LieInsideTheirPolygonAndOutOfItsHoles) {
  for (const double angle : {0.0, 0.3, kPi / 4, kPi / 2, -kPi / 4}) {
    const Rings lines = hatchLines({kLShape, kHole}, 0.37, angle);
    EXPECT_GT(lines.size(), 10u);
    for (const auto& line : lines) {
      for (const double share : {0.001, 0.25, 0.5, 0.75, 0.999}) {
        const Vec2 p = line[0] + share * (line[1] - line[0]);
        EXPECT_TRUE(isInside(p)) << p.transpose() << " at " << angle;
      }
    }
  }
}

// Lines at a distance of s cover a region of area A with a length of A / s.
TEST(HatchLines, CoverTheAreaEvenly) {
  const double wanted = (area(Polygon{kLShape, {kHole}})) / 0.05;
  for (const double angle : {0.0, 0.3, kPi / 4, 1.2})
    EXPECT_NEAR(lengthOf(hatchLines({kLShape, kHole}, 0.05, angle)), wanted, 0.02 * wanted);
}

TEST(HatchLines, StandWhereTheyAreWhileThePolygonMoves) {
  const auto hatch = [](double shift) {
    Ring moved = kLShape;
    for (Vec2& p : moved) p.y() += shift;
    std::vector<double> levels;
    for (const auto& line : hatchLines({moved}, 0.5, 0)) levels.push_back(line[0].y());
    return levels;
  };
  for (const double level : hatch(0.123)) EXPECT_NEAR(level / 0.5, std::round(level / 0.5), 1e-9);
}

TEST(HatchLines, ThatRunAlongEdgesAreSound) {
  const Ring square = {{0, 0}, {4, 0}, {4, 4}, {0, 4}};
  const Rings lines = hatchLines({square}, 1.0, 0);  // y = 0 and y = 4 run along its sides
  EXPECT_EQ(lines.size(), 4u);
  for (const auto& line : lines) {
    EXPECT_EQ(line[0].x(), 0);
    EXPECT_EQ(line[1].x(), 4);
  }
  EXPECT_LT(lengthOf(hatchLines({{{0, 0}, {1, 1}}}, 0.1, 0)), 1e-12);  // two corners enclose nothing
}

TEST(HatchLines, RefuseWhatCannotBeDrawn) {
  EXPECT_TRUE(hatchLines({kLShape}, 0, 0).empty());
  EXPECT_TRUE(hatchLines({kLShape}, -1, 0).empty());
  EXPECT_TRUE(hatchLines({}, 1, 0).empty());
  EXPECT_TRUE(hatchLines({kLShape}, 1e-7, 0).empty());
}

TEST(Hatch, TellsVerdictsApartWithoutColour) {
  EXPECT_FALSE(hatchOf(area({kLShape}, Verdict::Clear), 0.5));
  const auto tight = hatchOf(area({kLShape}, Verdict::Tight), 0.5);
  const auto blocked = hatchOf(area({kLShape}, Verdict::Blocked), 0.5);
  const auto unknown = hatchOf(area({kLShape}, Verdict::Unknown), 0.5);
  ASSERT_TRUE(tight && blocked && unknown);
  EXPECT_TRUE(tight->closed);
  EXPECT_EQ(tight->fill, Fill::Full);
  EXPECT_FALSE(blocked->closed);
  EXPECT_GT(unknown->rings.size(), 1.8 * static_cast<double>(blocked->rings.size()));
}

TEST(Hatch, BelongsToItsArea) {
  const auto hatch = hatchOf(area({kLShape}, Verdict::Blocked), 0.5);
  EXPECT_EQ(hatch->layer, Layer::Swing);
  EXPECT_EQ(hatch->id, Id{7});
  EXPECT_EQ(hatch->verdict, Verdict::Blocked);
}

TEST(Hatch, DotsAreWhollyInside) {
  const auto dots = hatchOf(area({kLShape, kHole}, Verdict::Tight), 0.5);
  ASSERT_TRUE(dots);
  EXPECT_GT(dots->rings.size(), 100u);
  for (const auto& dot : dots->rings) {
    for (const Vec2& p : dot) EXPECT_TRUE(isInside(p)) << p.transpose();
  }
}

TEST(Hatch, OfAnAreaWithoutVerdictIsNone) {
  Path bare = area({kLShape}, Verdict::Blocked);
  bare.verdict.reset();
  EXPECT_FALSE(hatchOf(bare, 0.5));
}

}  // namespace
}  // namespace baywright
