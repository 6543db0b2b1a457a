// SPDX-License-Identifier: Apache-2.0
#include "survey/blunder_test.h"

#include <gtest/gtest.h>

#include <cmath>

#include "survey_list.h"

namespace baywright {
namespace {

using testing::readOff;
using testing::SurveyList;

const Ring kSkew{{0, 0}, {6, 0}, {6.21, 4.05}, {0.17, 3.92}};
const Ring kLShape{{0, 0}, {7, 0}, {7, 3}, {4, 3}, {4, 5.5}, {0, 5.5}};

BlunderTest tested(const SurveyList& list) {
  const SurveyNetwork network = list.network();
  const auto made = adjust(network);
  EXPECT_TRUE(made.has_value()) << made.error().sentence();
  return testForBlunders(network, *made, UnitSystem{});
}

TEST(BlunderTest, LetsGoodReadingsPass) {
  const BlunderTest test = tested(readOff(kSkew, {"AC", "BD"}));
  EXPECT_TRUE(test.agree);
  EXPECT_TRUE(test.sentences.empty());
}

TEST(BlunderTest, NamesTheWrongReadingAndWhatItShouldBe) {
  // Each reading of a well-checked floor in turn, off by 300 mm.
  const SurveyList good =
      readOff(kLShape, {"AC", "AD", "AE", "BD", "DF", "CF", "BF"}).offset('A', 'E', 5.5).offset('F', 'C', 7);
  for (std::size_t i = 0; i < good.readings.size(); ++i) {
    SurveyList list = good;
    list.readings[i].value += 0.3;
    const BlunderTest test = tested(list);
    ASSERT_FALSE(test.suspicions.empty()) << i;
    bool isNamed = false;
    for (const SuspectReading& suspect : test.suspicions[0].suspects) {
      if (suspect.reading != list.readings[i].id) continue;
      isNamed = true;
      EXPECT_NEAR(suspect.probable.value, good.readings[i].value, 1e-5) << suspect.what;
      EXPECT_NEAR(suspect.error, 0.3, 1e-5);
    }
    EXPECT_TRUE(isNamed) << test.sentences[0];
    EXPECT_EQ(test.suspicions.size(), 1u) << i;
  }
}

TEST(BlunderTest, SaysWhenItCannotTellReadingsApart) {
  // Six lengths for five unknowns: one check, which each reading would explain.
  SurveyList list = readOff(kSkew, {"AC", "BD"});
  list.readings[4].value += 0.2;
  const BlunderTest test = tested(list);
  ASSERT_EQ(test.suspicions.size(), 1u);
  EXPECT_GT(test.suspicions[0].suspects.size(), 1u);
  EXPECT_NE(test.sentences[0].find("cannot tell"), std::string::npos) << test.sentences[0];
  EXPECT_FALSE(test.agree);
}

TEST(BlunderTest, SaysWhichOneItIsIfTheCornersAreSquare) {
  const Ring rectangle{{0, 0}, {6, 0}, {6, 4}, {0, 4}};
  for (std::size_t wrong = 0; wrong < 6; ++wrong) {
    SurveyList list = readOff(rectangle, {"AC", "BD"});
    list.readings[wrong].value += 0.25;
    const BlunderTest test = tested(list);
    ASSERT_FALSE(test.suspicions.empty());
    ASSERT_NE(test.suspicions[0].culprit(), nullptr) << test.sentences[0];
    EXPECT_EQ(test.suspicions[0].culprit()->reading, list.readings[wrong].id) << test.sentences[0];
    EXPECT_NEAR(test.suspicions[0].culprit()->error, 0.25, 1e-6);
  }
}

TEST(BlunderTest, FindsTwoBlundersOneAfterTheOther) {
  SurveyList list =
      readOff(kLShape, {"AC", "AD", "AE", "BD", "DF", "CF", "BF"}).offset('A', 'E', 5.5).offset('F', 'C', 7);
  list.readings[6].value -= 1.0;   // A-C
  list.readings[10].value += 0.1;  // D-F
  const BlunderTest test = tested(list);
  ASSERT_GE(test.suspicions.size(), 2u);
  EXPECT_EQ(test.suspicions[0].suspects[0].what, "diagonal A-C");
  EXPECT_EQ(test.suspicions[1].suspects[0].what, "diagonal D-F");
}

TEST(BlunderTest, SaysOfEachOfThreeWhatTheGoodReadingsMakeOfIt) {
  // With the others still in, each would be pulled off.
  SurveyList list = readOff(kLShape, {"AC", "AD", "AE", "BD", "DF", "CF", "BF", "CE"})
                        .offset('A', 'E', 5.5)
                        .offset('F', 'C', 7)
                        .offset('C', 'F', 2.5)
                        .angle('C', 90)
                        .angle('E', 90);
  list.how = Instrument::Laser;
  const std::vector<std::size_t> wrong{0, 6, 10};
  const SurveyList good = list;
  for (const std::size_t i : wrong) list.readings[i].value += 0.05 * static_cast<double>(i + 2);
  const BlunderTest test = tested(list);
  ASSERT_EQ(test.suspicions.size(), 3u);
  for (const std::size_t i : wrong) {
    const auto named = std::find_if(test.suspicions.begin(), test.suspicions.end(), [&](const Suspicion& s) {
      return s.suspects.front().reading == list.readings[i].id;
    });
    ASSERT_NE(named, test.suspicions.end()) << i;
    EXPECT_NEAR(named->suspects.front().probable.value, good.readings[i].value, 1e-5);
  }
}

TEST(BlunderTest, FindsAReadingThatIsGrosslyWrong) {
  // A decimal point slipped, feet for metres: each reading in turn, the first wall too.
  const SurveyList good = readOff(kLShape, {"AC", "AD", "AE", "BD", "DF", "CF", "BF", "CE"});
  for (const double factor : {10.0, 0.1, 0.3048}) {
    for (std::size_t i = 0; i < good.readings.size(); ++i) {
      SurveyList list = good;
      list.readings[i].value *= factor;
      const SurveyNetwork network = list.network();
      const auto made = adjust(network);
      const auto test = made ? testForBlunders(network, *made, UnitSystem{})
                             : testWhereNothingFits(network, UnitSystem{}).value_or(BlunderTest{});
      ASSERT_FALSE(test.suspicions.empty()) << factor << " " << i;
      const auto& suspects = test.suspicions[0].suspects;
      const auto named = std::find_if(suspects.begin(), suspects.end(), [&](const SuspectReading& suspect) {
        return suspect.reading == list.readings[i].id;
      });
      ASSERT_NE(named, suspects.end()) << factor << " " << test.sentences[0];
      EXPECT_NEAR(named->probable.value, good.readings[i].value, 1e-4) << test.sentences[0];
    }
  }
}

TEST(BlunderTest, SaysThatTheRoomMayNotBeSquareWhereThatWasAssumed) {
  // Opposite walls of a room that is taken as square differ by 300 mm.
  SurveyList list(4);
  list.wall('A', 6.0).wall('B', 4.0).wall('C', 6.3).wall('D', 4.0);
  const BlunderTest test = tested(list);
  ASSERT_FALSE(test.suspicions.empty());
  EXPECT_NE(test.sentences[0].find("not square"), std::string::npos) << test.sentences[0];
}

TEST(BlunderTest, DetectsWhatItSaysItCanDetect) {
  // Four sigmas and a bit show with a chance of 80 % in a reading that all others check.
  AdjustedReading reading;
  reading.sigma = 0.002;
  reading.redundancy = 0.25;
  EXPECT_NEAR(smallestDetectable(reading), 4.13 * 0.002 / 0.5, 1e-12);
  reading.redundancy = 0;
  EXPECT_TRUE(std::isinf(smallestDetectable(reading)));
}

}  // namespace
}  // namespace baywright
