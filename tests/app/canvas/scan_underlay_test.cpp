// SPDX-License-Identifier: Apache-2.0
#include "canvas/scan_underlay.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "support/job_builder.h"

namespace baywright {
namespace {

using namespace testing;

/// A room of 4 by 3 m whose wall B, at x = 4 m, was scanned; the other walls were not.
Job scannedJob() {
  Job job = garage(4, 3).withCeiling(2.5).job();
  std::vector<Eigen::Vector3f> points;
  for (int i = 0; i < 300; ++i) {
    for (int k = 0; k < 250; ++k)
      points.emplace_back(4.0F, (static_cast<float>(i) + 0.5F) / 100, (static_cast<float>(k) + 0.5F) / 100);
  }
  RoomScan scan;
  scan.id = job.takeId();
  scan.name = "Scan";
  scan.points = std::make_shared<const std::vector<Eigen::Vector3f>>(std::move(points));
  job.roomScans = {scan};
  return job;
}

TEST(ScanUnderlay, MakesThePicturesOfVisibleScansForPlanAndWalls) {
  Job job = scannedJob();
  for (const DrawnView view : {DrawnView(ViewKind::Plan), DrawnView(ViewKind::Wall, idNamed(job, "Wall B"))}) {
    ScanUnderlay underlay;
    const QSignalSpy ready(&underlay, &ScanUnderlay::ready);
    underlay.follow(view, job);
    underlay.finish();
    EXPECT_EQ(ready.count(), 1);
    ASSERT_EQ(underlay.pictures().size(), 1U);
    EXPECT_EQ(underlay.images(Qt::black).at(0).width(), underlay.pictures()[0].width);
    job.roomScans[0].visible = false;
    underlay.follow(view, job);
    underlay.finish();
    EXPECT_TRUE(underlay.pictures().empty());
    EXPECT_TRUE(underlay.images(Qt::black).empty());
    job.roomScans[0].visible = true;
  }
}

TEST(ScanUnderlay, ShowsNothingOfOneWallUnderAnother) {
  const Job job = scannedJob();
  ScanUnderlay underlay;
  underlay.follow({ViewKind::Wall, idNamed(job, "Wall B")}, job);
  underlay.finish();
  ASSERT_FALSE(underlay.pictures().empty());
  underlay.follow({ViewKind::Wall, idNamed(job, "Wall D")}, job);
  EXPECT_TRUE(underlay.pictures().empty());
  underlay.finish();
  EXPECT_TRUE(underlay.pictures().empty());  // only wall B was scanned
}

TEST(ScanUnderlay, AsksNothingWhileOnlyTheBayMoves) {
  const Job job = scannedJob();
  ScanUnderlay underlay;
  underlay.follow(ViewKind::Plan, job);
  underlay.finish();
  const QSignalSpy ready(&underlay, &ScanUnderlay::ready);
  Job moved = job;
  moved.option().placement.bay.origin += Vec2(0.1, 0);
  underlay.follow(ViewKind::Plan, moved);
  underlay.finish();
  EXPECT_EQ(ready.count(), 0);
}

TEST(ScanUnderlay, LeavesSectionsAndTheScreenAsTheyAre) {
  const Job job = scannedJob();
  ScanUnderlay underlay;
  for (const ViewKind view : {ViewKind::DownRange, ViewKind::Side, ViewKind::ScreenFace})
    underlay.follow(view, job);
  underlay.finish();
  EXPECT_TRUE(underlay.pictures().empty());
}

}  // namespace
}  // namespace baywright
