// SPDX-License-Identifier: Apache-2.0
#include "survey/blunder_test_sets.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "survey/blunder_test.h"
#include "survey/blunder_test_consensus.h"
#include "survey_list.h"

namespace baywright {
namespace {

using testing::readOff;
using testing::SurveyList;

const Ring kCut{{0, 0}, {6, 0}, {6, 3}, {4.5, 4.5}, {0, 4.5}};

SurveyList wellChecked() {
  SurveyList list = readOff(kCut, {"AC", "AD", "BD", "BE", "CE"});
  return list.angle('A', 90).angle('B', 90).angle('C', 135).angle('D', 135).angle('E', 90);
}

// The slow twin: each set taken out in turn and the rest adjusted.
TEST(LikeliestSets, AreThoseWithoutWhichTheAdjustmentFitsBest) {
  SurveyList list = wellChecked();
  for (std::size_t i = 0; i < list.readings.size(); ++i)
    list.readings[i].value += (i % 3 == 0 ? 0.0007 : i % 3 == 1 ? -0.0004 : 0.0002);
  list.readings[1].value += 0.01;
  list.readings[7].value -= 0.008;
  const SurveyNetwork network = list.network();
  double best = 1e300;
  std::vector<Id> bestPair;
  for (std::size_t i = 0; i < list.readings.size(); ++i)
    for (std::size_t j = i + 1; j < list.readings.size(); ++j) {
      const std::vector<Id> pair{list.readings[i].id, list.readings[j].id};
      const auto rest = adjust(detail::without(network, pair), kCut);
      if (!rest || rest->weightedSquares >= best) continue;
      best = rest->weightedSquares;
      bestPair = pair;
    }
  const auto sets = detail::likeliestSets(network, kCut, 2, 3);
  ASSERT_EQ(sets.size(), 3u);
  EXPECT_EQ(sets[0], bestPair);
  EXPECT_EQ(bestPair, (std::vector<Id>{list.readings[1].id, list.readings[7].id}));
}

TEST(LikeliestSets, DoNotDependOnWhereTheFloorLies) {
  SurveyList list = wellChecked();
  list.readings[2].value += 0.3;
  Ring turned = kCut;
  for (Vec2& corner : turned) corner = Vec2(7 - corner.y(), 3 + corner.x());
  const auto here = detail::likeliestSets(list.network(), kCut, 2, 4);
  EXPECT_EQ(here, detail::likeliestSets(list.network(), turned, 2, 4));
  EXPECT_EQ(detail::likeliestSets(list.network(), kCut, 1, 1).at(0), std::vector<Id>{list.readings[2].id});
}

TEST(LikeliestSets, AreNoneWhereReadingsLeaveCornersOpen) {
  EXPECT_TRUE(detail::likeliestSets(readOff(kCut).network(), kCut, 1, 3).empty());
}

TEST(Consensus, FindsErrorsThatHideEachOther) {
  // Dropping the reading that stands out most, again and again, would blame three good ones.
  SurveyList list = wellChecked();
  list.readings[0].value += 0.3;   // wall A
  list.readings[9].value -= 0.31;  // diagonal C-E
  const SurveyNetwork network = list.network();
  const auto made = detail::consensusOf(network, {}, kMostBlunders);
  ASSERT_TRUE(made);
  EXPECT_EQ(made->out.size(), 2u);
  for (const std::size_t wrong : {0u, 9u})
    EXPECT_NE(std::find(made->out.begin(), made->out.end(), list.readings[wrong].id), made->out.end())
        << wrong;
  for (std::size_t i = 0; i < kCut.size(); ++i)
    EXPECT_LT((made->rest.corners[i].position - kCut[i]).norm(), 1e-5) << i;
}

}  // namespace
}  // namespace baywright
