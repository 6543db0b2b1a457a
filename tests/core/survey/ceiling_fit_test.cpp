// SPDX-License-Identifier: Apache-2.0
#include "survey/ceiling_fit.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "job/room_geometry.h"

namespace baywright {
namespace {

const Ring kFloor{{0, 0}, {6, 0}, {6, 4}, {0, 4}};

struct At {
  double x, y, height;
};

CeilingFit fitted(const std::vector<At>& heights, const Ring& floor = kFloor,
                  Instrument how = Instrument::Laser) {
  std::vector<CeilingReading> readings;
  for (const At& at : heights) readings.push_back({Id{7}, {at.x, at.y}, at.height, how});
  return fitCeiling(floor, readings, UnitSystem{});
}

/// The ceiling of a room with these parts.
double heightAt(const CeilingFit& fit, const Vec2& p, const Ring& floor = kFloor) {
  Room room;
  for (const Vec2& corner : floor) {
    Wall wall;
    wall.start = corner;
    room.walls.push_back(wall);
  }
  room.ceiling = fit.parts;
  return ceilingHeightAt(room, p).value_or(-1);
}

bool hasNote(const CeilingFit& fit, const std::string& part) {
  return std::any_of(fit.notes.begin(), fit.notes.end(),
                     [&](const std::string& note) { return note.find(part) != std::string::npos; });
}

TEST(CeilingFit, IsNotMeasuredWithoutReadings) {
  const CeilingFit fit = fitted({});
  EXPECT_EQ(fit.shape, CeilingShape::NotMeasured);
  ASSERT_EQ(fit.parts.size(), 1u);
  EXPECT_FALSE(fit.parts[0].height.known);
  EXPECT_TRUE(hasNote(fit, "No ceiling height"));
}

TEST(CeilingFit, TakesReadingsThatAgreeAsLevel) {
  const CeilingFit fit = fitted({{1, 1, 2.402}, {5, 1, 2.398}, {5, 3, 2.401}, {1, 3, 2.399}});
  EXPECT_EQ(fit.shape, CeilingShape::Level);
  EXPECT_NEAR(fit.parts[0].height.value, 2.400, 1e-6);
  EXPECT_EQ(fit.parts[0].height.how, Instrument::Laser);
  EXPECT_NEAR(fit.residuals[0].residual, -0.002, 1e-6);
  EXPECT_NEAR(fit.rms, std::sqrt(10e-6 / 4), 1e-6);
}

TEST(CeilingFit, FindsASlopeInAnyDirection) {
  for (const Vec2& slope : {Vec2(0, 0.25), Vec2(-0.1, 0), Vec2(0.07, -0.12)}) {
    std::vector<At> heights;
    for (const Vec2& p : {Vec2(0.5, 0.5), Vec2(5, 0.7), Vec2(5.5, 3.5), Vec2(0.3, 3.2), Vec2(3, 2)})
      heights.push_back({p.x(), p.y(), 2.6 + slope.dot(p)});
    const CeilingFit fit = fitted(heights);
    EXPECT_EQ(fit.shape, CeilingShape::Sloped);
    ASSERT_EQ(fit.parts.size(), 1u);
    EXPECT_LT((fit.parts[0].slope - slope).norm(), 1e-9);
    EXPECT_NEAR(fit.parts[0].heightAt({0, 0}), 2.6, 1e-9);
    EXPECT_LT(fit.rms, 1e-9);
  }
}

TEST(CeilingFit, SaysThatReadingsOnALineSayNothingAcross) {
  const CeilingFit fit = fitted({{3, 0.2, 2.2}, {3, 2, 2.56}, {3, 3.8, 2.92}});
  EXPECT_EQ(fit.shape, CeilingShape::Sloped);
  EXPECT_NEAR(fit.parts[0].slope.y(), 0.2, 1e-9);
  EXPECT_NEAR(fit.parts[0].slope.x(), 0, 1e-12);
  EXPECT_TRUE(hasNote(fit, "on one line"));
}

TEST(CeilingFit, FindsAStepAndKeepsTheLowerPartOnTheSafeSide) {
  const CeilingFit fit = fitted(
      {{0.5, 1, 2.301}, {1.2, 3, 2.299}, {0.8, 2, 2.300}, {2.0, 1, 2.700}, {4, 3, 2.701}, {5.5, 1, 2.699}});
  EXPECT_EQ(fit.shape, CeilingShape::Stepped);
  EXPECT_NEAR(heightAt(fit, {0.2, 2}), 2.3, 1e-6);
  EXPECT_NEAR(heightAt(fit, {1.9, 2}), 2.3, 1e-6);  // the step lies anywhere between 1.2 and 2.0
  EXPECT_NEAR(heightAt(fit, {2.1, 2}), 2.7, 1e-6);
  EXPECT_TRUE(hasNote(fit, "somewhere between"));
}

TEST(CeilingFit, FindsARidge) {
  std::vector<At> heights;
  for (const double x : {1.0, 5.0})
    for (const double y : {0.2, 1.0, 1.8, 2.2, 3.0, 3.8})
      heights.push_back({x, y, 2.2 + 0.4 * std::min(y, 4 - y)});
  const CeilingFit fit = fitted(heights);
  EXPECT_EQ(fit.shape, CeilingShape::Creased);
  EXPECT_NEAR(heightAt(fit, {3, 2.0}), 3.0, 1e-5);
  EXPECT_NEAR(heightAt(fit, {3, 0.0}), 2.2, 1e-5);
  EXPECT_NEAR(heightAt(fit, {3, 4.0}), 2.2, 1e-5);
}

TEST(CeilingFit, FindsAValleyAndASlopeThatMeetsALevelPart) {
  std::vector<At> valley;
  std::vector<At> attic;
  for (const double x : {0.5, 3.0, 5.5})
    for (const double y : {0.3, 0.9, 1.6, 2.6, 3.2, 3.7}) {
      valley.push_back({x, y, 2.4 + 0.2 * std::abs(y - 2)});
      attic.push_back({x, y, std::min(2.5, 1.5 + 0.5 * y)});
    }
  EXPECT_NEAR(heightAt(fitted(valley), {2, 2}), 2.4, 1e-4);
  EXPECT_NEAR(heightAt(fitted(valley), {2, 4}), 2.8, 1e-4);
  EXPECT_NEAR(heightAt(fitted(attic), {2, 1}), 2.0, 1e-4);
  EXPECT_NEAR(heightAt(fitted(attic), {2, 3}), 2.5, 1e-4);
}

TEST(CeilingFit, TakesTheLowerOfTwoThatDiffer) {
  const CeilingFit fit = fitted({{1, 1, 2.2}, {5, 3, 2.8}});
  EXPECT_EQ(heightAt(fit, {5, 3}), 2.2);
  EXPECT_TRUE(hasNote(fit, "cannot tell a slope from a step"));
}

TEST(CeilingFit, TakesNoRidgeForAFewMillimetres) {
  // The middle reading is 10 mm high: plaster, or the laser. A ridge would fit better, and be nothing.
  const CeilingFit fit = fitted({{0, 0, 2.412}, {6, 0, 2.408}, {6, 4, 2.59}, {0, 4, 2.592}, {3, 2, 2.510}});
  EXPECT_EQ(fit.shape, CeilingShape::Sloped);
}

TEST(CeilingFit, NamesTheOneReadingThatIsMisread) {
  // Digits swapped: 2.04 for 2.40. The ceiling stays on the safe side until it is read again.
  const CeilingFit low = fitted({{0, 0, 2.40}, {6, 0, 2.403}, {6, 4, 2.04}, {0, 4, 2.40}});
  ASSERT_EQ(low.suspicious.size(), 1u);
  EXPECT_NE(low.suspicious[0].find("2.040 m"), std::string::npos) << low.suspicious[0];
  EXPECT_NEAR(heightAt(low, {1, 1}), 2.04, 1e-9);
  // A whole metre too high over a slope: the others are taken.
  const CeilingFit high =
      fitted({{0, 0, 2.4}, {6, 0, 2.4}, {6, 4, 2.8}, {0, 4, 2.8}, {3, 2, 3.6}, {2, 1, 2.5}, {4, 3, 2.7}});
  ASSERT_EQ(high.suspicious.size(), 1u);
  EXPECT_NE(high.suspicious[0].find("set aside"), std::string::npos) << high.suspicious[0];
  EXPECT_NEAR(heightAt(high, {3, 2}), 2.6, 0.002);
  // Two pairs say nothing of which is right.
  EXPECT_TRUE(fitted({{0, 0, 2.4}, {6, 0, 2.1}, {6, 4, 2.4}, {0, 4, 2.1}}).suspicious.empty());
}

TEST(CeilingFit, DoubtsReadingsOutsideTheWalls) {
  EXPECT_TRUE(fitted({{6.05, 4, 2.4}}).suspicious.empty());
  ASSERT_EQ(fitted({{2, 9, 2.4}}).suspicious.size(), 1u);
}

TEST(CeilingFit, SaysWhenOnlyOneReadingMakesASecondPart) {
  const CeilingFit fit = fitted({{1, 1, 2.4}, {5, 1, 2.401}, {3, 2, 2.4}, {1, 3, 2.399}, {5.8, 3.8, 2.04}});
  // Four others agree, so it is named with what they make of it; it is planned with all the same.
  ASSERT_EQ(fit.suspicious.size(), 1u);
  EXPECT_NE(fit.suspicious[0].find("was read as 2.040 m, and the others make it 2.400 m"), std::string::npos)
      << fit.suspicious[0];
  EXPECT_NEAR(heightAt(fit, {5.9, 3.9}), 2.04, 1e-6);
  // Two beside it are too few to doubt it.
  EXPECT_TRUE(fitted({{1, 1, 2.4}, {1, 3, 2.4}, {5.8, 3.8, 2.04}}).suspicious.empty());
}

TEST(CeilingFit, MakesNoSlopeOfReadingsThatStandSideBySide) {
  // Walls as they are measured are not quite parallel: two readings along one are no two places across it.
  const Ring floor{{0, 0},           {6.9994, 0},      {6.9996, 3.0002},
                   {3.9991, 2.9995}, {3.9982, 5.5013}, {-0.0003, 5.4994}};
  for (const double wrong : {0.1, -0.1}) {
    const CeilingFit fit = fitted(
        {{1, 1, 2.41}, {6, 1, 2.41 + wrong}, {1, 5, 2.41}, {3.5, 2.5, 2.41}, {6, 2.5, 2.41}, {2, 4, 2.41}},
        floor);
    for (const CeilingPart& part : fit.parts) EXPECT_LT(part.slope.norm(), 1);
    ASSERT_EQ(fit.suspicious.size(), 1u) << wrong;
    EXPECT_NE(fit.suspicious[0].find("at 6.000 m, 1.000 m was read as " +
                                     std::string(wrong > 0 ? "2.510" : "2.310")),
              std::string::npos)
        << fit.suspicious[0];
  }
}

// What is read with the noise that instruments promise is found again within a few of their sigmas.
TEST(CeilingFit, FindsShapesThroughNoise) {
  std::mt19937 random(5);
  std::normal_distribution<double> noise(0, 0.0025);
  std::uniform_real_distribution<double> x(0.2, 5.8);
  std::uniform_real_distribution<double> y(0.2, 3.8);
  int level = 0;
  int sloped = 0;
  for (int round = 0; round < 200; ++round) {
    std::vector<At> flat;
    std::vector<At> tilted;
    for (int i = 0; i < 8; ++i) {
      const Vec2 p(x(random), y(random));
      flat.push_back({p.x(), p.y(), 2.45 + noise(random)});
      tilted.push_back({p.x(), p.y(), 2.45 + 0.15 * p.y() + noise(random)});
    }
    level += std::abs(heightAt(fitted(flat), {3, 2}) - 2.45) < 0.01;
    sloped += std::abs(heightAt(fitted(tilted), {3, 2}) - 2.75) < 0.01;
  }
  EXPECT_GE(level, 190);
  EXPECT_GE(sloped, 190);
}

}  // namespace
}  // namespace baywright
