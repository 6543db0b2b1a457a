// SPDX-License-Identifier: Apache-2.0
#include "clearance/collect.h"

#include <algorithm>
#include <set>

#include "findings.h"

namespace baywright {
namespace {

using namespace testing;

Finding findingWith(const char* key, Verdict verdict, std::optional<Uncertain> margin) {
  Finding finding;
  finding.key = key;
  finding.verdict = verdict;
  finding.margin = margin;
  return finding;
}

TEST(Collect, ShowsTheWorstFirst) {
  const Finding blocked = findingWith("z", Verdict::Blocked, Uncertain{-0.01, 0.05});
  const Finding tight = findingWith("a", Verdict::Tight, Uncertain{0.01, 0.05});
  const Finding unknown = findingWith("b", Verdict::Unknown, std::nullopt);
  const Finding clear = findingWith("c", Verdict::Clear, Uncertain{1, 0.05});
  EXPECT_TRUE(isShownBefore(blocked, tight));
  EXPECT_TRUE(isShownBefore(tight, unknown));
  EXPECT_TRUE(isShownBefore(unknown, clear));
}

TEST(Collect, OrdersWithinAVerdictByDoubtThenByKey) {
  EXPECT_TRUE(isShownBefore(findingWith("b", Verdict::Clear, Uncertain{0.5, 0.1}),
                            findingWith("a", Verdict::Clear, Uncertain{0.5, 0.01})));
  EXPECT_TRUE(isShownBefore(findingWith("a", Verdict::Clear, Uncertain{0.5, 0.1}),
                            findingWith("b", Verdict::Clear, Uncertain{0.5, 0.1})));
}

TEST(Collect, CountsAndFinds) {
  const Job job = roomyHall().bayAt(10, 7.9, 0).job();
  const Assessment assessment = assess(job);
  int all = 0;
  for (const Verdict verdict : {Verdict::Clear, Verdict::Unknown, Verdict::Tight, Verdict::Blocked})
    all += assessment.count(verdict);
  EXPECT_EQ(all, static_cast<int>(assessment.findings.size()));
  EXPECT_GT(assessment.count(Verdict::Blocked), 0);
  EXPECT_EQ(assessment.find("nothing/of/the/kind"), nullptr);
}

TEST(Collect, GivesASwingItsWorstVerdictAndMoment) {
  const Job job = roomyHall().bayAt(10, 7.9, 0).job();
  const Assessment assessment = assess(job);
  ASSERT_EQ(assessment.swings.size(), 1u);
  EXPECT_EQ(assessment.swings[0].verdict, Verdict::Blocked);
  const auto worst = std::find_if(assessment.findings.begin(), assessment.findings.end(),
                                  [](const Finding& f) { return f.check.starts_with("swing_"); });
  EXPECT_EQ(assessment.swings[0].worstMoment, worst->moment.value());
}

TEST(Collect, KeysAndFiguresAreNeverGivenTwice) {
  const Job job = roomyHall()
                      .withGolfer(1.6, Hand::Left, "Kim")
                      .withClub()
                      .withClub(0.95, 1.08, "Seven-iron")
                      .withShelf("A", 2, 2, 0.4, 1.9)
                      .withDoor("D", 2)
                      .withBystander({2, 2})
                      .job();
  const Assessment assessment = assess(job);
  std::set<std::string> keys;
  for (const Finding& finding : assessment.findings)
    EXPECT_TRUE(keys.insert(finding.key).second) << finding.key;
  for (std::size_t i = 1; i < assessment.quantities.size(); ++i) {
    EXPECT_LT(assessment.quantities[i - 1].name, assessment.quantities[i].name);
  }
}

TEST(Collect, FindingsAreComplete) {
  for (const Finding& finding : assess(roomyHall().withDoor("D", 2).withBystander({2, 2}).job()).findings) {
    EXPECT_FALSE(finding.sentence.empty()) << finding.key;
    EXPECT_FALSE(finding.source.empty()) << finding.key;
    EXPECT_FALSE(finding.subject.empty()) << finding.key;
    EXPECT_TRUE(finding.key.starts_with(finding.check + "/")) << finding.key;
    EXPECT_EQ(finding.sentence.back(), '.') << finding.sentence;
    EXPECT_EQ(finding.margin.has_value(), finding.verdict != Verdict::Unknown) << finding.key;
  }
}

TEST(SwingZone, MapsItsFrameToTheWorld) {
  const Job job = roomyHall().bayAt(10, 4.5, 90_deg).job();
  const SwingZone zone = assess(job).swings[0];
  // Toward the target is the way the shot flies, here along y.
  const Vec3 ahead = worldFromSwing(zone, {1, 0, 0}) - zone.strikePoint;
  EXPECT_NEAR((ahead - Vec3(0, 1, 0)).norm(), 0, 1e-12);
  EXPECT_NEAR(zone.strikePoint.z(), job.option().kit.mat.thickness, 1e-12);
}

}  // namespace
}  // namespace baywright
