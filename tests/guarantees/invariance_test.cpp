// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "clearance/assess.h"
#include "clearance/free_ways.h"
#include "job/room_geometry.h"
#include "moved_job.h"
#include "random_job.h"

namespace baywright {
namespace {

using namespace testing;

/// Far above what a turn does to doubles, far below what anybody can measure.
constexpr double kSame = 1e-6;
/// Ways are measured among points of outlines, which a turn rounds elsewhere (free_ways.h).
constexpr double kSameWay = 2e-3;

std::string otherHand(std::string key) {
  const auto swap = [&](const std::string& from, const std::string& to) {
    if (const auto at = key.find(from); at != std::string::npos) {
      key.replace(at, from.size(), to);
      return true;
    }
    return false;
  };
  if (key.starts_with("ball_") || key.starts_with("swing_room/outside")) {
    if (!swap("/right", "/left")) swap("/left", "/right");
  }
  return key;
}

bool isWay(const Finding& finding) {
  return finding.key.ends_with("/way") || finding.key.ends_with("/exit");
}

void expectSameVerdicts(const Assessment& before, const Assessment& after, bool mirrored, unsigned seed) {
  ASSERT_EQ(before.findings.size(), after.findings.size()) << "seed " << seed;
  for (const Finding& finding : before.findings) {
    const Finding* same = after.find(mirrored ? otherHand(finding.key) : finding.key);
    ASSERT_NE(same, nullptr) << finding.key << ", seed " << seed;
    ASSERT_EQ(finding.margin.has_value(), same->margin.has_value()) << finding.key;
    if (!finding.margin) continue;
    const double allowed = isWay(finding) ? kSameWay : kSame;
    EXPECT_NEAR(finding.margin->value, same->margin->value, allowed) << finding.key << ", seed " << seed;
    EXPECT_NEAR(finding.margin->sigma, same->margin->sigma, 1e-4) << finding.key << ", seed " << seed;
    EXPECT_TRUE(finding.verdict == same->verdict || std::abs(finding.margin->value) < allowed) << finding.key;
  }
}

TEST(Invariance, TurningAndShiftingEverythingChangesNothing) {
  for (unsigned seed = 1; seed <= 300; ++seed) {
    const Job job = randomJob(seed);
    const Job moved = movedJob(job, {0.7 * seed, {12.5 - seed, 3.25 * seed}});
    expectSameVerdicts(assess(job), assess(moved), false, seed);
  }
}

TEST(Invariance, MirroringEverythingSwapsHandsAndChangesNothingElse) {
  for (unsigned seed = 21; seed <= 320; ++seed) {
    const Job job = randomJob(seed);
    expectSameVerdicts(assess(job), assess(mirroredJob(job)), true, seed);
  }
}

TEST(Invariance, MirroringTwiceIsTheSameJob) {
  const Job job = randomJob(5);
  const Job twice = mirroredJob(mirroredJob(job));
  for (std::size_t i = 0; i < job.room.walls.size(); ++i) {
    EXPECT_EQ(twice.room.walls[i].id, job.room.walls[i].id);
    EXPECT_NEAR((twice.room.walls[i].start - job.room.walls[i].start).norm(), 0, 1e-12);
  }
}

TEST(Invariance, UnitsChangeSentencesOnly) {
  Job job = randomJob(3);
  const Assessment metric = assess(job);
  job.units.length = LengthUnit::FeetInches;
  const Assessment imperial = assess(job);
  ASSERT_EQ(metric.findings.size(), imperial.findings.size());
  for (std::size_t i = 0; i < metric.findings.size(); ++i) {
    EXPECT_EQ(metric.findings[i].key, imperial.findings[i].key);
    EXPECT_EQ(metric.findings[i].margin, imperial.findings[i].margin);
  }
}

}  // namespace
}  // namespace baywright
