// SPDX-License-Identifier: Apache-2.0
#include "clearance/walk_graph.h"

#include <gtest/gtest.h>

#include <array>

namespace baywright {
namespace {

TEST(Outline, IsNoWiderSpacedThanAsked) {
  std::vector<OutlinePoint> points;
  const std::array chain = {Vec2(0, 0), Vec2(1, 0), Vec2(1, 0.25)};
  addOutline(points, chain, 0.1);
  EXPECT_EQ(points.size(), 1u + 9 + 1 + 2 + 1);
  for (std::size_t i = 1; i < points.size(); ++i)
    EXPECT_LE((points[i].at - points[i - 1].at).norm(), 0.1 + 1e-12);
}

TEST(Outline, KnowsBothSidesOfEachCornerOfARing) {
  std::vector<OutlinePoint> points;
  const std::array ring = {Vec2(0, 0), Vec2(1, 0), Vec2(0, 1), Vec2(0, 0)};
  addOutline(points, ring, 0.1);
  EXPECT_EQ(points[0].before.b, Vec2(0, 0.1));
  EXPECT_EQ(points[0].after.b, Vec2(0.1, 0));
  for (std::size_t i = 1; i < points.size(); ++i) EXPECT_NE(points[i].at, points[0].at);
}

TEST(Gap, IsMeasuredBetweenOutlinesNotPoints) {
  std::vector<OutlinePoint> lower;
  std::vector<OutlinePoint> upper;
  addOutline(lower, std::array{Vec2(0, 0), Vec2(1, 0)}, 0.1);
  addOutline(upper, std::array{Vec2(0.05, 0.8), Vec2(1.05, 0.8)}, 0.1);
  EXPECT_GT((lower[5].at - upper[5].at).norm(), 0.8);
  EXPECT_NEAR(gapAt(lower[5], upper[5]).width, 0.8, 1e-12);
}

TEST(WalkGraph, FindsTheCellThatHoldsAPlace) {
  std::vector<OutlinePoint> points;
  addOutline(points, std::array{Vec2(0, 0), Vec2(4, 0), Vec2(4, 3), Vec2(0, 3), Vec2(0, 0)}, 0.1);
  const WalkGraph graph(std::move(points));
  EXPECT_TRUE(graph.nodeOver({2, 1.5}));
  EXPECT_TRUE(graph.nodeOver({0.03, 0.02}));
  EXPECT_FALSE(graph.nodeOver({-1, 1}));
}

TEST(WalkGraph, KnowsNoWayThroughAnOutline) {
  std::vector<OutlinePoint> points;
  addOutline(points, std::array{Vec2(0, 0), Vec2(4, 0), Vec2(4, 3), Vec2(0, 3), Vec2(0, 0)}, 0.1);
  addOutline(points, std::array{Vec2(2, 0), Vec2(2, 3)}, 0.1);
  const WalkGraph graph(std::move(points));
  const int left = *graph.nodeOver({1, 1.5});
  const int right = *graph.nodeOver({3, 1.5});
  EXPECT_LE(widthsFrom(graph, {{1, 1.5}, {left}})[static_cast<std::size_t>(right)], 0.1 + 1e-4);
  EXPECT_TRUE(shortestWay(graph, {{1, 1.5}, {left}}, right, 0.2).empty());
  EXPECT_EQ(shortestWay(graph, {{1, 1.5}, {left}}, left, 0.2).size(), 1u);
}

TEST(WalkGraph, SetsOutFromEachFreeDiscOverThePlace) {
  std::vector<OutlinePoint> points;
  addOutline(points, std::array{Vec2(0, 0), Vec2(4, 0), Vec2(4, 3), Vec2(0, 3), Vec2(0, 0)}, 0.1);
  const WalkGraph graph(std::move(points));
  const Vec2 place(0.2, 1.4);
  bool middle = false;
  for (const int node : startAt(graph, place).nodes) {
    const Vec2& at = graph.nodes()[static_cast<std::size_t>(node)].at;
    EXPECT_LE((at - place).norm(), 1.51);
    middle = middle || (at - Vec2(1.5, 1.5)).norm() < 0.06;
  }
  EXPECT_TRUE(middle);  // the disc between three walls holds it
  EXPECT_TRUE(startAt(graph, {-1, 1}).nodes.empty());
}

}  // namespace
}  // namespace baywright
