// SPDX-License-Identifier: Apache-2.0
#include "drawing/worsening.h"

#include <gtest/gtest.h>

namespace baywright {
namespace {

Finding finding(const std::string& key, Verdict verdict, double margin) {
  Finding result;
  result.key = key;
  result.verdict = verdict;
  result.margin = Uncertain{margin, 0.01};
  return result;
}

Assessment of(std::vector<Finding> findings) {
  Assessment assessment;
  assessment.findings = std::move(findings);
  return assessment;
}

TEST(Worsening, IsNothingWhereNothingGotWorse) {
  const Assessment before = of({finding("a", Verdict::Blocked, -0.2), finding("b", Verdict::Clear, 0.5)});
  EXPECT_EQ(worsening(before, before), nullptr);
  EXPECT_EQ(worsening(before, of({finding("a", Verdict::Blocked, -0.1), finding("b", Verdict::Clear, 0.3)})),
            nullptr);
}

TEST(Worsening, NamesTheWorstVerdictFirst) {
  const Assessment before = of({finding("a", Verdict::Clear, 0.3), finding("b", Verdict::Tight, 0.01)});
  const Assessment now = of({finding("a", Verdict::Blocked, -0.01), finding("b", Verdict::Tight, 0.001)});
  ASSERT_NE(worsening(before, now), nullptr);
  EXPECT_EQ(worsening(before, now)->key, "a");
}

TEST(Worsening, NamesTheGreatestLossAmongEquals) {
  const Assessment before = of({finding("a", Verdict::Blocked, -0.1), finding("b", Verdict::Blocked, -0.1)});
  const Assessment now = of({finding("a", Verdict::Blocked, -0.12), finding("b", Verdict::Blocked, -0.3)});
  EXPECT_EQ(worsening(before, now)->key, "b");
}

TEST(Worsening, CountsAFindingThatWasNotThere) {
  const Assessment now = of({finding("new", Verdict::Tight, 0.001)});
  EXPECT_EQ(worsening(of({}), now)->key, "new");
}

}  // namespace
}  // namespace baywright
