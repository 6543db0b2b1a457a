// SPDX-License-Identifier: Apache-2.0
#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

Finding bystanderAt(const Vec2& place) {
  const Job job = roomyHall().withBystander(place).job();
  return findingOf(job, "bystander_safety/" + std::to_string(job.bystanders[0].id.value));
}

TEST(BystanderSafety, AllowsNobodyBetweenBallAndScreen) {
  const Finding finding = bystanderAt({8, 4.5});
  EXPECT_EQ(finding.verdict, Verdict::Blocked);
  EXPECT_TRUE(contains(finding.sentence, "Onlooker")) << finding.sentence;
}

TEST(BystanderSafety, AllowsNobodyWhereAShankGoes) {
  // The ball lies at (5.5, 4.5); 60 degrees to the right of the shot, 2 m away.
  const Vec2 place(5.5 + 2 * std::cos(60_deg), 4.5 - 2 * std::sin(60_deg));
  EXPECT_EQ(bystanderAt(place).verdict, Verdict::Blocked);
}

TEST(BystanderSafety, AllowsPeopleWellBehindTheGolfer) {
  const Finding finding = bystanderAt({1.0, 4.5});
  EXPECT_EQ(finding.verdict, Verdict::Clear);
  EXPECT_GT(finding.margin->value, 0.5);
}

TEST(BystanderSafety, SaysNothingWhereNobodyStands) {
  for (const Finding& finding : assess(roomyHall().job()).findings)
    EXPECT_NE(finding.check, "bystander_safety");
}

}  // namespace
}  // namespace baywright
