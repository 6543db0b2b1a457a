// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "clearance/assess.h"
#include "exchange/scan_import.h"
#include "geometry/frames.h"
#include "job/edit_people.h"
#include "scan_files.h"
#include "survey/take_room.h"

namespace baywright {
namespace {

using namespace testing;

/// A closed room of 9 by 7 by 3.4 m, every 4 cm a point, with a pole of 10 cm on its floor where one is asked
/// for.
std::vector<Vec3> hall(const std::optional<Vec2>& pole) {
  constexpr double kStep = 0.04;
  std::vector<Vec3> points;
  for (double x = kStep / 2; x < 9; x += kStep) {
    for (double y = kStep / 2; y < 7; y += kStep)
      for (const double z : {0.0, 3.4}) points.emplace_back(x, y, z);
    for (double z = kStep / 2; z < 3.4; z += kStep)
      for (const double y : {0.0, 7.0}) points.emplace_back(x, y, z);
  }
  for (double y = kStep / 2; y < 7; y += kStep)
    for (double z = kStep / 2; z < 3.4; z += kStep)
      for (const double x : {0.0, 9.0}) points.emplace_back(x, y, z);
  if (!pole) return points;
  for (double z = 0; z < 3.4; z += 0.02)
    for (int i = 0; i < 12; ++i) {
      const double angle = i * kPi / 6;
      points.push_back(raised(Vec2(*pole + 0.05 * Vec2(std::cos(angle), std::sin(angle))), z));
    }
  return points;
}

/// The job of a scan that was read, recognised and taken, but for the boxes that were made of it: only the
/// scan itself is left to meet.
Job jobOfScan(const std::optional<Vec2>& pole) {
  auto made = recogniseScan("hall.ply", plyCloud(hall(pole)), {DrawingUnit::Metres, UpAxis::PlusZ}, {});
  EXPECT_TRUE(made) << made.error().sentence();
  made->room.fixtures.clear();
  auto job = takeRoom(starterJob(), *made);
  EXPECT_TRUE(job) << job.error().sentence();
  Golfer golfer;
  golfer.name = "Robin";
  golfer.clubs = {Club{}};
  job = addGolfer(std::move(*job), golfer);
  EXPECT_TRUE(job) << job.error().sentence();
  return *job;
}

/// The worst margin of any swing against the scan itself.
std::optional<Finding> worstAgainstScan(const Job& job) {
  std::optional<Finding> worst;
  for (const Finding& finding : assess(job).findings) {
    const bool isOfScan = std::find(finding.subjects.begin(), finding.subjects.end(), job.roomScans[0].id) !=
                          finding.subjects.end();
    if (!isOfScan || !finding.check.starts_with("swing") || !finding.margin) continue;
    if (!worst || finding.margin->value < worst->margin->value) worst = finding;
  }
  return worst;
}

TEST(ScanClearance, ASwingMeetsAPoleThatOnlyTheScanShows) {
  const Job empty = jobOfScan(std::nullopt);
  const auto free = worstAgainstScan(empty);
  ASSERT_TRUE(free);
  EXPECT_NE(free->verdict, Verdict::Blocked) << free->sentence;
  // A metre behind the ball, away from the screen, where the club swings back.
  const Placement& placement = empty.option().placement;
  Vec3 behind = placement.strikePoint(Hand::Right);
  behind.x() -= 1.0;
  const Vec2 pole = flat(worldFromBay(placement.bay, behind));
  const Job job = jobOfScan(pole);
  ASSERT_LT((job.option().placement.bay.origin - placement.bay.origin).norm(), 1e-6);
  EXPECT_TRUE(job.room.fixtures.empty());
  const auto met = worstAgainstScan(job);
  ASSERT_TRUE(met);
  EXPECT_EQ(met->verdict, Verdict::Blocked) << met->sentence;
  ASSERT_TRUE(met->points);
  EXPECT_LT((flat(met->points->second) - pole).norm(), 0.15) << met->sentence;
}

}  // namespace
}  // namespace baywright
