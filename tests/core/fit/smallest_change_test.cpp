// SPDX-License-Identifier: Apache-2.0
#include "fit/smallest_change.h"

#include <algorithm>

#include "clearance/assess.h"
#include "job/edit.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

std::string keyEndingWith(const Job& job, const std::string& tail) {
  for (const Finding& finding : assess(job).findings) {
    if (finding.key.ends_with(tail)) return finding.key;
  }
  ADD_FAILURE() << "No finding ends with " << tail;
  return {};
}

Job tooNearTheWall() {
  return roomyHall().inUnits(LengthUnit::Millimetres).bayAt(10, 7.7, 0).withoutMonitor().job();
}

TEST(SmallestChange, ClearsTheFindingAndBlocksNothingElse) {
  const Job job = tooNearTheWall();
  const std::string key = keyEndingWith(job, "/wall");
  const Assessment before = assess(job);
  const auto changes = smallestChanges(job, key, {});
  ASSERT_TRUE(changes) << changes.error().sentence();
  ASSERT_FALSE(changes->empty());
  for (const Change& change : *changes) {
    const Assessment after = assess(change.job);
    const Finding* finding = after.find(key);
    EXPECT_TRUE(!finding || finding->verdict == Verdict::Clear) << change.sentence;
    for (const Finding& other : after.findings) {
      if (other.verdict != Verdict::Blocked) continue;
      const Finding* was = before.find(other.key);
      EXPECT_TRUE(was && was->verdict == Verdict::Blocked) << change.sentence << " blocks " << other.key;
    }
  }
}

TEST(SmallestChange, IsTheSmallest) {
  const Job job = tooNearTheWall();
  const std::string key = keyEndingWith(job, "/wall");
  const auto changes = smallestChanges(job, key, {});
  ASSERT_TRUE(changes);
  const auto move = std::find_if(changes->begin(), changes->end(),
                                 [](const Change& c) { return c.kind == ChangeKind::MoveBay; });
  ASSERT_NE(move, changes->end());
  // Away from wall C, 10 mm less must not do.
  const double less = move->amount - 0.010;
  const Vec2 way = (move->job.option().placement.bay.origin - job.option().placement.bay.origin).normalized();
  const Job nearly = *moveBay(job, less * way);
  const Finding still = *assess(nearly).find(key);
  EXPECT_NE(still.verdict, Verdict::Clear);
  EXPECT_NE(move->sentence.find("Move the bay"), std::string::npos);
}

TEST(SmallestChange, OffersOneOfAKindSmallMovesFirst) {
  const Job job = tooNearTheWall();
  const auto changes = smallestChanges(job, keyEndingWith(job, "/wall"), {});
  ASSERT_TRUE(changes);
  std::vector<ChangeKind> kinds;
  for (const Change& change : *changes) {
    EXPECT_EQ(std::find(kinds.begin(), kinds.end(), change.kind), kinds.end());
    kinds.push_back(change.kind);
  }
  EXPECT_NE(kinds.front(), ChangeKind::ShorterClub);
}

TEST(SmallestChange, LowersAFrameUnderALowCeiling) {
  const Job job = garage(9, 7)
                      .inUnits(LengthUnit::Millimetres)
                      .withCeiling(2.5)
                      .bayAt(7, 3.5, 0)
                      .withFrame(3.2, 2.5)
                      .withScreen(3.0, 2.25)
                      .withoutProjector()
                      .job();
  const auto changes = smallestChanges(job, "frame_fit/above", {});
  ASSERT_TRUE(changes) << changes.error().sentence();
  ASSERT_EQ(changes->size(), 1u);
  EXPECT_EQ(changes->front().kind, ChangeKind::LowerFrame);
  EXPECT_NEAR(changes->front().amount, 0.09, 1e-9);  // 76 mm and 1.96 times 5 mm, rounded up to 10 mm
}

TEST(SmallestChange, IsTheSameEachTime) {
  const Job job = tooNearTheWall();
  const std::string key = keyEndingWith(job, "/wall");
  const auto first = smallestChanges(job, key, {});
  const auto second = smallestChanges(job, key, {});
  ASSERT_EQ(first->size(), second->size());
  for (std::size_t i = 0; i < first->size(); ++i) {
    EXPECT_EQ((*first)[i].sentence, (*second)[i].sentence);
    EXPECT_EQ((*first)[i].job, (*second)[i].job);
  }
}

TEST(SmallestChange, RefusesWhatNeedsNoHelp) {
  const Job job = roomyHall().job();
  EXPECT_FALSE(smallestChanges(job, "no/such/finding", {}));
  EXPECT_FALSE(smallestChanges(job, keyEndingWith(job, "/wall"), {}));
}

TEST(SmallestChange, StopsWhenAskedTo) {
  const Job job = tooNearTheWall();
  Progress progress;
  progress.cancelled = [] { return true; };
  const auto changes = smallestChanges(job, keyEndingWith(job, "/wall"), progress);
  ASSERT_TRUE(changes);
  EXPECT_TRUE(changes->empty());
}

// 60 lx of room light on a screen that takes less for the wanted contrast: dimming comes first, and is
// enough.
TEST(SmallestChange, DimsTheLightsWhereContrastIsMissing) {
  const Job job = roomyHall().with([](Job& j) { j.requirements.ambient = 60; }).job();
  const auto changes = smallestChanges(job, "picture_brightness/contrast", {});
  ASSERT_TRUE(changes) << changes.error().sentence();
  ASSERT_FALSE(changes->empty());
  const Change& dim = changes->front();
  EXPECT_EQ(dim.kind, ChangeKind::DimLights);
  EXPECT_NEAR(dim.job.requirements.ambient, 60 - dim.amount, 1e-12);
  EXPECT_NE(dim.sentence.find("Dim the lights"), std::string::npos) << dim.sentence;
  Job less = job;
  less.requirements.ambient = 60 - dim.amount + 1;
  const auto verdictAt = [](const Job& j) { return assess(j).find("picture_brightness/contrast")->verdict; };
  EXPECT_EQ(verdictAt(dim.job), Verdict::Clear);
  EXPECT_NE(verdictAt(less), Verdict::Clear);
}

// A projector that could fill the screen from where it hangs, but is zoomed in: setting it is enough.
TEST(SmallestChange, AimsAProjectorThatCouldDoFromWhereItHangs) {
  const Job job = roomyHall()
                      .withFrame(3.6, 2.5)
                      .withScreen(3.2, 1.8, 0.3)
                      .withProjector(1.0, {-3.2, 0, 2.1})
                      .with([](Job& j) {
                        j.options[0].kit.projector.throwMin = 0.9;
                        j.options[0].kit.projector.throwMax = 1.1;
                        j.options[0].placement.projector.throwRatio = 1.1;
                      })
                      .job();
  const auto changes = smallestChanges(job, "picture_fill/coverage", {});
  ASSERT_TRUE(changes) << changes.error().sentence();
  ASSERT_FALSE(changes->empty());
  EXPECT_EQ(changes->front().kind, ChangeKind::AimProjector);
  EXPECT_NE(changes->front().sentence.find("Set the projector to a throw ratio of 1.0"), std::string::npos)
      << changes->front().sentence;
  EXPECT_EQ(assess(changes->front().job).find("picture_fill/coverage")->verdict, Verdict::Clear);
}

}  // namespace
}  // namespace baywright
