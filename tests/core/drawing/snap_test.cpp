// SPDX-License-Identifier: Apache-2.0
#include "drawing/snap.h"

#include <gtest/gtest.h>

#include <array>

namespace baywright {
namespace {

TEST(Snap, LeavesAloneWhatIsNearNothing) {
  const std::array rules{onLine({0, 0}, {1, 0}, {{}, "x"})};
  const Snapped result = snapped(rules, {3, 0.2}, 0.1);
  EXPECT_EQ(result.by, Vec2(3, 0.2));
  EXPECT_TRUE(result.marks.empty());
}

TEST(Snap, GoesStraightToALine) {
  const Vec2 along = Vec2(3, 4).normalized();
  const std::array rules{onLine({1, 1}, along, {{}, "slanted"})};
  const Vec2 near = Vec2(1, 1) + 2 * along + 0.05 * leftOf(along);
  const Snapped result = snapped(rules, near, 0.1);
  EXPECT_TRUE(result.by.isApprox(Vec2(1, 1) + 2 * along, 1e-12));
  ASSERT_EQ(result.marks.size(), 1u);
  EXPECT_EQ(result.marks[0].what, "slanted");
}

TEST(Snap, HoldsTwoCrossingLinesAtOnce) {
  const std::array rules{onLine({0, 2}, {1, 0}, {{}, "level"}), onLine({5, 0}, {0, 1}, {{}, "upright"}),
                         onLine({0, 2.04}, {1, 0}, {{}, "other level"})};
  const Snapped result = snapped(rules, {5.06, 2.01}, 0.1);
  EXPECT_EQ(result.by, Vec2(5, 2));
  ASSERT_EQ(result.marks.size(), 2u);
  EXPECT_EQ(result.marks[0].what, "level");
  EXPECT_EQ(result.marks[1].what, "upright");
}

TEST(Snap, TakesTheFirstOfTwoEquallyNear) {
  const std::array rules{onLine({0, 1}, {1, 0}, {{}, "first"}), onLine({0, -1}, {1, 0}, {{}, "second"})};
  EXPECT_EQ(snapped(rules, {0, 0}, 2).marks.front().what, "first");
}

TEST(Snap, DoesNotRunAwayAlongLinesThatHardlyCross) {
  const std::array rules{onLine({0, 0}, {1, 0}, {{}, "a"}),
                         onLine({0, 0.05}, Vec2(1, 0.001).normalized(), {{}, "b"})};
  EXPECT_NEAR(snapped(rules, {3, 0.02}, 0.1).by.x(), 3, 0.1);
}

TEST(Snap, EndsWhereASegmentEnds) {
  const std::array rules{onSegment({{1, 0}, {2, 0}}, "wall")};
  EXPECT_EQ(snapped(rules, {1.5, 0.05}, 0.1).marks.size(), 1u);
  EXPECT_EQ(snapped(rules, {2.05, 0.05}, 0.1).marks.size(), 1u);
  EXPECT_EQ(snapped(rules, {2.5, 0.05}, 0.1).marks.size(), 0u);
  EXPECT_EQ(snapped(rules, {0.5, 0.05}, 0.1).marks.size(), 0u);
}

TEST(Snap, PrefersAPointToALine) {
  const std::array rules{onLine({0, 0}, {1, 0}, {{}, "line"})};
  const std::array points{SnapPoint{{1, 0.08}, "far"}, SnapPoint{{1, 0.06}, "near"}};
  const Snapped result = snapped(points, rules, {1, 0.01}, 0.1);
  EXPECT_EQ(result.by, Vec2(1, 0.06));
  EXPECT_EQ(result.marks.front().what, "near");
  EXPECT_EQ(snapped(points, rules, {3, 0.01}, 0.1).marks.front().what, "line");
}

}  // namespace
}  // namespace baywright
