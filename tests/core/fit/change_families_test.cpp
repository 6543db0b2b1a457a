// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "clearance/assess.h"
#include "fit/change_family.h"
#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

Finding swingAgainst(const Job& job, const std::string& tail) {
  for (const Finding& finding : assess(job).findings) {
    if (finding.key.ends_with(tail)) return finding;
  }
  ADD_FAILURE() << "No finding ends with " << tail;
  return {};
}

bool offers(const std::vector<ChangeFamily>& families, ChangeKind kind) {
  return std::any_of(families.begin(), families.end(), [&](const ChangeFamily& f) { return f.kind == kind; });
}

TEST(ChangeFamilies, OfferWhatCanMatter) {
  const Job job = roomyHall().bayAt(10, 7.7, 0).job();
  const auto wall = changeFamilies(job, swingAgainst(job, "/wall"));
  EXPECT_TRUE(offers(wall, ChangeKind::MoveBay));
  EXPECT_TRUE(offers(wall, ChangeKind::TurnBay));
  EXPECT_TRUE(offers(wall, ChangeKind::MoveStrikePoint));
  EXPECT_TRUE(offers(wall, ChangeKind::ShorterClub));
  EXPECT_FALSE(offers(wall, ChangeKind::LowerFrame));
  const auto frame = changeFamilies(job, swingAgainst(job, "frame_fit/above"));
  EXPECT_TRUE(offers(frame, ChangeKind::LowerFrame));
  const auto coverage = changeFamilies(job, swingAgainst(job, "picture_fill/coverage"));
  EXPECT_TRUE(offers(coverage, ChangeKind::MoveProjector));
  EXPECT_FALSE(offers(coverage, ChangeKind::MoveBay));
}

TEST(ChangeFamilies, ApplyWhatTheirSentenceSays) {
  const Job job = roomyHall().inUnits(LengthUnit::Millimetres).bayAt(10, 7.7, 0).job();
  for (const ChangeFamily& family : changeFamilies(job, swingAgainst(job, "/wall"))) {
    if (family.kind != ChangeKind::MoveBay) continue;
    const Result<Job> moved = family.apply(job, 0.07);
    ASSERT_TRUE(moved);
    EXPECT_NEAR((moved->option().placement.bay.origin - job.option().placement.bay.origin).norm(), 0.07,
                1e-12);
    EXPECT_NE(family.sentence(0.07).find("70 mm"), std::string::npos) << family.sentence(0.07);
  }
}

TEST(ChangeFamilies, TurnAboutTheStrikePoint) {
  const Job job = roomyHall().bayAt(10, 7.7, 0.4).job();
  const auto strike = [](const Job& j) {
    const Placement& p = j.option().placement;
    return worldFromBay(p.bay, p.strikePoint(Hand::Right));
  };
  for (const ChangeFamily& family : changeFamilies(job, swingAgainst(job, "/wall"))) {
    if (family.kind != ChangeKind::TurnBay) continue;
    EXPECT_NEAR((strike(*family.apply(job, 0.1)) - strike(job)).norm(), 0, 1e-9);
  }
}

}  // namespace
}  // namespace baywright
