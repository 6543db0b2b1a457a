// SPDX-License-Identifier: Apache-2.0
#include "job/edit_scans.h"

#include <gtest/gtest.h>

#include "geometry/mesh.h"

namespace baywright {
namespace {

PlanScan plan() {
  PlanScan scan;
  scan.name = "Ground floor";
  scan.file = std::make_shared<const Blob>(Blob{"plan.png", "bytes"});
  return scan;
}

TEST(PlanScans, AreAddedAndSetById) {
  auto job = addPlanScan(newJob(), plan());
  ASSERT_TRUE(job) << job.error().sentence();
  PlanScan scan = job->planScans[0];
  EXPECT_EQ(scan.id, Id{job->lastId});
  scan.opacity = 0.3;
  EXPECT_EQ(setPlanScan(*job, scan)->planScans[0].opacity, 0.3);
  scan.opacity = -1;
  EXPECT_FALSE(setPlanScan(*job, scan));
}

TEST(PlanScans, RefuseAMapThatSqueezesThePlanFlat) {
  auto job = addPlanScan(newJob(), plan());
  PlanScan scan = job->planScans[0];
  scan.worldFromPixel.setZero();
  EXPECT_FALSE(setPlanScan(*job, scan));
}

TEST(PlanScans, TakePicturesOfFineResolution) {
  auto job = addPlanScan(newJob(), plan());
  PlanScan scan = job->planScans[0];
  scan.worldFromPixel << 1e-4, 0, 3, 0, -1e-4, 8, 0, 0, 1;  // 0.1 mm of the room a pixel
  const auto after = setPlanScan(*job, scan);
  EXPECT_TRUE(after) << after.error().sentence();
}

TEST(RoomScans, ShareTheirGeometryWithEveryCopyOfTheJob) {
  RoomScan scan;
  scan.mesh = std::make_shared<const TriangleMesh>(
      *TriangleMesh::from({{0, 0, 0}, {1, 0, 0}, {0, 1, 0}}, {{0, 1, 2}}));
  const auto job = addRoomScan(newJob(), scan);
  ASSERT_TRUE(job) << job.error().sentence();
  const Job copy = *job;
  EXPECT_EQ(copy.roomScans[0].mesh, scan.mesh);
  EXPECT_EQ(copy, *job);

  RoomScan quiet = job->roomScans[0];
  quiet.isObstacle = false;
  EXPECT_FALSE(setRoomScan(*job, quiet)->roomScans[0].isObstacle);
}

TEST(RoomScans, HaveTrianglesOrPointsButNotBoth) {
  RoomScan scan;
  scan.mesh = std::make_shared<const TriangleMesh>();
  scan.points = std::make_shared<const std::vector<Eigen::Vector3f>>();
  EXPECT_FALSE(addRoomScan(newJob(), scan));
}

}  // namespace
}  // namespace baywright
