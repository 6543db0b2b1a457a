// SPDX-License-Identifier: Apache-2.0
#include "survey/advice.h"

#include <gtest/gtest.h>

#include "survey_list.h"

namespace baywright {
namespace {

using testing::readOff;
using testing::SurveyList;

const Ring kRectangle{{0, 0}, {6, 0}, {6, 4}, {0, 4}};
const Ring kLShape{{0, 0}, {7, 0}, {7, 3}, {4, 3}, {4, 5.5}, {0, 5.5}};

std::optional<ReadingAdvice> advised(const SurveyList& list) {
  const SurveyNetwork network = list.network();
  return adviseReading(network, *adjust(network), Instrument::Laser, UnitSystem{});
}

double worst(const SurveyList& list) {
  double most = 0;
  const auto made = adjust(list.network());
  for (const AdjustedCorner& corner : made->corners) most = std::max(most, corner.ellipse.major);
  return most;
}

TEST(ReadingAdvice, AsksForADiagonalWhereRightAnglesAreAssumed) {
  const auto advice = advised(readOff(kRectangle));
  ASSERT_TRUE(advice.has_value());
  EXPECT_TRUE(advice->what == "diagonal A-C" || advice->what == "diagonal B-D") << advice->what;
  EXPECT_GT(advice->ellipseNow, 0.03);
  EXPECT_LT(advice->ellipseThen, 0.2 * advice->ellipseNow);
  EXPECT_NE(advice->sentence.find("is weak"), std::string::npos);
}

TEST(ReadingAdvice, KeepsItsPromise) {
  const SurveyList list = readOff(kLShape, {"AC", "AD", "BD"});
  const auto advice = advised(list);
  ASSERT_TRUE(advice.has_value());
  SurveyList more = list;
  const auto at = [&](Id id) { return kLShape[id.value - 1]; };
  more.add(MeasurementKind::Diagonal, advice->from, advice->to, {},
           (at(advice->to) - at(advice->from)).norm());
  EXPECT_NEAR(worst(more), advice->ellipseThen, 1e-5);
}

TEST(ReadingAdvice, TakesTheBestOfAll) {
  const SurveyList list = readOff(kLShape, {"AC", "AD", "BD"});
  const double promised = advised(list)->ellipseThen;
  for (const char* pair : {"AE", "BE", "DF", "BF"}) {
    SurveyList more = readOff(kLShape, {"AC", "AD", "BD", pair});
    EXPECT_GE(worst(more), promised - 1e-5) << pair;
  }
}

TEST(ReadingAdvice, GoesOnUntilEveryCornerIsGood) {
  SurveyList list = readOff(kLShape);
  const auto at = [&](Id id) { return kLShape[id.value - 1]; };
  for (int round = 0; round < 8 && worst(list) > kGoodEnough; ++round) {
    const auto advice = advised(list);
    ASSERT_TRUE(advice.has_value()) << "after " << round;
    list.add(MeasurementKind::Diagonal, advice->from, advice->to, {},
             (at(advice->to) - at(advice->from)).norm());
  }
  EXPECT_LE(worst(list), kGoodEnough);
}

TEST(ReadingAdvice, NeverAsksForALineThroughAWall) {
  // Corners C and E of the L do not see each other.
  SurveyList list = readOff(kLShape, {"AC"});
  for (int round = 0; round < 12; ++round) {
    const auto advice = advised(list);
    if (!advice) break;
    EXPECT_NE(advice->what, "diagonal C-E");
    const auto at = [&](Id id) { return kLShape[id.value - 1]; };
    list.add(MeasurementKind::Diagonal, advice->from, advice->to, {},
             (at(advice->to) - at(advice->from)).norm());
  }
}

TEST(ReadingAdvice, AsksForAHeldCheckWhenEveryCornerIsGood) {
  const auto advice = advised(readOff(kRectangle, {"AC"}));
  ASSERT_TRUE(advice.has_value());
  EXPECT_EQ(advice->what, "diagonal B-D");
}

}  // namespace
}  // namespace baywright
