// SPDX-License-Identifier: Apache-2.0
#include "survey/plan_trace.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace baywright {
namespace {

bool liesOn(const TraceLine& line, const Vec2& p) {
  return std::abs(cross(line.along, p - line.through)) < 1e-12;
}

TEST(PlanTrace, OffersNothingBeforeTheFirstCorner) {
  EXPECT_TRUE(traceLines({}).empty());
}

TEST(PlanTrace, StartsLevelAndUpright) {
  const std::vector<Vec2> corners{{2, 3}};
  const auto lines = traceLines(corners);
  ASSERT_GE(lines.size(), 2u);
  EXPECT_TRUE(liesOn(lines[0], {9, 3}));
  EXPECT_EQ(lines[0].what, "level");
  EXPECT_TRUE(liesOn(lines[1], {2, -4}));
  EXPECT_EQ(lines[1].what, "upright");
}

TEST(PlanTrace, FollowsASlantedFirstSide) {
  const Vec2 along(std::cos(0.3), std::sin(0.3));
  const std::vector<Vec2> corners{{1, 1}, Vec2(1, 1) + 4 * along};
  const auto lines = traceLines(corners);
  EXPECT_TRUE(liesOn(lines[1], corners[1] + 2.5 * leftOf(along)));
  EXPECT_EQ(lines[1].what, "square to the first side");
  for (const TraceLine& line : lines) EXPECT_NEAR(line.along.norm(), 1, 1e-15);
}

TEST(PlanTrace, ClosesARectangleWhereTwoLinesCross) {
  const std::vector<Vec2> corners{{0, 0}, {5, 0.7}, {4.5, 4.3}};
  const auto lines = traceLines(corners);
  const auto through = [&](const Vec2& corner, const std::string& what) {
    return std::any_of(lines.begin(), lines.end(), [&](const TraceLine& line) {
      return line.through == corner && line.what == what && std::abs(line.along.dot(corners[1])) < 1e-12;
    });
  };
  EXPECT_TRUE(through(corners[0], "in line with the first corner"));
}

TEST(PlanTrace, TakesASideThatIsSquareWithinHalfADegreeForAMissedClick) {
  const std::vector<Vec2> corners{{0, 0}, {5, 0}, {5.02, 3}};
  for (const TraceLine& line : traceLines(corners))
    EXPECT_EQ(line.what.find("side 2"), std::string::npos) << line.what;
  const std::vector<Vec2> slanted{{0, 0}, {5, 0}, {6, 3}};
  const auto lines = traceLines(slanted);
  EXPECT_TRUE(std::any_of(lines.begin(), lines.end(),
                          [](const TraceLine& line) { return line.what == "square to side 2"; }));
}

TEST(PlanTrace, PutsATypedLengthWhereThePointerShows) {
  const auto corner = cornerAtLength({1, 1}, {1, 9}, 2.5);
  ASSERT_TRUE(corner);
  EXPECT_EQ(*corner, Vec2(1, 3.5));
  EXPECT_FALSE(cornerAtLength({1, 1}, {1, 1}, 2.5));
}

TEST(PlanTrace, ReadsOffADrawingOnlyWhereAScaledOneIsSeen) {
  Job job = newJob();
  EXPECT_EQ(drawnInstrument(job), Instrument::Guess);
  job.planScans.push_back({});
  EXPECT_EQ(drawnInstrument(job), Instrument::Guess);
  job.planScans[0].scaled = true;
  EXPECT_EQ(drawnInstrument(job), Instrument::Drawing);
  job.planScans[0].visible = false;
  EXPECT_EQ(drawnInstrument(job), Instrument::Guess);
}

}  // namespace
}  // namespace baywright
